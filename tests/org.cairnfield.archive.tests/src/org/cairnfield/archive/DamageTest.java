package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What becomes of an archive of which one file is damaged. */
class DamageTest {

	private static final String SAMPLES = "surveys/th/survey-0.samples";
	private static final Person PERSON = Person.named("M.Q.");

	private final ArchiveStore store = new ArchiveStore();

	@TempDir
	Path folder;
	private Path root;
	private SavePoint point;
	private String digest;

	@BeforeEach
	void makeArchive() throws IOException {
		root = folder.resolve("archive");
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 3, 30);
			point = open.savePoint(PERSON, null).orElseThrow();
			digest = open.digest();
		}
	}

	private void damage(String path) throws IOException {
		byte[] bytes = Files.readAllBytes(root.resolve(path));
		bytes[bytes.length / 2] ^= 0x55;
		Files.write(root.resolve(path), bytes);
	}

	@ParameterizedTest
	@ValueSource(strings = { SAMPLES, "splits/all.split", "ledger/mq.ledger", "archive.xmi" })
	void opensTheRestReadOnlyAndWritesNothing(String path) throws IOException {
		damage(path);
		var before = FolderText.of(root);
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			Damage damage = open.damages().get(0);
			assertEquals(path, damage.file());
			assertFalse(damage.remedy().isBlank());
			assertTrue(open.readOnlyReason().orElseThrow().contains(path), open.readOnlyReason()::toString);
			assertEquals(30, SampleArchives.survey(open.archive(), "survey-2").table().size(), "the rest is there");
			open.archive().setName("other");
			SampleArchives.survey(open.archive(), "survey-2").setName("other");
			ArchiveException refused = assertThrows(ArchiveException.class, open::save);
			assertTrue(refused.getMessage().contains(path), refused::getMessage);
			assertThrows(ArchiveException.class, () -> open.savePoint(PERSON, null));
		}
		assertEquals(before, FolderText.of(root));
	}

	@ParameterizedTest
	@ValueSource(strings = { SAMPLES, "splits/all.split", "ledger/mq.ledger", "archive.xmi" })
	void isWholeAgainOnceTheLastSavePointIsRestored(String path) throws IOException {
		damage(path);
		String damaged = FolderText.of(root).get(path);
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(Optional.empty(), open.restore(point, PERSON, null), "the history had it like that already");
			assertTrue(open.damages().isEmpty(), open.damages()::toString);
			assertEquals(digest, open.digest());
			assertEquals(Optional.empty(), open.readOnlyReason());
		}
		Path kept = root.resolve(".cairnfield/damaged/1").resolve(path);
		assertEquals(damaged, Files.readString(kept, StandardCharsets.ISO_8859_1), "nothing is thrown away");
	}

	@Test
	void tellsOfAFileThatIsMissing() throws IOException {
		Files.delete(root.resolve(SAMPLES));
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(SAMPLES, open.damages().get(0).file());
			assertEquals("is missing", open.damages().get(0).reason());
		}
		FolderText.delete(root.resolve("surveys"));
		Files.delete(root.resolve("archive.xmi"));
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals("archive.xmi", open.damages().get(0).file());
			open.restore(point, PERSON, null);
			assertEquals(digest, open.digest());
		}
	}

	@Test
	void tellsOfASurveyFileThatNobodyKnows() throws IOException {
		Files.copy(root.resolve(SAMPLES), root.resolve("surveys/th/copy.samples"));
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(1, open.damages().size(), open.damages()::toString);
			assertEquals("surveys/th/copy.samples", open.damages().get(0).file());
		}
	}

	@Test
	void leavesFilesOfOthersAlone() throws IOException {
		Files.writeString(root.resolve("notes.txt"), "mine");
		Files.writeString(root.resolve("surveys/th/readme.txt"), "mine");
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(0, open.damages().size(), open.damages()::toString);
		}
	}

	@Test
	void showsTheStructureOfTheLastSavePointWhereThePresentOneIsLost() throws IOException {
		Files.writeString(root.resolve("archive.xmi"), "lost");
		try (OpenArchive open = store.open(root, Mode.READ)) {
			assertTrue(open.notices().get(0).contains("as of the last save point"), open.notices()::toString);
			assertEquals(30, SampleArchives.survey(open.archive(), "survey-0").table().size());
		}
	}

	@Test
	void doesNotFinishASaveOverAFileThatSomebodyChangedMeanwhile() throws IOException {
		Files.createDirectories(root.resolve(".cairnfield/pending"));
		byte[] fresh = "new".getBytes(StandardCharsets.UTF_8);
		Files.write(root.resolve(".cairnfield/pending/0"), fresh);
		String sha = "11507a0e2f5e69d5dfa40a62a1bd7b6ee57e6bcd85c67c9b8431b36fff21c437"; // SHA-256 of "new", by sha256sum
		String old = "0".repeat(64);
		String body = "cairnfield journal 1\nput\t" + sha + "\t3\t" + old + "\t0\t" + SAMPLES + "\n";
		Files.writeString(root.resolve(".cairnfield/journal"), body + "end\t1\t" + sha256(body) + "\n");
		var before = FolderText.of(root);
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertTrue(
					open.damages().get(0).reason().contains("changed by another program while a save was unfinished"),
					open.damages()::toString);
			assertEquals(before, FolderText.of(root));
			open.restore(point, PERSON, null);
			assertTrue(open.damages().isEmpty(), open.damages()::toString);
		}
		assertTrue(Files.exists(root.resolve(".cairnfield/damaged/1/journal")));
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(digest, open.digest());
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "x", "cairnfield journal 1\n", "cairnfield journal 1\nend\t0\tx\n",
			"cairnfield journal 1\nput\ta\t1\t-\t../../x\tarchive.xmi\nend\t1\tx\n" })
	void tellsOfAJournalThatIsBroken(String text) throws IOException {
		Files.writeString(root.resolve(".cairnfield/journal"), text);
		try (OpenArchive open = store.open(root, Mode.READ)) {
			assertEquals(".cairnfield/journal", open.damages().get(0).file());
		}
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(".cairnfield/journal", open.damages().get(0).file());
			assertEquals(digest, open.digest());
			open.restore(point, PERSON, null);
			assertTrue(open.damages().isEmpty(), open.damages()::toString);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "../outside", "/outside", "surveys/../../outside" })
	void finishesNoSaveOutsideTheFolder(String path) throws IOException {
		Files.createDirectories(root.resolve(".cairnfield/pending"));
		Files.writeString(root.resolve(".cairnfield/pending/0"), "new");
		String body = "cairnfield journal 1\nput\t" + sha256("new") + "\t3\t-\t0\t" + path + "\n";
		Files.writeString(root.resolve(".cairnfield/journal"), body + "end\t1\t" + sha256(body) + "\n");
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertTrue(open.damages().get(0).reason().contains("leads out"), open.damages()::toString);
			open.restore(point, PERSON, null);
			assertEquals(digest, open.digest());
			assertTrue(open.damages().isEmpty(), open.damages()::toString);
		}
		assertFalse(Files.exists(folder.resolve("outside")));
	}

	private static String sha256(String text) {
		try {
			return HexFormat.of().formatHex(
					MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException(e);
		}
	}
}
