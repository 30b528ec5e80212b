package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.PeopleReport;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.history.VerdictProof;
import org.cairnfield.archive.history.VerdictProof.Kind;
import org.cairnfield.archive.signature.Signatory;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** Who may sign for whom, and what the signatures say of who gave which verdict. All keys are made for the test. */
@Isolated
class PeopleTest {

	private static final Person LEAD = Person.named("L. Lead");
	private static final Person REVIEWER = Person.named("R. Reviewer");

	@TempDir
	Path folder;
	private Path root;
	private SigningGit keys;
	private PlainGit git;
	private OpenArchive open;
	private People people;
	private SavePoint first;

	@BeforeEach
	void create() throws IOException {
		keys = new SigningGit(folder);
		root = folder.resolve("quay");
		git = new PlainGit(root);
		ArchiveStore store = new ArchiveStore();
		open = store.create(root, "Marrow Quay");
		SampleArchives.fill(open.archive(), 7, 2, 10);
		open.archive().getLedgers().clear();
		people = new People(open, store);
		first = open.savePoint(LEAD, null).orElseThrow();
	}

	@AfterEach
	void close() throws IOException {
		keys.close();
		open.close();
	}

	private SavePoint add(String name, String owner, boolean lead) throws IOException {
		return people.add(name, keys.publicKey(owner), lead, LEAD, null);
	}

	private void leadAndReviewer() throws IOException {
		keys.signsAs("lead");
		add("L. Lead", "lead", false);
		add("R. Reviewer", "reviewer", false);
	}

	private List<String> names() throws IOException {
		return people.list().signatories().stream().map(Signatory::names).map(List::toString).toList();
	}

	private SavePoint give(String id, String person, String enteredBy, Person who) throws IOException {
		if (open.archive().getLedgers().isEmpty()) {
			Ledger made = ModelFactory.eINSTANCE.createLedger();
			made.setId("quay");
			open.archive().getLedgers().add(made);
		}
		Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
		verdict.setId(id);
		verdict.setSplit("all");
		verdict.setSample(new SampleKey("survey-0", "S-1"));
		verdict.setDecision(Decision.APPROVE);
		verdict.setPerson(person);
		verdict.setEnteredBy(enteredBy);
		open.archive().getLedgers().get(0).getVerdicts().add(verdict);
		return open.savePoint(who, null).orElseThrow();
	}

	private PeopleReport report() throws IOException {
		try (History history = open.history()) {
			return history.check().people();
		}
	}

	private Map<String, Kind> kinds() throws IOException {
		Map<String, Kind> kinds = new TreeMap<>();
		report().verdicts().forEach(v -> kinds.put(v.id(), v.kind()));
		return kinds;
	}

	@Test
	void theFirstPersonIsTheLeadAndNobodyElseChangesTheList() throws IOException {
		leadAndReviewer();
		assertEquals(List.of("[L. Lead]", "[R. Reviewer]"), names());
		String said = git.run("-c", "gpg.ssh.allowedSignersFile=" + root.resolve("people/allowed_signers"),
				"verify-commit", "HEAD");
		assertTrue(said.startsWith("Good \"git\" signature for L. Lead"), said);
		String head = git.run("rev-parse", "HEAD");
		keys.signsAs("reviewer");
		ArchiveException refused = assertThrows(ArchiveException.class, () -> add("S. Steward", "steward", false));
		assertTrue(refused.getMessage().contains("only the signature of L. Lead"), refused.getMessage());
		keys.signsNothing();
		ArchiveException unsigned = assertThrows(ArchiveException.class, () -> add("S. Steward", "steward", false));
		assertTrue(unsigned.getMessage().contains("commit.gpgSign"), unsigned.getMessage());
		assertEquals(head, git.run("rev-parse", "HEAD"));
		assertEquals("", git.run("status", "--porcelain"));
		keys.signsAs("lead");
		people.remove("R. Reviewer", LEAD, null);
		assertEquals(List.of("[L. Lead]"), names());
		assertEquals(List.of(), report().problems());
		assertEquals(3, report().changes().size(), report().changes()::toString);
	}

	@Test
	void nobodyBeginsAListThatTheyCannotSign() throws IOException {
		keys.signsAs("reviewer");
		ArchiveException refused = assertThrows(ArchiveException.class, () -> add("L. Lead", "lead", false));
		assertTrue(refused.getMessage().contains("unknown key"), refused.getMessage());
		Files.createDirectories(root.resolve("people"));
		Files.writeString(root.resolve("people/allowed_signers"),
				"L namespaces=\"cairnfield-people,git\" " + keys.publicKey("lead") + "\n");
		open.reload();
		open.savePoint(REVIEWER, null);
		assertEquals(List.of(), names());
		assertEquals(1, report().problems().size(), report().problems()::toString);
		leadAndReviewer();
		assertEquals(List.of("[L. Lead]", "[R. Reviewer]"), names());
	}

	@Test
	void aChangeThatNoLeadHasSignedDoesNotCountUntilALeadSignsTheList() throws IOException {
		leadAndReviewer();
		Path file = root.resolve("people/allowed_signers");
		keys.signsAs("reviewer");
		Files.writeString(file, Files.readString(file).replace("\"git\"", "\"git,cairnfield-people\""));
		open.reload();
		SavePoint grab = open.savePoint(REVIEWER, null).orElseThrow();
		open.archive().setName("later");
		open.savePoint(REVIEWER, null);
		assertEquals(1, people.list().leads().signatories().size());
		assertEquals(1, report().problems().size(), report().problems()::toString);
		assertTrue(report().problems().get(0).contains(grab.shortId()), report().problems()::toString);
		assertThrows(ArchiveException.class, () -> add("S. Steward", "steward", true));
		keys.signsAs("lead");
		add("S. Steward", "steward", false);
		assertEquals(List.of("[L. Lead]", "[R. Reviewer]", "[S. Steward]"), names());
		assertEquals(1, people.list().leads().signatories().size(), "the reviewer became a lead");
		assertEquals(List.of(), report().problems(), "a lead has signed a list since");
		assertTrue(report().changes().stream().anyMatch(change -> change.contains(grab.shortId())),
				report().changes()::toString);
	}

	@Test
	void saysOfEachVerdictWhoseSignatureStandsUnderIt() throws IOException {
		leadAndReviewer();
		keys.signsAs("reviewer");
		give("v-own", "r. reviewer", null, REVIEWER);
		give("v-forged", "L. Lead", null, LEAD);
		give("v-entered", "L. Lead", "R. Reviewer", REVIEWER);
		keys.signsNothing();
		give("v-unsigned", "R. Reviewer", null, REVIEWER);
		keys.signsAs("stranger");
		give("v-stranger", "R. Reviewer", null, REVIEWER);
		assertEquals(
				Map.of("v-own", Kind.SIGNED, "v-forged", Kind.OTHER, "v-entered", Kind.ENTERED, "v-unsigned",
						Kind.UNSIGNED, "v-stranger", Kind.UNKNOWN),
				kinds());
		VerdictProof forged = report().verdicts().stream().filter(v -> v.id().equals("v-forged")).findFirst()
				.orElseThrow();
		assertEquals("R. Reviewer", forged.signature().by());
	}

	private String signature(SavePoint point) throws IOException {
		try (History history = open.history()) {
			return history.check().signature(point).toString().replaceFirst(" \\(.*", "");
		}
	}

	@Test
	void saysOfEachSavePointWhoseSignatureItCarries() throws IOException {
		assertEquals("not signed", signature(first));
		keys.signsAs("reviewer");
		SavePoint early = give("v-early", "R. Reviewer", null, REVIEWER);
		leadAndReviewer();
		keys.signsAs("reviewer");
		SavePoint own = give("v-own", "R. Reviewer", null, REVIEWER);
		keys.signsAs("stranger");
		SavePoint strange = give("v-strange", "R. Reviewer", null, REVIEWER);
		assertEquals("good, by R. Reviewer", signature(own));
		assertEquals("good, by R. Reviewer", signature(early), "people sign before somebody names them");
		assertEquals("unknown key", signature(strange));
		git.run("checkout", "-q", "--detach", own.id());
		assertEquals("unknown key", signature(strange), "not taken in");
		git.run("checkout", "-q", "main");
	}

	@Test
	void findsASavePointThatWasChangedUnderItsSignature() throws IOException {
		leadAndReviewer();
		keys.signsAs("reviewer");
		give("v-1", "R. Reviewer", null, REVIEWER);
		Path commit = folder.resolve("commit");
		Files.writeString(commit,
				git.run("cat-file", "commit", "HEAD").replaceFirst("\nauthor R\\. Reviewer", "\nauthor X. Reviewer")
						+ '\n');
		git.run("update-ref", "HEAD", git.run("hash-object", "-t", "commit", "-w", commit.toString()));
		assertEquals(Map.of("v-1", Kind.BAD), kinds());
	}

	@Test
	void whatAPersonSignedStaysTheirsAfterTheKeyWasRemovedAndBeforeItWasNamed() throws IOException {
		keys.signsAs("reviewer");
		give("v-before", "R. Reviewer", null, REVIEWER);
		leadAndReviewer();
		keys.signsAs("reviewer");
		give("v-meanwhile", "R. Reviewer", null, REVIEWER);
		assertEquals(Map.of("v-before", Kind.SIGNED, "v-meanwhile", Kind.SIGNED), kinds());
		keys.signsAs("lead");
		people.remove("R. Reviewer", LEAD, null);
		keys.signsAs("reviewer");
		give("v-after", "R. Reviewer", null, REVIEWER);
		assertEquals(Map.of("v-before", Kind.SIGNED, "v-meanwhile", Kind.SIGNED, "v-after", Kind.UNKNOWN), kinds());
	}

	@Test
	void aMergeBringsNoVerdictThatNoSideHad() throws IOException {
		leadAndReviewer();
		keys.signsAs("reviewer");
		git.run("branch", "side");
		SavePoint own = give("v-1", "R. Reviewer", null, REVIEWER);
		keys.signsAs("lead");
		add("S. Steward", "steward", false);
		git.run("checkout", "-q", "side");
		Files.writeString(root.resolve("note.txt"), "x");
		git.run("add", "note.txt");
		git.run("commit", "-qm", "a note");
		git.run("checkout", "-q", "main");
		git.run("merge", "-q", "--no-edit", "side");
		open.reload();
		assertEquals(Map.of("v-1", Kind.SIGNED), kinds());
		assertEquals(3, names().size(), "the list of the later side counts");
		assertEquals(List.of(), report().problems());
		keys.signsAs("reviewer");
		give("v-2", "R. Reviewer", null, REVIEWER);
		String merge = git.run("commit-tree", "-m", "merge", "-p", own.id(), "-p", "side", "HEAD^{tree}");
		git.run("update-ref", "HEAD", merge);
		assertEquals(Map.of("v-1", Kind.SIGNED, "v-2", Kind.MERGED), kinds());
		assertEquals(1, report().problems().size(),
				"and it brings a list that no lead has signed: " + report().problems());
	}

	@Test
	void aMergeOfTwoListsHasToBeLookedAtByALead() throws IOException {
		leadAndReviewer();
		git.run("branch", "side");
		add("S. Steward", "steward", false);
		git.run("checkout", "-q", "side");
		open.reload();
		add("T. Tester", "tester", false);
		git.run("checkout", "-q", "main");
		git.run("merge", "-q", "--no-edit", "-X", "theirs", "side");
		open.reload();
		assertEquals(List.of("[L. Lead]", "[R. Reviewer]", "[T. Tester]"), names());
		assertEquals(1, report().problems().size(), report().problems()::toString);
		add("S. Steward", "steward", false);
		assertEquals(4, names().size());
		assertEquals(List.of(), report().problems());
	}

	@Test
	void restoringAnEarlierStateKeepsTheList() throws IOException {
		leadAndReviewer();
		open.archive().setName("later");
		open.savePoint(LEAD, null);
		keys.signsAs("reviewer");
		open.restore(first, REVIEWER, null);
		assertEquals(2, names().size());
		assertEquals(List.of(), report().problems());
	}

	@Test
	void withoutAListKeysAreLookedUpInThatOfTheUser() throws IOException {
		keys.signsAs("reviewer");
		give("v-1", "reviewer", null, Person.named("reviewer"));
		assertEquals(Map.of("v-1", Kind.UNKNOWN), kinds());
		keys.signsAs("reviewer", keys.signers("reviewer"));
		assertEquals(Map.of("v-1", Kind.SIGNED), kinds());
	}
}
