package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.LedgerLoss;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ledgers that somebody changed behind the program's back, and what the program itself may do with them. */
class LedgerHistoryTest {

	private static final Person PERSON = Person.named("R. Reviewer");
	private static final String LEDGER = "ledger/mq.ledger";

	@TempDir
	Path folder;
	private Path root;
	private OpenArchive open;
	private SavePoint first;

	@BeforeEach
	void create() throws IOException {
		root = folder.resolve("quay");
		open = new ArchiveStore().create(root, "Marrow Quay");
		SampleArchives.fill(open.archive(), 7, 2, 10);
		first = open.savePoint(PERSON, null).orElseThrow();
	}

	@AfterEach
	void close() throws IOException {
		open.close();
	}

	private void git(String... arguments) {
		List<String> command = new ArrayList<>(
				List.of("git", "-c", "user.name=RT", "-c", "user.email=rt@example.org", "-c", "safe.directory=*"));
		command.addAll(List.of(arguments));
		try {
			Process process = new ProcessBuilder(command).directory(root.toFile()).redirectErrorStream(true).start();
			String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
			assertEquals(0, process.waitFor(), said);
		} catch (InterruptedException e) {
			throw new AssertionError(e);
		} catch (IOException e) {
			assumeTrue(false, "no git here");
		}
	}

	private List<LedgerLoss> losses() throws IOException {
		try (History history = open.history()) {
			return history.check().ledgerLosses();
		}
	}

	private List<Verdict> verdicts() {
		return open.archive().getLedgers().get(0).getVerdicts();
	}

	private Verdict verdict(String id) {
		Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
		verdict.setId(id);
		verdict.setSplit("all");
		verdict.setSample(new SampleKey("survey-0", "S-1"));
		verdict.setDecision(Decision.APPROVE);
		verdict.setPerson(PERSON.name());
		return verdict;
	}

	private SavePoint give(String id) throws IOException {
		verdicts().add(verdict(id));
		return open.savePoint(PERSON, null).orElseThrow();
	}

	@Test
	void reportsAVerdictThatWasDeletedSealedAgainAndCommitted() throws IOException {
		give("v-100");
		String gone = verdicts().remove(3).getId();
		open.save();
		assertEquals(List.of("the folder"), losses().stream().map(LedgerLoss::where).toList());
		git("commit", "-qam", "tidy up");
		give("v-101");
		List<LedgerLoss> found = losses();
		assertEquals(1, found.size(), found::toString);
		try (History history = open.history()) {
			assertEquals(history.list(2).get(1).shortId(), found.get(0).where());
		}
		assertEquals(List.of(LEDGER, "gone", 1, false),
				List.of(found.get(0).file(), found.get(0).what(), found.get(0).lines(), found.get(0).putBack()));
		assertTrue(found.get(0).example().startsWith(gone + '\t'), found::toString);
	}

	@Test
	void reportsAVerdictThatWasEditedAndOneThatWasMoved() throws IOException {
		verdicts().get(2)
				.setDecision(verdicts().get(2).getDecision() == Decision.REJECT ? Decision.APPROVE : Decision.REJECT);
		open.save();
		git("commit", "-qam", "tidy up");
		assertEquals(List.of("changed"), losses().stream().map(LedgerLoss::what).toList());
		verdicts().add(verdicts().remove(0));
		open.save();
		git("commit", "-qam", "tidy up again");
		assertTrue(losses().stream().map(LedgerLoss::what).toList().contains("moved"), losses()::toString);
	}

	@Test
	void reportsALedgerThatIsGoneAsAWhole() throws IOException {
		int count = verdicts().size();
		Files.delete(root.resolve(LEDGER));
		git("commit", "-qam", "Restore 01234567: nothing of the kind");
		List<LedgerLoss> found = losses();
		assertEquals(List.of(count), found.stream().map(LedgerLoss::lines).toList());
	}

	@Test
	void reportsACommitThatOnlyPretendsToRestoreOrToUndo() throws IOException {
		SavePoint second = give("v-100");
		for (String pretence : List.of("Restore " + first.shortId() + ": x", "Undo " + second.shortId() + ": x")) {
			verdicts().remove(1);
			open.save();
			git("commit", "-qam", pretence);
		}
		assertEquals(2, losses().size(), losses()::toString);
	}

	@Test
	void reportsACommitThatRestoresTheLedgerAlone() throws IOException {
		open.archive().setName("another name");
		give("v-100");
		verdicts().remove(verdicts().size() - 1);
		open.save();
		git("commit", "-qam", "Restore " + first.shortId() + ": x");
		assertEquals(List.of("gone"), losses().stream().map(LedgerLoss::what).toList());
	}

	@Test
	void letsTheProgramRestoreAndUndo() throws IOException {
		SavePoint second = give("v-100");
		Files.writeString(root.resolve("surveys/notes.txt"), "somebody's own file");
		git("add", "surveys/notes.txt");
		git("commit", "-qm", "notes");
		SavePoint third = give("v-101");
		open.undo(second, PERSON, null);
		assertEquals(List.of(), losses());
		open.restore(first, PERSON, null);
		assertEquals(List.of(), losses());
		open.restore(third, PERSON, null);
		assertEquals(List.of(), losses());
		give("v-102");
		assertEquals(List.of(), losses());
		assertFalse(verdicts().isEmpty());
	}

	@Test
	void letsLinesBecomeLongerWithTheirColumns() throws IOException {
		Ledger plain = ModelFactory.eINSTANCE.createLedger();
		plain.setId("plain");
		plain.getVerdicts().add(verdict("v-100"));
		open.archive().getLedgers().add(plain);
		open.savePoint(PERSON, null);
		Path file = root.resolve("ledger/plain.ledger");
		int columns = Files.readAllLines(file).get(2).split("\t").length;
		Verdict more = verdict("v-101");
		more.setEvidence("e");
		plain.getVerdicts().add(more);
		open.savePoint(PERSON, null);
		assertTrue(Files.readAllLines(file).get(2).split("\t").length > columns, "the ledger has not got more columns");
		assertEquals(List.of(), losses());
	}

	@Test
	void judgesEachSideOfAMergeWhereItWasMade() throws IOException {
		git("checkout", "-qb", "side");
		open.reload();
		give("v-100");
		git("checkout", "-q", "main");
		Files.writeString(root.resolve("plans.txt"), "x");
		git("add", "plans.txt");
		git("commit", "-qm", "a note");
		git("merge", "-q", "--no-edit", "side");
		assertEquals(List.of(), losses());
		git("checkout", "-q", "side");
		open.reload();
		give("v-101");
		git("checkout", "-q", "main");
		git("merge", "-q", "-s", "ours", "--no-edit", "side");
		assertEquals(List.of("gone"), losses().stream().map(LedgerLoss::what).toList());
	}

	@Test
	void saysOfLinesThatWerePutBackThatTheyWere() throws IOException {
		give("v-100");
		Verdict gone = verdicts().remove(3);
		open.save();
		git("commit", "-qam", "tidy up");
		assertEquals(List.of(false), losses().stream().map(LedgerLoss::putBack).toList());
		try (History history = open.history()) {
			open.restore(history.list(2).get(1), PERSON, null);
		}
		assertEquals(List.of(true), losses().stream().map(LedgerLoss::putBack).toList());
		assertTrue(verdicts().stream().anyMatch(v -> v.getId().equals(gone.getId())));
	}
}
