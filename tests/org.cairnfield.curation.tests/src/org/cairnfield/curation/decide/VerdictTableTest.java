package org.cairnfield.curation.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.model.edit.MoveSampleCommand;
import org.cairnfield.model.edit.SampleRef;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerdictTableTest {

	@TempDir
	Path folder;
	private Path file;
	private final ReviewFixture f = new ReviewFixture();

	@BeforeEach
	void export() throws IntakeException {
		file = folder.resolve("verdicts.csv");
		VerdictTable.write(file, f.archive, f.split, f.policy, null);
	}

	/** Fills in decision, reason, text and person of rows by their place; the table has no commas in its other fields. */
	private void fill(int row, String... fields) throws IOException {
		List<String> lines = new ArrayList<>(Files.readAllLines(file));
		String[] cells = lines.get(row + 1).split(",", -1);
		int at = VerdictTable.COLUMNS.indexOf("decision");
		System.arraycopy(fields, 0, cells, at, fields.length);
		lines.set(row + 1, String.join(",", cells));
		Files.write(file, lines);
	}

	private VerdictIntake read(String person) throws IntakeException {
		return VerdictIntake.read(file, f.archive, f.split, f.policy, person, f.recorded, f.clock);
	}

	@Test
	void takesInWhatWasFilledInOutside() throws Exception {
		fill(0, "approve", "fits", "\"by, the \"\"stairs\"\"\"", "J.T.", "2031-06-01T08:00:00Z");
		fill(1, "Reject", "far");
		fill(2, "defer");
		VerdictIntake intake = read("M.Q.");
		assertEquals(List.of(), intake.problems());
		assertEquals(3, intake.taken());
		assertEquals(f.proposals().size() - 3, intake.blank());
		f.run(intake.command());
		assertEquals("Take in 3 verdicts", f.stack.getUndoCommand().getLabel());
		LedgerEntry first = f.standings().all().get(0).first().get();
		assertEquals("by, the \"stairs\"", first.text());
		assertEquals("J.T.", first.person());
		assertEquals("2031-06-01T08:00:00Z", first.time().toString());
		assertEquals("M.Q.", f.standings().all().get(1).first().get().person());
		assertEquals(ReviewState.REJECTED, f.standings().all().get(1).state());
		f.stack.undo();
		assertTrue(f.standings().entries().isEmpty());
	}

	@Test
	void namesWhoEnteredAVerdictOfSomebodyElse() throws Exception {
		fill(0, "approve", "fits", "", "J.T.");
		fill(1, "reject", "far", "", "m.q.");
		fill(2, "defer");
		f.run(read("M.Q.").command());
		assertEquals(Arrays.asList("M.Q.", null, null),
				f.standings().entries().stream().map(LedgerEntry::enteredBy).toList());
		f.recorded.savePointMade(f.archive);
		f.stack.undo();
		assertEquals(List.of("J.T. M.Q.", "m.q. null", "M.Q. null"), f.standings().entries().subList(3, 6).stream()
				.map(entry -> entry.person() + ' ' + entry.enteredBy()).toList(),
				"lines that take back name the same people");
		f.stack.redo();
		Path out = folder.resolve("again.csv");
		VerdictTable.write(out, f.archive, f.split, f.policy, null);
		List<String> rows = Files.readAllLines(out);
		assertTrue(rows.get(0).endsWith(",enteredBy"), rows.get(0));
		assertTrue(rows.get(1).endsWith(",M.Q."), rows.get(1));
		assertTrue(rows.get(2).endsWith(","), rows.get(2));
	}

	@Test
	void takesNothingInTwice() throws Exception {
		fill(0, "approve", "fits", "=SUM(A1)", "J.T.");
		f.run(read(null).command());
		VerdictIntake again = read(null);
		assertEquals(1, again.known());
		assertFalse(again.command().canExecute());
		VerdictTable.write(file, f.archive, f.split, f.policy, null);
		assertTrue(Files.readString(file).contains("'=SUM(A1)"));
		VerdictIntake exported = read(null);
		assertEquals(1, exported.known());
		assertEquals(List.of(), exported.problems());
	}

	@Test
	void namesTheLineAndTheRemedyOfEachProblemAndTakesNothingIn() throws Exception {
		fill(0, "maybe", "fits", "", "J.T.");
		fill(1, "reject", "", "", "J.T.");
		fill(2, "approve", "fits", "", "");
		fill(3, "approve", "fits", "", "J.T.", "noon");
		fill(4, "approve", "fits", "", "J.T.");
		fill(5, "approve", "fits", "", "J.T.");
		List<String> lines = new ArrayList<>(Files.readAllLines(file));
		lines.set(6, lines.get(6).replaceFirst("whole", "other"));
		lines.add(lines.get(5));
		Files.write(file, lines);
		VerdictIntake intake = read(null);
		assertEquals(List.of(2L, 3L, 4L, 5L, 7L, (long) lines.size()),
				intake.problems().stream().map(VerdictIntake.Problem::line).toList());
		assertTrue(intake.problems().get(0).toString()
				.contains("verdicts.csv, line 2: 'maybe' is not a decision. Write approve"));
		assertTrue(intake.problems().get(5).what().contains("line 6 already"), intake.problems().get(5).what());
		assertEquals(0, intake.taken());
		assertFalse(intake.command().canExecute());
	}

	@Test
	void refusesRowsWhoseSampleHasChangedSince() throws Exception {
		fill(0, "approve", "fits", "", "J.T.");
		var ref = f.ref(f.standings().all().get(0).sample());
		f.run(new MoveSampleCommand(ref, ref.sample().xMetres() + 1, ref.sample().yMetres()));
		VerdictIntake intake = read(null);
		assertEquals(1, intake.problems().size());
		assertTrue(intake.problems().get(0).what().contains("has changed since"), intake.problems()::toString);
	}

	@Test
	void hidesFirstVerdictsFromTheSecondReviewer() throws Exception {
		f.withSecond();
		f.run(f.by("M.Q.").approve(f.sample(0), "fits", "secret"));
		VerdictTable.write(file, f.archive, f.split, f.policy, "J.T.");
		assertFalse(Files.readString(file).contains("secret") || Files.readString(file).contains("M.Q."));
		VerdictTable.write(file, f.archive, f.split, f.policy, "M.Q.");
		assertTrue(Files.readString(file).contains("secret"));
	}

	@Test
	void tellsPlaceDoubtsAndTheSecondVerdict() throws Exception {
		f.withSecond();
		f.run(f.by("M.Q.").approve(f.sample(0), "fits", null));
		f.run(f.by("J.T.").pool(f.sample(0), "far", "seen"));
		EvidenceTable evidence = EvidenceTable.of(SplitOnMap.of(f.archive, f.split), Workers.inline());
		VerdictTable.write(file, f.archive, f.split, f.policy, null, evidence);
		List<String> columns = List.of(Files.readAllLines(file).get(0).split(","));
		String[] cells = Files.readAllLines(file).stream().filter(line -> line.contains(f.sample(0) + ",")).findFirst()
				.orElseThrow()
				.split(",", -1);
		SampleRef ref = f.ref(f.sample(0));
		assertEquals(String.valueOf(ref.sample().floorLevel()), cells[columns.indexOf("floor")]);
		assertEquals(ref.sample().xMetres(), Double.parseDouble(cells[columns.indexOf("x")]));
		assertEquals(evidence.of(f.sample(0)).orElseThrow().warnings().isEmpty(),
				cells[columns.indexOf("doubts")].isEmpty());
		assertEquals(List.of("approve", "pool", "far", "seen", "J.T."),
				List.of(cells[columns.indexOf("decision")], cells[columns.indexOf("secondDecision")],
						cells[columns.indexOf("secondReason")], cells[columns.indexOf("secondText")],
						cells[columns.indexOf("secondPerson")]));
		assertTrue(evidence.all().stream().anyMatch(e -> !e.warnings().isEmpty()));
	}

	@Test
	void saysWhatIsMissingOfATableThatIsNone() throws IOException {
		Files.writeString(file, "split,sample\nwhole,spring/S1\n");
		IntakeException e = assertThrows(IntakeException.class, () -> read("M.Q."));
		assertTrue(e.getMessage().contains("line 1: there is no column 'decision'"), e.getMessage());
	}
}
