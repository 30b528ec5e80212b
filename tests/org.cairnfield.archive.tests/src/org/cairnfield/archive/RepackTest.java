package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.core.task.Progress;
import org.cairnfield.model.Survey;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A history that has grown much is packed when the archive is closed. */
class RepackTest {

	private static final Person PERSON = Person.named("M.Q.");

	private final ArchiveStore store = new ArchiveStore();
	/** A digest takes as long as the save point itself. */
	private static final int DIGEST_EACH = 5;
	/** By save point; of most of them empty. */
	private final SortedMap<String, String> digests = new TreeMap<>();

	@TempDir
	Path folder;
	private Path root;

	@BeforeEach
	void makeArchive() throws IOException {
		root = folder.resolve("archive");
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 1, 2_000);
			SavePoint first = open.savePoint(PERSON, null).orElseThrow();
			digests.put(first.id(), open.digest());
		}
	}

	/** Save points that change one sample each. */
	private void work(OpenArchive open, int points) throws IOException {
		for (int i = 0; i < points; i++) {
			Survey survey = SampleArchives.survey(open.archive(), "survey-0");
			survey.getSamples()
					.setTable(survey.table().edit().position(digests.size() * 37, digests.size(), -1).done());
			String id = open.savePoint(PERSON, null).orElseThrow().id();
			digests.put(id, digests.size() % DIGEST_EACH == 0 || i == points - 1 ? open.digest() : "");
		}
	}

	private void day(int points) throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			work(open, points);
		}
	}

	private static long size(Path folder) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum();
		}
	}

	private SortedSet<String> loose() throws IOException {
		SortedSet<String> names = new TreeSet<>();
		Path objects = root.resolve(".git/objects");
		try (Stream<Path> files = Files.walk(objects)) {
			files.filter(Files::isRegularFile).map(file -> objects.relativize(file).toString())
					.filter(name -> name.matches("[0-9a-f]{2}.[0-9a-f]{38}"))
					.forEach(names::add);
		}
		return names;
	}

	private void requireWhole() throws IOException {
		try (OpenArchive open = store.open(root, Mode.READ); History history = open.history()) {
			assertEquals(List.of(), open.damages());
			assertEquals(List.of(), history.check().problems());
			for (SavePoint point : history.list(1_000)) {
				String digest = digests.get(point.id());
				assertEquals(digest, digest.isEmpty() ? "" : history.open(point).digest());
			}
			assertEquals(digests.size(), history.list(1_000).size());
		}
		new PlainGit(root).run("fsck", "--full", "--strict");
	}

	@Test
	void takesNoMoreThanThreeTimesOnePackAfterFiftySavePoints() throws IOException {
		for (int day = 0; day < 5; day++) {
			day(10);
		}
		long taken = size(root.resolve(".git"));
		requireWhole();
		String log = Files.readString(root.resolve(".git/logs/HEAD"));
		assertTrue(digests.keySet().stream().allMatch(log::contains), "the log stays");
		Path copy = folder.resolve("copy");
		FolderText.copy(root, copy);
		new PlainGit(copy).run("gc", "-q");
		long packed = size(copy.resolve(".git/objects"));
		assertTrue(taken <= 3 * packed, () -> taken + " bytes, " + packed + " when packed by Git");
	}

	@Test
	void packingThatIsCancelledIsLeftForAnotherTime() throws IOException {
		OpenArchive open = store.open(root, Mode.EDIT);
		assertFalse(open.isPackingDue());
		while (!open.isPackingDue()) {
			work(open, 1);
		}
		open.close(new Progress() {
			@Override
			public boolean isCancelled() {
				return true;
			}
		});
		try (OpenArchive again = store.open(root, Mode.EDIT)) {
			assertTrue(again.isPackingDue());
		}
		try (OpenArchive last = store.open(root, Mode.EDIT)) {
			assertFalse(last.isPackingDue());
		}
		requireWhole();
	}

	@Test
	void leavesAYoungHistoryAlone() throws IOException {
		SortedSet<String> before = loose();
		day(1);
		assertTrue(loose().containsAll(before));
		assertFalse(Files.exists(root.resolve(".git/packed-refs")));
	}

	@Test
	void keepsWhatOnlyALogOrNothingRefersTo() throws IOException {
		day(1);
		PlainGit git = new PlainGit(root);
		Files.writeString(folder.resolve("text"), "nobody's");
		String dangling = git.run("hash-object", "-w", folder.resolve("text").toString());
		git.run("commit", "-q", "--allow-empty", "-m", "logged");
		String logged = git.run("rev-parse", "HEAD");
		git.run("reset", "-q", "--hard", "HEAD~1");
		git.run("branch", "other");
		git.run("switch", "-q", "other");
		git.run("commit", "-q", "--allow-empty", "-m", "packed");
		String packed = git.run("rev-parse", "HEAD");
		git.run("repack", "-q", "-a", "-d");
		git.run("switch", "-q", "main");
		git.run("branch", "-q", "-D", "other");
		String log = Files.readString(root.resolve(".git/logs/HEAD"));
		Files.writeString(root.resolve(".git/logs/HEAD"),
				log.lines().filter(line -> !line.contains(packed)).reduce("", (a, b) -> a + b + '\n'));
		day(20);
		assertTrue(Files.exists(root.resolve(".git/packed-refs")), "packed");
		for (String id : List.of(dangling, logged, packed)) {
			git.run("cat-file", "-e", id);
		}
		requireWhole();
	}

	@Test
	void waitsForAnotherGit() throws IOException {
		Path lock = root.resolve(".git/packed-refs.lock");
		Files.createFile(lock);
		SortedSet<String> before = loose();
		day(20);
		assertTrue(loose().containsAll(before));
		assertTrue(Files.exists(lock), "it is not ours");
		Files.delete(lock);
		day(1);
		assertFalse(loose().containsAll(before), "packed by now");
		requireWhole();
	}

	@Test
	void touchesNothingOfAHistoryThatLacksAnObject() throws IOException {
		SortedSet<String> before = loose();
		day(3);
		SortedSet<String> after = loose();
		after.removeAll(before);
		Path lost = after.stream().map(name -> root.resolve(".git/objects").resolve(name))
				.max((a, b) -> Long.compare(a.toFile().length(), b.toFile().length()))
				.orElseThrow();
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			work(open, 20);
			Files.delete(lost);
			before = loose();
		}
		assertEquals(before, loose());
	}
}
