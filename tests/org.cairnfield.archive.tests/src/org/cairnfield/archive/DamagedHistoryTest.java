package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.history.SavePoints;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A history on a disk that failed. It is never taken for one that has not begun. */
class DamagedHistoryTest {

	private static final Person PERSON = Person.named("M.Q.");
	private static final String BRANCH = ".git/refs/heads/main";
	private static final String HEAD = ".git/HEAD";

	private final ArchiveStore store = new ArchiveStore();

	@TempDir
	Path folder;
	private Path root;
	private List<SavePoint> points;

	@BeforeEach
	void makeArchive() throws IOException {
		root = folder.resolve("archive");
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 2, 5);
			for (int i = 1; i <= 4; i++) {
				open.archive().setName("state " + i);
				open.savePoint(PERSON, null);
			}
			try (History history = open.history()) {
				points = history.list(10);
			}
		}
		assertEquals(4, points.size());
	}

	@Test
	void saysThatEarlierSavePointsWereLeftOut() throws IOException {
		Files.writeString(root.resolve(".git/shallow"), points.get(1).id() + "\n");
		try (OpenArchive open = store.open(root, Mode.READ); History history = open.history()) {
			assertEquals(2, history.list(10).size());
			assertEquals(List.of(), open.damages());
			assertTrue(
					open.notices().stream()
							.anyMatch(notice -> notice.contains(".git/shallow") && notice.contains("not whole")),
					() -> open.notices().toString());
		}
	}

	private Path object(String id) {
		return root.resolve(".git/objects").resolve(id.substring(0, 2)).resolve(id.substring(2));
	}

	private static String tree(String commit, Path file) throws IOException {
		try (InflaterInputStream in = new InflaterInputStream(Files.newInputStream(file))) {
			Matcher tree = Pattern.compile("\0tree ([0-9a-f]{40})")
					.matcher(new String(in.readAllBytes(), StandardCharsets.ISO_8859_1));
			assertTrue(tree.find(), commit);
			return tree.group(1);
		}
	}

	private void flip(Path file, int at) throws IOException {
		byte[] bytes = Files.readAllBytes(file);
		bytes[at] ^= 0x20;
		Files.delete(file); // Git writes objects read-only
		Files.write(file, bytes);
	}

	/** Each way to the history stops, names the file, and leaves it as it is. */
	private Damage assertDamaged(String file) throws IOException {
		String before = Files.exists(root.resolve(file))
				? Files.readString(root.resolve(file), StandardCharsets.ISO_8859_1)
				: null;
		Damage damage;
		try (OpenArchive reader = store.open(root, Mode.READ)) {
			assertTrue(reader.damages().stream().anyMatch(d -> d.file().equals(file)), reader.damages()::toString);
			assertFalse(reader.archive().getSites().isEmpty(), "what is on disk can be read all the same");
		}
		try (History history = History.of(root)) {
			DamagedException refused = assertThrows(DamagedException.class, () -> history.list(10));
			damage = refused.damages().get(0);
			assertEquals(file, damage.file());
			assertTrue(refused.getMessage().contains(file), refused::getMessage);
			assertThrows(DamagedException.class, history::last);
			assertThrows(DamagedException.class, () -> history.find("HEAD"));
		}
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			open.archive().setName("state 5");
			assertThrows(IOException.class, () -> open.savePoint(PERSON, null));
		}
		assertEquals(before,
				Files.exists(root.resolve(file)) ? Files.readString(root.resolve(file), StandardCharsets.ISO_8859_1)
						: null,
				"no save point began another history");
		return damage;
	}

	/** Does what the remedy says, word for word. */
	private void assertMendedBy(Damage damage, SavePoint last) throws IOException {
		Matcher line = Pattern.compile("put the line '([^']+)' into ([^ :,]+)").matcher(damage.remedy());
		assertTrue(line.find(), damage::remedy);
		assertEquals(damage.file(), line.group(2));
		Files.writeString(root.resolve(line.group(2)), line.group(1) + '\n');
		try (History history = History.of(root)) {
			assertEquals(last, history.last());
		}
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(List.of(), open.damages());
			open.archive().setName("mended");
			SavePoint next = open.savePoint(PERSON, null).orElseThrow();
			assertEquals(List.of(last.id()), next.parents());
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "\n", "\0\0\0\0\0\0\0\0", "no id at all\n",
			"0123456789abcdef0123456789abcdef01234567\n", "CUT",
			"ref: refs/heads/main\n", "0000000000000000000000000000000000000000\n" })
	void takesADamagedBranchForNoNewHistory(String content) throws IOException {
		Files.writeString(root.resolve(BRANCH), content.equals("CUT") ? points.get(0).id().substring(0, 25) : content);
		if (content.startsWith("ref:")) {
			assertThrows(IOException.class, () -> store.open(root, Mode.EDIT));
			return;
		}
		assertMendedBy(assertDamaged(BRANCH), points.get(0));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "\0\0\0\0", "ref: ", "ref: refs/heads/\n", "ref: refs/tags/x\n",
			"ref: refs/heads/ma\u0001n\n", "main\n",
			"ref: refs/heads/../../../outside\n", "ref: ../../outside\n", "0123456789abcdef\n" })
	void takesADamagedHeadForNoNewHistory(String content) throws IOException {
		Files.writeString(root.resolve(HEAD), content);
		assertMendedBy(assertDamaged(HEAD), points.get(0));
	}

	@Test
	void takesALostBranchForNoNewHistory() throws IOException {
		Files.delete(root.resolve(BRANCH));
		assertMendedBy(assertDamaged(BRANCH), points.get(0));
	}

	@Test
	void takesALostHeadForNoNewHistory() throws IOException {
		Files.delete(root.resolve(HEAD));
		Files.createFile(root.resolve(HEAD)); // Git itself takes a folder without one for no repository
		assertMendedBy(assertDamaged(HEAD), points.get(0));
	}

	@Test
	void noticesAnotherBranchThatIsNotThere() throws IOException {
		Files.writeString(root.resolve(HEAD), "ref: refs/heads/mein\n"); // a flipped bit or two
		assertDamaged(".git/refs/heads/mein");
	}

	@Test
	void noticesALostBranchEvenWithoutLogs() throws IOException {
		Files.delete(root.resolve(BRANCH));
		FolderText.delete(root.resolve(".git/logs"));
		assertTrue(assertDamaged(BRANCH).remedy().contains("git fsck"));
	}

	@Test
	void noticesThatOnlyAnOlderPackedBranchIsLeft() throws IOException {
		Files.writeString(root.resolve(".git/packed-refs"),
				"# pack-refs with: peeled fully-peeled sorted \n" + points.get(2).id()
						+ " refs/heads/main\n");
		Files.delete(root.resolve(BRANCH));
		assertMendedBy(assertDamaged(BRANCH), points.get(0));
	}

	@Test
	void leadsBackToTheLastSavePointThatIsWhole() throws IOException {
		for (int broken : new int[] { 0, 1 }) {
			Files.delete(object(points.get(broken).id()));
		}
		assertMendedBy(assertDamaged(BRANCH), points.get(2));
	}

	@Test
	void passesOverASavePointWithoutItsFiles() throws IOException {
		Files.writeString(root.resolve(BRANCH), "");
		Files.delete(object(tree(points.get(0).id(), object(points.get(0).id()))));
		assertMendedBy(assertDamaged(BRANCH), points.get(1));
	}

	@Test
	void showsTheHistoryUpToACommitThatCannotBeRead() throws IOException {
		Path file = object(points.get(2).id());
		byte[] whole = Files.readAllBytes(file);
		for (int at = 0; at < whole.length; at++) {
			flip(file, at);
			try (History history = History.of(root)) {
				SavePoints seen = history.savePoints(10);
				if (seen.damages().isEmpty()) {
					assertEquals(points, seen.points(), "flipped what means nothing, byte " + at);
				} else {
					assertEquals(points.subList(0, 2), seen.points(), "byte " + at);
					assertEquals(root.relativize(file).toString(), seen.damages().get(0).file());
					DamagedException refused = assertThrows(DamagedException.class, () -> history.list(10));
					assertEquals(seen.damages(), refused.damages());
				}
			}
			Files.delete(file);
			Files.write(file, whole);
		}
	}

	@Test
	void believesNoCommitThatHoldsSomethingElse() throws IOException {
		Path file = object(points.get(1).id());
		String text;
		try (InflaterInputStream in = new InflaterInputStream(Files.newInputStream(file))) {
			text = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
		}
		for (String[] change : new String[][] { { "M.Q.", "N.Q." }, { "author ", "auther " },
				{ "\nparent ", "\nparens " }, { "tree ", "tree\0" } }) {
			ByteArrayOutputStream bytes = new ByteArrayOutputStream();
			try (DeflaterOutputStream out = new DeflaterOutputStream(bytes)) {
				assertTrue(text.contains(change[0]));
				out.write(text.replace(change[0], change[1]).getBytes(StandardCharsets.ISO_8859_1));
			}
			Files.delete(file);
			Files.write(file, bytes.toByteArray());
			try (History history = History.of(root)) {
				SavePoints seen = history.savePoints(10);
				assertEquals(points.subList(0, 1), seen.points(), change[1]);
				assertEquals(1, seen.damages().size());
			}
		}
	}

	@Test
	void tellsWhichObjectOfAPastStateIsDamaged() throws IOException {
		String tree = tree(points.get(1).id(), object(points.get(1).id()));
		flip(object(tree), 12);
		try (History history = History.of(root)) {
			assertEquals(points, history.list(10), "the list needs no files");
			for (int i = 0; i < 2; i++) {
				DamagedException refused = assertThrows(DamagedException.class, () -> history.open(points.get(1)));
				assertEquals(root.relativize(object(tree)).toString(), refused.damages().get(0).file());
				Files.deleteIfExists(object(tree));
			}
			assertThrows(DamagedException.class, () -> history.changesOf(points.get(0)));
			assertEquals(List.of(), history.open(points.get(0)).damages());
		}
	}

	@Test
	void tellsThatTheIndexIsDamagedAndGoesOnWithoutIt() throws IOException {
		byte[] index = Files.readAllBytes(root.resolve(".git/index"));
		Files.write(root.resolve(".git/index"), java.util.Arrays.copyOf(index, index.length / 2));
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			open.archive().setName("state 5");
			DamagedException refused = assertThrows(DamagedException.class, () -> open.savePoint(PERSON, null));
			assertEquals(".git/index", refused.damages().get(0).file());
			Files.delete(root.resolve(".git/index"));
			assertEquals(List.of(points.get(0).id()), open.savePoint(PERSON, null).orElseThrow().parents());
		}
	}

	@Test
	void tellsThatGitsFolderIsNone() throws IOException {
		FolderText.delete(root.resolve(".git/objects"));
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertTrue(open.readOnlyReason().isPresent());
		}
		assertThrows(DamagedException.class, () -> History.of(root));
	}

	@Test
	void believesAHistoryThatHasNotBegun() throws IOException {
		Path fresh = folder.resolve("fresh");
		store.create(fresh, "n").close();
		try (OpenArchive open = store.open(fresh, Mode.EDIT); History history = open.history()) {
			assertEquals(List.of(), open.damages());
			assertEquals(List.of(), history.list(10));
			assertEquals(null, history.last());
			assertTrue(open.savePoint(PERSON, null).isPresent());
		}
	}
}
