package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Opens each {@link HostileArchive}, works on it as people do, and looks whether anything outside has changed. */
class HostileArchiveTest {

	private static final Person PERSON = Person.named("M.Q.");
	private static final Duration PATIENCE = Duration.ofSeconds(60);

	@TempDir
	static Path common;
	private static Path model;

	private final ArchiveStore store = new ArchiveStore();
	/** What was said when something was not done. */
	private final List<String> refusals = new ArrayList<>();

	@TempDir
	Path folder;
	private Path root;
	private Path outside;

	@BeforeAll
	static void makeModel() throws IOException {
		model = common.resolve("model");
		try (OpenArchive open = new ArchiveStore().create(model, "n")) {
			SampleArchives.fill(open.archive(), 1, 2, 5);
			open.savePoint(PERSON, null);
			open.archive().setName("second");
			open.savePoint(PERSON, null);
		}
	}

	@BeforeEach
	void makeArchives() throws IOException {
		assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("unix"), "no links as Unix has them");
		root = folder.resolve("archive");
		outside = Files.createDirectory(folder.resolve("outside"));
		FolderText.copy(model, root);
		FolderText.copy(model, outside.resolve("other"));
		Files.writeString(outside.resolve("precious.txt"), "precious\n");
		Files.createDirectories(outside.resolve("folder/pending"));
		for (String name : List.of("lock", "lock.part", "journal", "HEAD", "pending/0", "pending/diary.txt")) {
			Files.writeString(outside.resolve("folder").resolve(name), name);
		}
	}

	@ParameterizedTest
	@EnumSource
	void doesNothingOutsideTheArchive(HostileArchive hostile) throws IOException {
		hostile.prepare(root, outside);
		SortedMap<String, String> before = around();
		assertTimeoutPreemptively(PATIENCE, () -> {
			attempt(this::read);
			assertEquals(before, around(), "after reading");
			attempt(this::edit);
			attempt(this::recordOnly);
			attempt(this::restore);
			attempt(this::release);
			attempt(() -> store.lockOwner(root));
			attempt(() -> store.releaseLock(root));
			attempt(this::read);
		});
		assertEquals(before, around());
		if (hostile.refusal().isEmpty()) {
			assertEquals(List.of(), refusals, "all of it is possible");
			try (History history = History.of(root)) {
				assertEquals(6, history.list(10).size());
			}
		} else {
			assertTrue(refusals.stream().anyMatch(said -> said.contains(hostile.refusal())), refusals::toString);
		}
	}

	private interface Work {
		void run() throws IOException;
	}

	/** Whatever goes wrong is told in the words of the archive, with a remedy. */
	private void attempt(Work work) {
		try {
			work.run();
		} catch (ArchiveException e) {
			assertTrue(!e.remedy().isBlank(), e::getMessage);
			refusals.add(e.getMessage());
		} catch (IOException e) {
			throw new AssertionError("not explained: " + e, e);
		}
	}

	private void read() throws IOException {
		try (OpenArchive open = store.open(root, Mode.READ)) {
			open.damages().forEach(damage -> refusals.add(damage.toString()));
			open.digest();
			try (History history = open.history()) {
				for (SavePoint point : history.list(10)) {
					history.open(point).digest();
					history.changesOf(point);
				}
				history.releases();
				history.compareWithSaved(history.last());
			}
		}
	}

	private void edit() throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			open.readOnlyReason().ifPresent(refusals::add);
			var survey = SampleArchives.survey(open.archive(), "survey-0");
			if (survey.getSamples() != null) {
				survey.getSamples().setTable(survey.table().edit().reason(0, "outside the outline").done());
			}
			open.archive().setName("edited");
			open.putAboutReleases("gates.json", "{}", PERSON);
			open.savePoint(PERSON, "edited");
		}
	}

	private void recordOnly() throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			open.archive().getSplits().clear();
			open.save();
			open.savePoint(PERSON, null);
		}
	}

	private void restore() throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT); History history = open.history()) {
			List<SavePoint> points = history.list(10);
			open.restore(points.get(points.size() - 1), PERSON, null);
		}
	}

	private void release() throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			open.release("1.0.0", "{}\n", open.digest(), "Release 1.0.0", PERSON);
		}
	}

	/** All that lies beside the archive: kinds, sizes, contents, times of change. */
	private SortedMap<String, String> around() throws IOException {
		SortedMap<String, String> found = new TreeMap<>();
		try (Stream<Path> beside = Files.list(folder)) {
			beside.forEach(path -> found.put(path.getFileName().toString(), ""));
		}
		try (Stream<Path> all = Files.walk(outside)) {
			for (Path file : (Iterable<Path>) all::iterator) {
				String state = Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS).toString();
				if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
					state += ' ' + Files.readString(file, StandardCharsets.ISO_8859_1);
				}
				found.put(outside.relativize(file).toString(), state);
			}
		}
		return found;
	}
}
