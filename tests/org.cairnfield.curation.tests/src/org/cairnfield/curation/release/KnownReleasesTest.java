package org.cairnfield.curation.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.archive.history.SavePoint;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KnownReleasesTest {

	private static final String QUAY = "1".repeat(40);
	private static final String TIDE = "2".repeat(40);

	@TempDir
	Path folder;
	private Path file;
	private KnownReleases known;

	@BeforeEach
	void create() {
		file = folder.resolve("state/cairnfield/known-releases");
		known = new KnownReleases(file);
	}

	private static ReleaseTag tag(String version, char id) {
		SavePoint point = new SavePoint("a".repeat(40), "L. Lead", Instant.EPOCH, "", "", List.of());
		return new ReleaseTag(String.valueOf(id).repeat(40), version, point, "L. Lead", Instant.EPOCH, "", false);
	}

	@Test
	void findsNothingToContradictBeforeAnythingWasSeen() {
		assertEquals(List.of(), known.contradictions(QUAY, List.of(tag("1.0.0", 'a'))));
	}

	@Test
	void reportsReleasesThatAreGoneOrReplacedOfTheSameArchiveOnly() {
		assertEquals("", known.remember(QUAY, List.of(tag("1.0.0", 'a'), tag("1.1.0", 'b'))));
		assertEquals(List.of(),
				known.contradictions(QUAY, List.of(tag("1.0.0", 'a'), tag("1.1.0", 'b'), tag("1.2.0", 'c'))));
		assertEquals(List.of(), known.contradictions(TIDE, List.of()));
		List<String> found = known.contradictions(QUAY, List.of(tag("1.0.0", 'd')));
		assertEquals(2, found.size());
		assertTrue(
				found.get(0).contains("1.0.0 is not the one that was seen") && found.get(1).contains("1.1.0, seen on"),
				found::toString);
	}

	@Test
	void keepsWhatItSawFirstUntilItIsToldToForget() {
		known.remember(QUAY, List.of(tag("1.0.0", 'a')));
		known.remember(TIDE, List.of(tag("1.0.0", 'c')));
		known.remember(QUAY, List.of(tag("1.0.0", 'd')));
		assertEquals(1, known.contradictions(QUAY, List.of(tag("1.0.0", 'd'))).size());
		assertEquals("", known.forget(QUAY));
		known.remember(QUAY, List.of(tag("1.0.0", 'd')));
		assertEquals(List.of(), known.contradictions(QUAY, List.of(tag("1.0.0", 'd'))));
		assertEquals(1, known.contradictions(TIDE, List.of()).size());
	}

	@Test
	void passesOverLinesThatAreDamagedAndKeepsTheRest() throws IOException {
		known.remember(QUAY, List.of(tag("1.0.0", 'a')));
		Files.writeString(file, "\0\u00ff damage\n" + Files.readString(file) + "1\t2\n");
		assertEquals(1, known.contradictions(QUAY, List.of()).size());
		Files.write(file, new byte[3 << 20]);
		assertEquals(List.of(), known.contradictions(QUAY, List.of()));
		assertEquals("", known.remember(QUAY, List.of(tag("1.0.0", 'a'))));
		assertEquals(1, known.contradictions(QUAY, List.of()).size());
	}

	@Test
	void growsToABoundAndDropsTheOldest() throws IOException {
		List<ReleaseTag> many = new ArrayList<>();
		for (int n = 0; n < 5001; n++) {
			many.add(tag("1.0." + n, 'a'));
		}
		known.remember(QUAY, many);
		assertEquals(5000, Files.readAllLines(file).size());
		assertTrue(known.contradictions(QUAY, List.of()).stream().noneMatch(c -> c.startsWith("release 1.0.0,")));
	}

	@Test
	void saysWhereNothingCanBeRemembered() throws IOException {
		Files.writeString(folder.resolve("state"), "a file in the way");
		assertTrue(known.remember(QUAY, List.of(tag("1.0.0", 'a'))).contains("could not be remembered"));
		assertEquals(List.of(), known.contradictions(QUAY, List.of()));
	}
}
