package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Comment;
import org.cairnfield.model.Decision;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Merges by plain Git that have dropped what one side had. */
class MergeLossTest {

	private static final Person PERSON = Person.named("R. Reviewer");
	private static final String LEDGER = "ledger/mq.ledger";

	private final ArchiveStore store = new ArchiveStore();

	@TempDir
	Path folder;
	private Path root;
	private PlainGit git;

	@BeforeEach
	void create() throws IOException {
		root = folder.resolve("quay");
		try (OpenArchive open = store.create(root, "Marrow Quay")) {
			SampleArchives.fill(open.archive(), 7, 2, 10);
			open.savePoint(PERSON, null);
		}
		git = new PlainGit(root);
		git.run("branch", "-q", "side");
	}

	private interface Edit {
		void of(Archive archive);
	}

	private void edit(Edit edit) throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(List.of(), open.damages());
			edit.of(open.archive());
			open.savePoint(PERSON, null).orElseThrow();
		}
	}

	/** Work on the side, after which main is checked out again. */
	private void onTheSide(Edit edit) throws IOException {
		git.run("checkout", "-q", "side");
		edit(edit);
		git.run("checkout", "-q", "main");
	}

	private static void give(Archive archive, String... ids) {
		for (String id : ids) {
			Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
			verdict.setId(id);
			verdict.setSplit("all");
			verdict.setSample(new SampleKey("survey-0", "S-1"));
			verdict.setDecision(Decision.APPROVE);
			verdict.setPerson(PERSON.name());
			archive.getLedgers().get(0).getVerdicts().add(verdict);
		}
	}

	private static void waive(Archive archive, String reason) {
		Waiver waiver = ModelFactory.eINSTANCE.createWaiver();
		waiver.setRule("rarely-heard");
		waiver.setContentKey("00000000000000cc");
		waiver.setReason(reason);
		waiver.setPerson("A. Steward");
		waiver.setTime(Instant.parse("2031-05-02T09:00:00Z"));
		archive.getWaivers().add(waiver);
	}

	private static void takeIn(Archive archive, String id) {
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId(id);
		Samples samples = ModelFactory.eINSTANCE.createSamples();
		samples.setTable(SampleTable.builder().sample("S-1", 0, 1, 2).build());
		survey.setSamples(samples);
		archive.getSites().get(0).getSurveys().add(survey);
	}

	private void work(String name) throws IOException {
		edit(archive -> archive.setName(name));
	}

	private List<Damage> damages() throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			return open.damages();
		}
	}

	private String id(String name) throws IOException {
		return git.run("rev-parse", name);
	}

	private void restore(String name) throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT); History history = open.history()) {
			open.restore(history.find(name), PERSON, null);
		}
	}

	private List<String> verdicts() throws IOException {
		try (OpenArchive open = store.open(root, Mode.READ)) {
			return open.archive().getLedgers().get(0).getVerdicts().stream().map(Verdict::getId)
					.collect(Collectors.toList());
		}
	}

	@Test
	void namesVerdictsWaiversAndSurveysThatAMergeHasDropped() throws IOException {
		onTheSide(archive -> {
			give(archive, "v-100", "v-101");
			waive(archive, "the last gallery");
			takeIn(archive, "autumn");
		});
		work("here");
		git.run("merge", "-q", "-s", "ours", "--no-edit", "side");
		String merge = id("HEAD").substring(0, 8);
		List<Damage> found = damages();
		assertEquals(List.of(LEDGER, "archive.xmi", "archive.xmi"), found.stream().map(Damage::file).toList());
		assertEquals(
				"the merge " + merge + " by RT has dropped 2 verdicts (the first: v-100), which is in "
						+ id("side").substring(0, 8),
				found.get(0).reason());
		assertTrue(found.get(0).remedy().contains("restore the save point " + merge), found::toString);
		assertTrue(
				found.get(1).reason().contains("1 waiver (of rule rarely-heard by A. Steward")
						&& found.get(1).reason().contains("the last gallery"),
				found::toString);
		assertTrue(found.get(2).reason().contains("1 survey (autumn)"), found::toString);
		assertTrue(
				found.get(2).remedy().contains("git merge " + id("side"))
						&& found.get(2).remedy().contains("git reset --hard " + id("HEAD^1")),
				found::toString);
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			open.archive().setName("x");
			assertThrows(DamagedException.class, () -> open.savePoint(PERSON, null));
		}
	}

	@Test
	void findsWhatWasDroppedAlsoUnderLaterCommits() throws IOException {
		onTheSide(archive -> give(archive, "v-100"));
		work("here");
		git.run("merge", "-q", "-s", "ours", "--no-edit", "side");
		String merge = id("HEAD").substring(0, 8);
		git.run("commit", "-q", "--allow-empty", "-m", "a note");
		assertTrue(damages().get(0).reason().startsWith("the merge " + merge), damages()::toString);
	}

	@Test
	void restoringTheMergePutsVerdictsBackAndTheyCount() throws IOException {
		onTheSide(archive -> give(archive, "v-100", "v-101"));
		edit(archive -> give(archive, "v-200"));
		git.run("merge", "-q", "-s", "ours", "--no-edit", "side");
		restore("HEAD");
		assertEquals(List.of(), damages());
		List<String> ids = verdicts();
		assertEquals(List.of("v-200", "v-100", "v-101"), ids.subList(ids.size() - 3, ids.size()),
				"nothing is taken back");
		work("goes on");
		assertEquals(List.of(), damages());
	}

	@Test
	void restoringOneSidePutsBackTheVerdictsOfTheOtherAndTakesThemBack() throws IOException {
		onTheSide(archive -> give(archive, "v-100"));
		edit(archive -> give(archive, "v-200"));
		git.run("merge", "-q", "-s", "ours", "--no-edit", "side");
		restore("HEAD^1");
		assertEquals(List.of(), damages());
		try (OpenArchive open = store.open(root, Mode.READ)) {
			List<Verdict> all = open.archive().getLedgers().get(0).getVerdicts();
			assertEquals("v-100", all.get(all.size() - 2).getId());
			assertEquals("v-100", all.get(all.size() - 1).getSupersedes());
		}
	}

	@Test
	void aSurveyAndAWaiverComeBackWithTheSideThatHasThem() throws IOException {
		onTheSide(archive -> {
			waive(archive, "the last gallery");
			takeIn(archive, "autumn");
		});
		work("here");
		git.run("merge", "-q", "-s", "ours", "--no-edit", "side");
		assertEquals(2, damages().size());
		restore("side");
		assertEquals(List.of(), damages());
		edit(archive -> archive.getSites().get(0).getSurveys().removeIf(survey -> survey.getId().equals("autumn")));
		assertEquals(List.of(), damages(), "who takes it away later does so on purpose");
	}

	@Test
	void acceptsWhatOneSideHasTakenAwayItself() throws IOException {
		edit(archive -> {
			waive(archive, "the last gallery");
			takeIn(archive, "autumn");
		});
		git.run("branch", "-qf", "side");
		onTheSide(archive -> {
			archive.getWaivers().clear();
			archive.getSites().get(0).getSurveys().removeIf(survey -> survey.getId().equals("autumn"));
		});
		edit(archive -> give(archive, "v-200"));
		git.run("merge", "-q", "--no-edit", "side");
		assertEquals(List.of(), damages());
	}

	@Test
	void reportsAVerdictThatTheMergeHasChanged() throws IOException {
		onTheSide(archive -> give(archive, "v-100"));
		Files.writeString(root.resolve("note.txt"), "x");
		git.run("add", "note.txt");
		git.run("commit", "-qm", "a note");
		git.run("merge", "-q", "--no-edit", "side");
		assertEquals(List.of(), damages());
		Path ledger = root.resolve(LEDGER);
		Files.writeString(ledger, Files.readString(ledger).replaceFirst("(?m)^(v-100\t.*)\tapprove\t", "$1\tpool\t"));
		git.run("commit", "-qa", "--amend", "--no-edit");
		List<Damage> found = damages();
		assertTrue(found.get(0).reason().contains("has changed 1 verdict (v-100) of"), found::toString);
	}

	@Test
	void looksAtEachSavePointOnce() throws IOException {
		onTheSide(archive -> give(archive, "v-100"));
		Path seen = root.resolve(".cairnfield/merges-seen");
		assertEquals(List.of(), damages());
		assertEquals(id("HEAD"), Files.readString(seen).strip());
		work("here");
		assertEquals(id("HEAD"), Files.readString(seen).strip(), "a save point of ours needs no look");
		git.run("merge", "-q", "-s", "ours", "--no-edit", "side");
		assertEquals(1, damages().size());
		assertEquals(id("HEAD^1"), Files.readString(seen).strip(), "what is damaged is looked at again");
		git.run("reset", "-q", "--hard", "HEAD^1");
		assertEquals(List.of(), damages());
		Files.writeString(seen, "nonsense");
		assertEquals(List.of(), damages());
		assertEquals(id("HEAD"), Files.readString(seen).strip());
	}

	@Test
	void namesACommentThatAMergeHasDropped() throws IOException {
		onTheSide(archive -> {
			Comment comment = ModelFactory.eINSTANCE.createComment();
			comment.setId("c-1");
			comment.setSubject("release 1.0.0");
			comment.setText("not yet");
			comment.setPerson("A. Lead");
			archive.getComments().add(comment);
		});
		work("here");
		git.run("merge", "-q", "-s", "ours", "--no-edit", "side");
		assertTrue(damages().get(0).reason().contains("1 comment (c-1 by A. Lead on release 1.0.0)"),
				damages()::toString);
		restore("side");
		assertEquals(List.of(), damages());
	}
}
