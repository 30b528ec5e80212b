package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SampleChange;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.model.Survey;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An archive on which somebody also uses plain Git, by the real program. */
class PlainGitTest {

	private static final Person PERSON = Person.named("M.Q.");
	private static final String SAMPLES = "surveys/th/survey-0.samples";

	private final ArchiveStore store = new ArchiveStore();

	@TempDir
	Path folder;
	private Path root;

	@BeforeEach
	void makeArchive() throws IOException {
		assumeTrue(run(folder, false, "--version").startsWith("git version"), "no git here");
		root = folder.resolve("archive");
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 3, 30);
			open.savePoint(PERSON, null);
		}
	}

	private String git(String... arguments) throws IOException {
		return run(root, true, arguments);
	}

	private String run(Path where, boolean mustSucceed, String... arguments) throws IOException {
		List<String> command = new ArrayList<>(
				List.of("git", "-c", "user.name=RT", "-c", "user.email=rt@example.org", "-c",
						"safe.directory=*", "-c", "protocol.file.allow=always"));
		command.addAll(List.of(arguments));
		ProcessBuilder builder = new ProcessBuilder(command).directory(where.toFile()).redirectErrorStream(true);
		// nothing of what the machine is configured to do
		builder.environment().put("GIT_CONFIG_NOSYSTEM", "1");
		builder.environment().put("GIT_CONFIG_GLOBAL", folder.resolve("none").toString());
		Process process = builder.start();
		String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		process.onExit().join();
		assertTrue(!mustSucceed || process.exitValue() == 0, () -> String.join(" ", command) + ":\n" + output);
		return output.strip();
	}

	private void setAside(OpenArchive open, String survey, int row, String reason) {
		Survey changed = SampleArchives.survey(open.archive(), survey);
		changed.getSamples().setTable(changed.table().edit().reason(row, reason).done());
	}

	private SavePoint change(String survey, int row, String reason) throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(Optional.empty(), open.readOnlyReason());
			setAside(open, survey, row, reason);
			return open.savePoint(PERSON, null).orElseThrow();
		}
	}

	/** Edits one sample as a person does in a text editor: the seal stays as it was. */
	private void editByHand(String path, String from, String to) throws IOException {
		String text = Files.readString(root.resolve(path));
		assertTrue(text.contains(from), from);
		Files.writeString(root.resolve(path), text.replaceFirst(Pattern.quote(from),
				Matcher.quoteReplacement(to)));
	}

	@Test
	void isCleanAndSoundForGitAfterASavePoint() throws IOException {
		SavePoint point = change("survey-0", 0, "outside");
		assertEquals("", git("status", "--porcelain", "--ignored=no"));
		assertEquals("", git("fsck", "--full", "--strict", "--no-dangling"));
		assertEquals(point.id(), git("rev-parse", "HEAD"));
		assertEquals("main", git("rev-parse", "--abbrev-ref", "HEAD"));
		assertEquals(point.summary(), git("log", "-1", "--format=%s"));
		assertEquals("M.Q.", git("log", "-1", "--format=%an"));
		assertTrue(git("log", "--stat").contains(SAMPLES));
		assertEquals("2\t2\t" + SAMPLES, git("diff", "--numstat", "HEAD~1"), "the line of the sample, and the seal");
	}

	@Test
	void namesFilesAsGitDoes() throws IOException {
		for (String path : FolderText.of(root).keySet()) {
			assertEquals(git("hash-object", "--no-filters", path), git("rev-parse", "HEAD:" + path), path);
		}
	}

	@Test
	void takesUpWhatSomebodyCommitted() throws IOException {
		String id = "S-0";
		editByHand(SAMPLES, "\n" + id + "\t", "\n" + id + "x\t");
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertTrue(open.damages().get(0).reason().contains("does not match its checksum"),
					open.damages()::toString);
			assertTrue(open.readOnlyReason().isPresent(), "an edit that nobody vouches for");
		}
		git("commit", "-q", "-a", "-m", "Rename a sample");
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(List.of(), open.damages());
			assertTrue(open.notices().get(0).contains("committed with Git"), open.notices()::toString);
			assertTrue(SampleArchives.survey(open.archive(), "survey-0").table().row(id + "x") >= 0);
			setAside(open, "survey-1", 0, "outside");
			assertTrue(open.save().contains(SAMPLES), "and its seal is put right");
			open.savePoint(PERSON, null).orElseThrow();
			try (History history = open.history()) {
				List<SavePoint> points = history.list(10);
				assertEquals(List.of("M.Q.", "RT", "M.Q."), points.stream().map(SavePoint::person).toList());
				assertEquals(1, history.changesOf(points.get(1)).samples(SampleChange::isAdded));
				assertEquals(1, history.changesOf(points.get(1)).samples(SampleChange::isRemoved));
				assertEquals(List.of(), history.open(points.get(1)).damages());
			}
		}
		assertEquals("", git("status", "--porcelain"));
	}

	@Test
	void commitsFilesOfTheArchiveThatSomebodyLeftUncommitted() throws IOException {
		Files.createDirectories(root.resolve("plans"));
		Files.write(root.resolve("plans/th-0.png"), new byte[] { 1, 2, '\r', '\n', 3 });
		SavePoint point = change("survey-0", 0, "outside");
		assertTrue(point.message().contains("plans/th-0.png added"), point::message);
		assertEquals("", git("status", "--porcelain"));
	}

	@Test
	void leavesFilesOfOthersAndTheirIndexAlone() throws IOException {
		Files.writeString(root.resolve("notes.txt"), "mine");
		Files.writeString(root.resolve("staged.txt"), "mine");
		git("add", "staged.txt");
		change("survey-0", 0, "outside");
		assertEquals("A  staged.txt\n?? notes.txt", git("status", "--porcelain"));
		git("commit", "-q", "-m", "mine");
		change("survey-0", 1, "outside");
		assertEquals("staged.txt", git("ls-tree", "--name-only", "HEAD", "staged.txt"), "it stays in later commits");
	}

	@Test
	void leavesNoSavePointOnNoBranch() throws IOException {
		for (String wayBack : List.of("main", "-c kept")) {
			git("checkout", "-q", "--detach");
			String before = git("rev-parse", "HEAD");
			try (OpenArchive open = store.open(root, Mode.EDIT)) {
				setAside(open, "survey-0", 0, wayBack);
				ArchiveException refused = assertThrows(ArchiveException.class, () -> open.savePoint(PERSON, null));
				assertTrue(refused.getMessage().contains("the files are saved")
						&& refused.remedy().contains("git switch main")
						&& refused.remedy().contains("git switch -c NAME"), refused::getMessage);
				assertEquals(before, git("rev-parse", "HEAD"));
				git(("switch -q " + wayBack).split(" "));
				assertEquals(open.savePoint(PERSON, null).orElseThrow().id(),
						git("rev-parse", wayBack.replace("-c ", "")));
			}
			assertEquals("", git("status", "--porcelain"));
		}
	}

	@Test
	void goesOnWhenGitHasPackedEverything() throws IOException {
		change("survey-0", 0, "outside");
		git("pack-refs", "--all");
		git("gc", "-q", "--prune=now");
		SavePoint point = change("survey-0", 1, "outside");
		assertEquals(point.id(), git("rev-parse", "main"));
		assertEquals("", git("fsck", "--full"));
		try (History history = History.of(root)) {
			assertEquals(3, history.list(10).size());
			assertEquals(List.of(), history.open(history.list(10).get(2)).damages());
		}
	}

	@Test
	void keepsItsBytesWhateverGitIsToldAboutLineEnds() throws IOException {
		git("config", "core.autocrlf", "true");
		git("config", "core.eol", "crlf");
		git("config", "filter.shout.clean", "tr a-z A-Z");
		git("config", "filter.shout.smudge", "tr a-z A-Z");
		Files.createDirectories(root.resolve(".git/info"));
		Files.writeString(root.resolve(".git/info/attributes"), "* text eol=crlf filter=shout\n");
		var before = FolderText.of(root);
		SavePoint point = change("survey-0", 0, "outside");
		try (History history = History.of(root)) {
			assertEquals(List.of(), history.open(point).damages());
		}
		Files.delete(root.resolve(".git/info/attributes"));
		assertEquals("", git("status", "--porcelain"));
		git("rm", "-q", "-r", "--cached", ".");
		git("reset", "-q", "--hard", "HEAD~1");
		assertEquals(before, FolderText.of(root), "its own attributes keep Git from changing line ends");
	}

	@Test
	void readsAWorkTreeInWhichLineEndsWereChangedAllTheSame() throws IOException {
		String digest;
		try (OpenArchive open = store.open(root, Mode.READ)) {
			digest = open.digest();
		}
		for (String path : FolderText.of(root).keySet()) {
			Path file = root.resolve(path);
			Files.write(file, Files.readString(file, StandardCharsets.ISO_8859_1).replace("\n", "\r\n")
					.getBytes(StandardCharsets.ISO_8859_1));
		}
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(List.of(), open.damages());
			assertEquals(digest, open.digest());
			open.archive().setName("x");
			assertEquals(7, open.save().size(), "all are written with LF again");
		}
	}

	@Test
	void worksOnAClone() throws IOException {
		Path clone = folder.resolve("clone");
		run(folder, true, "clone", "-q", root.toString(), clone.toString());
		String digest;
		try (OpenArchive open = store.open(root, Mode.READ)) {
			digest = open.digest();
		}
		try (OpenArchive open = store.open(clone, Mode.EDIT)) {
			assertEquals(digest, open.digest());
			setAside(open, "survey-0", 0, "outside");
			open.savePoint(PERSON, null).orElseThrow();
		}
		assertEquals("", run(clone, true, "status", "--porcelain"));
	}

	@Test
	void mergesTheWorkOfTwoPeopleOnTwoSurveys() throws IOException {
		git("branch", "-q", "other");
		change("survey-0", 0, "one");
		git("checkout", "-q", "other");
		change("survey-1", 0, "other");
		git("checkout", "-q", "main");
		git("merge", "-q", "--no-edit", "other");
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(List.of(), open.damages());
			assertEquals("one", SampleArchives.survey(open.archive(), "survey-0").table().reason(0));
			assertEquals("other", SampleArchives.survey(open.archive(), "survey-1").table().reason(0));
			try (History history = open.history()) {
				assertEquals(2, history.last().parents().size());
				assertEquals(4, history.list(10).size());
			}
		}
	}

	@Test
	void makesNoSavePointWhereSomebodyBeganAMergeMeanwhile() throws IOException {
		git("branch", "-q", "other");
		change("survey-0", 0, "one");
		git("checkout", "-q", "other");
		change("survey-1", 0, "other");
		git("checkout", "-q", "main");
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			git("merge", "-q", "--no-commit", "other");
			open.reload();
			assertThrows(DamagedException.class, open::save);
			git("merge", "--abort");
			open.reload();
			setAside(open, "survey-2", 0, "x");
			git("merge", "-q", "--no-commit", "-s", "ours", "other");
			ArchiveException refused = assertThrows(ArchiveException.class, () -> open.savePoint(PERSON, null));
			assertTrue(refused.getMessage().contains("a merge with plain Git was begun here"), refused::getMessage);
			assertFalse(open.isModified(), "the files are saved all the same");
			git("merge", "--abort");
			assertTrue(open.savePoint(PERSON, null).isPresent());
		}
	}

	@Test
	void waitsForAGitThatIsAtWork() throws IOException {
		Files.createFile(root.resolve(".git/index.lock"));
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			setAside(open, "survey-0", 0, "x");
			ArchiveException refused = assertThrows(ArchiveException.class, () -> open.savePoint(PERSON, null));
			assertTrue(refused.getMessage().contains("index.lock"), refused::getMessage);
			assertTrue(refused.getMessage().contains("the files are saved"), refused::getMessage);
			Files.delete(root.resolve(".git/index.lock"));
			assertTrue(open.savePoint(PERSON, null).isPresent());
		}
	}

	@Test
	void clearsTheLocksOfItsOwnInterruptedSavePointOnly() throws IOException {
		Files.createFile(root.resolve(".git/index.lock"));
		Files.writeString(root.resolve(".cairnfield/committing"), "x");
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertFalse(Files.exists(root.resolve(".git/index.lock")));
			setAside(open, "survey-0", 0, "x");
			assertTrue(open.savePoint(PERSON, null).isPresent());
		}
		assertFalse(Files.exists(root.resolve(".cairnfield/committing")));
	}

	@Test
	void beginsAHistoryWhereTheOldOneIsGone() throws IOException {
		FolderText.delete(root.resolve(".git"));
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(List.of(), open.damages());
			assertThrows(ArchiveException.class, open::history);
			assertTrue(open.savePoint(PERSON, null).isPresent());
		}
		assertEquals("1", git("rev-list", "--count", "HEAD"));
		assertEquals("", git("status", "--porcelain"));
	}

	@Test
	void isARepositoryOfItsOwnWithinAnother() throws IOException {
		Path outer = Files.createDirectory(folder.resolve("outer"));
		run(outer, true, "init", "-q");
		try (OpenArchive open = store.create(outer.resolve("inner"), "n")) {
			assertTrue(open.savePoint(PERSON, null).isPresent());
		}
		assertTrue(run(outer, false, "log").contains("does not have any commits"));
	}

	@Test
	void keepsWhatAnInterruptedSavePointHasLeftForTheNext() throws IOException {
		// as after a kill between the index and the branch: the index is ahead of the last commit
		editByHand("archive.xmi", "00:00:5E:00:53:01", "00:00:5E:00:53:F1");
		git("add", "archive.xmi");
		git("commit", "-q", "-m", "by hand");
		change("survey-0", 0, "x");
		git("reset", "-q", "--soft", "HEAD~1");
		assertEquals("M  " + SAMPLES, git("status", "--porcelain").replaceAll("M  archive.xmi\n", ""));
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(List.of(), open.damages());
			assertTrue(open.savePoint(PERSON, null).isPresent());
		}
		assertEquals("", git("status", "--porcelain"));
	}
}
