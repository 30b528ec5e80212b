package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.model.Survey;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder in which somebody began a merge or the like with plain Git, and left it half done. */
class HalfMergedTest {

	private static final Person PERSON = Person.named("M.Q.");
	private static final String SAMPLES = "surveys/th/survey-0.samples";

	private final ArchiveStore store = new ArchiveStore();

	@TempDir
	Path folder;
	private PlainGit git;
	private Path root;

	/** Two branches that have set the same sample aside for different reasons. */
	@BeforeEach
	void fork() throws IOException {
		root = folder.resolve("archive");
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 3, 30);
			open.savePoint(PERSON, null);
		}
		git = new PlainGit(root);
		git.run("branch", "-q", "other");
		setAside("one");
		git.run("checkout", "-q", "other");
		setAside("other");
		git.run("checkout", "-q", "main");
	}

	private void setAside(String reason) throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			Survey changed = SampleArchives.survey(open.archive(), "survey-0");
			changed.getSamples().setTable(changed.table().edit().reason(0, reason).done());
			open.savePoint(PERSON, null).orElseThrow();
		}
	}

	private List<Damage> damages() throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(open.damages().isEmpty(), open.readOnlyReason().isEmpty());
			return open.damages();
		}
	}

	private void names(String trace, String what, String word) throws IOException {
		List<Damage> found = damages();
		assertEquals(trace, found.get(0).file());
		assertTrue(found.get(0).reason().startsWith(what + " with plain Git was begun here"), found::toString);
		assertTrue(found.stream().allMatch(d -> d.remedy().contains("'git " + word + " --continue'")
				&& d.remedy().contains("'git " + word + " --abort'")), found::toString);
		Damage marks = found.stream().filter(d -> d.file().equals(SAMPLES)).findFirst().orElseThrow();
		List<String> lines = Files.readAllLines(root.resolve(SAMPLES));
		assertTrue(lines.get((int) marks.line() - 1).startsWith("<<<<<<< "), marks::toString);
		assertTrue(marks.reason().contains("conflict marks"), marks::toString);
		assertEquals(1, found.stream().filter(d -> d.file().equals(SAMPLES)).count(),
				"one damage is enough for the marks");
		git.run(word, "--abort");
		assertEquals(List.of(), damages());
	}

	@Test
	void isCalledAMerge() throws IOException {
		git.fails("merge", "--no-edit", "other");
		names(".git/MERGE_HEAD", "a merge", "merge");
	}

	@Test
	void isCalledARebase() throws IOException {
		git.fails("rebase", "other");
		names(".git/rebase-merge", "a rebase", "rebase");
		git.fails("rebase", "--apply", "other");
		names(".git/rebase-apply", "a rebase", "rebase");
	}

	@Test
	void isCalledACherryPickOrARevert() throws IOException {
		git.fails("cherry-pick", "other");
		names(".git/CHERRY_PICK_HEAD", "a cherry-pick", "cherry-pick");
		setAside("two");
		git.fails("revert", "--no-edit", "HEAD~1");
		names(".git/REVERT_HEAD", "a revert", "revert");
	}

	@Test
	void isReadOnlyUntilTheMergeIsCommittedEvenWhereNoMarksAreLeft() throws IOException {
		git.fails("merge", "--no-edit", "other");
		git.run("checkout", "-q", "--theirs", SAMPLES);
		git.run("add", SAMPLES);
		assertEquals(List.of(".git/MERGE_HEAD"), damages().stream().map(Damage::file).toList());
		git.run("commit", "-q", "--no-edit");
		assertEquals(List.of(), damages());
		setAside("after the merge");
	}

	@Test
	void isNotRestoredOver() throws IOException {
		git.fails("merge", "--no-edit", "other");
		String half = Files.readString(root.resolve(SAMPLES));
		try (OpenArchive open = store.open(root, Mode.EDIT); History history = open.history()) {
			DamagedException refused = assertThrows(DamagedException.class,
					() -> open.restore(history.last(), PERSON, null));
			assertTrue(refused.getMessage().contains("a merge with plain Git was begun here"), refused::getMessage);
			assertEquals(".git/MERGE_HEAD", refused.damages().get(0).file());
		}
		assertEquals(half, Files.readString(root.resolve(SAMPLES)));
	}

	@Test
	void showsMarksThatWereCommitted() throws IOException {
		git.fails("merge", "--no-edit", "other");
		git.run("commit", "-qam", "both sides as they are");
		List<Damage> found = damages();
		assertEquals(List.of(SAMPLES), found.stream().map(Damage::file).toList());
		assertTrue(
				found.get(0).reason().contains("conflict marks") && found.get(0).remedy().contains("remove the marks"),
				found::toString);
	}
}
