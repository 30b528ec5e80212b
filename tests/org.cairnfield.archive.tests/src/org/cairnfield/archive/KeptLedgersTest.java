package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.text.LedgerLines;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Round;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.check.TakeBack;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Verdicts survive whatever is restored or undone: ledgers only grow, and say by further lines what no longer counts. */
class KeptLedgersTest {

	private static final Person REVIEWER = Person.named("R. Reviewer");
	private static final Person LEAD = Person.named("L. Lead");
	private static final String LEDGER = "ledger/quay.ledger";

	@TempDir
	Path folder;
	private Path root;
	private OpenArchive open;
	private SavePoint first;
	private int given;

	@BeforeEach
	void create() throws IOException {
		root = folder.resolve("quay");
		open = new ArchiveStore().create(root, "Marrow Quay");
		SampleArchives.fill(open.archive(), 7, 2, 5);
		open.archive().getLedgers().clear();
		first = open.savePoint(REVIEWER, null).orElseThrow();
	}

	@AfterEach
	void close() throws IOException {
		open.close();
	}

	private Ledger ledger() {
		return open.archive().getLedgers().stream().filter(l -> l.getId().equals("quay")).findFirst().orElseGet(() -> {
			Ledger made = ModelFactory.eINSTANCE.createLedger();
			made.setId("quay");
			open.archive().getLedgers().add(made);
			return made;
		});
	}

	private void give(String sample, Decision decision, Round round) {
		Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
		verdict.setId("v-" + ++given);
		verdict.setSplit("all");
		verdict.setSample(new SampleKey("survey-0", sample));
		verdict.setDecision(decision);
		verdict.setPerson(REVIEWER.name());
		verdict.setRound(round);
		ledger().getVerdicts().add(verdict);
	}

	private SavePoint giveAndRecord(String sample, Decision decision) throws IOException {
		give(sample, decision, Round.FIRST);
		return open.savePoint(REVIEWER, null).orElseThrow();
	}

	/** What counts, by sample, in its order: all that the state of a review follows from. */
	private static SortedMap<String, List<String>> counting(Archive archive) {
		SortedMap<String, List<String>> found = new TreeMap<>();
		for (Ledger ledger : archive.getLedgers()) {
			Set<String> gone = new HashSet<>();
			ledger.getVerdicts().stream().filter(TakeBack::isOne).forEach(v -> gone.add(v.getSupersedes()));
			ledger.getVerdicts().stream().filter(v -> !TakeBack.isOne(v) && !gone.contains(v.getId())).forEach(
					v -> found.computeIfAbsent(v.getSample().toString(), s -> new ArrayList<>())
							.add(v.getDecision() + " " + v.getRound() + ' ' + v.getPerson()));
		}
		return found;
	}

	private SortedMap<String, List<String>> counting() {
		return counting(open.archive());
	}

	/** The lines of the file but for header and seal. */
	private List<String> lines() throws IOException {
		return Files.exists(root.resolve(LEDGER)) ? LedgerLines.of(Files.readAllBytes(root.resolve(LEDGER)))
				: List.of();
	}

	private void sound() throws IOException {
		open.reload();
		assertEquals(List.of(), open.damages());
		try (History history = open.history()) {
			assertEquals(List.of(), history.check().ledgerLosses());
		}
	}

	@Test
	void restoringKeepsAllLinesAndTakesBackInTheNameOfWhoRestores() throws IOException {
		SavePoint one = giveAndRecord("S-1", Decision.APPROVE);
		giveAndRecord("S-1", Decision.POOL);
		giveAndRecord("S-2", Decision.APPROVE);
		List<String> before = lines();
		open.restore(one, LEAD, null);
		sound();
		assertEquals(before, lines().subList(0, 3));
		assertEquals(Map.of("survey-0/S-1", List.of("approve FIRST R. Reviewer")).toString().toLowerCase(),
				counting().toString().toLowerCase());
		List<Verdict> added = ledger().getVerdicts().subList(3, 5);
		assertEquals(List.of("v-2", "v-3"), added.stream().map(Verdict::getSupersedes).toList());
		assertTrue(
				added.stream()
						.allMatch(v -> TakeBack.isOne(v) && v.getPerson().equals("L. Lead") && v.getTime() != null),
				added::toString);
	}

	@Test
	void whatIsGivenAgainKeepsItsPersonAndNamesWhoGaveItAgain() throws IOException {
		SavePoint one = giveAndRecord("S-1", Decision.APPROVE);
		open.restore(first, LEAD, null);
		open.restore(one, LEAD, null);
		sound();
		Verdict again = ledger().getVerdicts().get(2);
		assertEquals(List.of("R. Reviewer", "L. Lead"), List.of(again.getPerson(), again.getEnteredBy()));
		open.restore(first, LEAD, null);
		Verdict back = ledger().getVerdicts().get(3);
		assertTrue(TakeBack.isOne(back) && back.getPerson().equals("L. Lead") && back.getEnteredBy() == null,
				back::toString);
	}

	@Test
	void restoringAStateBeforeTheLedgerWasBegunKeepsItAndTheStructureNamesIt() throws IOException {
		giveAndRecord("S-1", Decision.APPROVE);
		open.restore(first, LEAD, null);
		sound();
		assertEquals(2, lines().size());
		assertEquals(Map.of(), counting());
		assertTrue(open.restore(first, LEAD, null).isEmpty(), "it is in that state already");
	}

	@Test
	void restoringForwardGivesAgainWhatWasTakenBack() throws IOException {
		give("S-1", Decision.APPROVE, Round.FIRST);
		give("S-1", Decision.POOL, Round.SECOND);
		give("S-1", Decision.APPROVE, Round.RESOLUTION);
		SavePoint settled = giveAndRecord("S-2", Decision.DEFER);
		var wanted = counting();
		open.restore(first, LEAD, null);
		assertEquals(Map.of(), counting());
		open.restore(settled, LEAD, null);
		sound();
		assertEquals(wanted, counting());
		assertEquals(List.of("v-1", "v-2", "v-3", "v-4"),
				ledger().getVerdicts().subList(8, 12).stream().map(Verdict::getSupersedes).toList());
		int lines = lines().size();
		open.restore(settled, LEAD, null);
		assertEquals(lines, lines().size(), "nothing had to be said again");
	}

	@Test
	void undoingTakesBackWhatThatSavePointBroughtAndNoMore() throws IOException {
		SavePoint wrong = giveAndRecord("S-1", Decision.APPROVE);
		giveAndRecord("S-2", Decision.POOL);
		giveAndRecord("S-1", Decision.POOL);
		open.undo(wrong, LEAD, null);
		sound();
		assertEquals(4, lines().size());
		assertEquals("v-1", ledger().getVerdicts().get(3).getSupersedes());
		assertEquals(List.of("pool"),
				counting().get("survey-0/S-1").stream().map(s -> s.split(" ")[0].toLowerCase()).toList());
		assertEquals(1, counting().get("survey-0/S-2").size());
	}

	@Test
	void undoingTheSavePointThatBeganTheLedgerKeepsIt() throws IOException {
		SavePoint begun = giveAndRecord("S-1", Decision.APPROVE);
		SavePoint undone = open.undo(begun, LEAD, null);
		sound();
		assertEquals(2, lines().size());
		assertEquals(Map.of(), counting());
		open.undo(undone, LEAD, null);
		sound();
		assertEquals(3, lines().size());
		assertEquals(1, counting().size());
	}

	private void setAside(String survey) throws IOException {
		open.reload();
		Survey changed = SampleArchives.survey(open.archive(), survey);
		changed.getSamples().setTable(changed.table().edit().reason(0, "on a ladder").done());
	}

	@Test
	void undoingAMergeLeavesTheVerdictsOfAColleague() throws IOException {
		PlainGit git = new PlainGit(root);
		git.run("checkout", "-qb", "colleague");
		setAside("survey-0");
		giveAndRecord("S-1", Decision.APPROVE);
		git.run("checkout", "-q", "main");
		setAside("survey-1");
		open.savePoint(LEAD, null);
		git.run("merge", "-q", "--no-edit", "colleague");
		open.reload();
		SavePoint merge;
		try (History history = open.history()) {
			merge = history.last();
		}
		assertEquals(2, merge.parents().size());
		giveAndRecord("S-2", Decision.POOL);
		List<String> before = lines();
		open.undo(merge, LEAD, null);
		sound();
		assertEquals(null, SampleArchives.survey(open.archive(), "survey-0").table().reason(0),
				"the colleague's remedy is taken back");
		assertEquals(before, lines());
		assertEquals(2, counting().size());
	}

	@Test
	void putsBackWhatTheFolderHasLostBeforeItRestores() throws IOException {
		SavePoint one = giveAndRecord("S-1", Decision.APPROVE);
		giveAndRecord("S-2", Decision.APPROVE);
		open.archive().getLedgers().clear();
		open.save();
		open.restore(one, LEAD, null);
		sound();
		assertEquals(List.of("v-1", "v-2"), lines().subList(0, 2).stream().map(line -> line.split("\t")[0]).toList());
		assertEquals(Set.of("survey-0/S-1"), counting().keySet());
	}

	@Test
	void keepsTheBytesOfALedgerThatHasNotGrown() throws IOException {
		SavePoint one = giveAndRecord("S-1", Decision.APPROVE);
		byte[] bytes = Files.readAllBytes(root.resolve(LEDGER));
		open.archive().setName("another");
		open.savePoint(LEAD, null);
		open.restore(one, LEAD, null);
		assertTrue(Arrays.equals(bytes, Files.readAllBytes(root.resolve(LEDGER))));
		assertFalse(open.archive().getName().equals("another"));
	}

	@Test
	void holdsForAnyOrderOfGivingRestoringAndUndoing() throws IOException {
		Random random = new Random(20311104);
		Map<String, SortedMap<String, List<String>>> stood = new TreeMap<>();
		List<SavePoint> points = new ArrayList<>(List.of(first));
		stood.put(first.id(), counting());
		List<String> lines = lines();
		for (int step = 0; step < 14; step++) {
			SavePoint some = points.get(random.nextInt(points.size()));
			int way = random.nextInt(4);
			if (way < 2) {
				for (int n = random.nextInt(3); n >= 0; n--) {
					give("S-" + random.nextInt(3), random.nextBoolean() ? Decision.APPROVE : Decision.POOL,
							Round.values()[random.nextInt(3)]);
				}
				points.add(open.savePoint(REVIEWER, null).orElseThrow());
			} else if (way == 2) {
				open.restore(some, LEAD, null).ifPresent(points::add);
				assertEquals(stood.get(some.id()), counting(), "step " + step);
			} else if (!some.parents().isEmpty()) {
				var before = counting();
				try {
					points.add(open.undo(some, LEAD, null));
				} catch (ArchiveException nothing) {
					assertEquals(before, counting(), "step " + step);
				}
			}
			stood.put(points.get(points.size() - 1).id(), counting());
			assertTrue(lines().size() >= lines.size(), "step " + step);
			assertEquals(lines, lines().subList(0, lines.size()), "step " + step);
			lines = lines();
			sound();
		}
		assertFalse(lines.isEmpty());
	}
}
