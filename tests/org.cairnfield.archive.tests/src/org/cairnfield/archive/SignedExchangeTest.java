package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.PeopleReport;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.VerdictProof.Kind;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** Signatures travel: what two people have signed apart is still theirs after an exchange, which its maker signs. */
@Isolated
class SignedExchangeTest {

	private static final String LEAD = "L. Lead";
	private static final String REVIEWER = "R. Reviewer";

	@TempDir
	Path folder;

	private static void give(Archive archive, String id, String person) {
		Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
		verdict.setId(id);
		verdict.setSplit("all");
		verdict.setSample(new SampleKey("survey-0", "S-1"));
		verdict.setDecision(Decision.APPROVE);
		verdict.setPerson(person);
		verdict.setTime(Instant.parse("2031-05-02T10:00:00Z"));
		archive.getLedgers().get(0).getVerdicts().add(verdict);
	}

	@Test
	void verdictsStayProvenThroughAMergeOfBothSides() throws IOException {
		try (SigningGit keys = new SigningGit(folder); Clones clones = new Clones(folder, archive -> {
			SampleArchives.fill(archive, 7, 2, 12);
			archive.getLedgers().get(0).getVerdicts().clear();
		}, LEAD, REVIEWER)) {
			keys.signsAs("lead");
			People people = new People(clones.of(LEAD), new ArchiveStore());
			people.add(LEAD, keys.publicKey("lead"), true, Person.named(LEAD), null);
			people.add(REVIEWER, keys.publicKey("reviewer"), false, Person.named(LEAD), null);
			clones.exchange(LEAD);
			keys.signsAs("reviewer");
			clones.exchange(REVIEWER);
			clones.edit(REVIEWER, archive -> give(archive, "v-r", REVIEWER));
			keys.signsAs("lead");
			clones.edit(LEAD, archive -> give(archive, "v-l", LEAD));
			clones.exchange(LEAD);
			keys.signsAs("reviewer");
			assertTrue(clones.exchange(REVIEWER).merged().isPresent(), "nothing was merged");
			Map<String, Kind> kinds = new TreeMap<>();
			try (History history = clones.of(REVIEWER).history()) {
				PeopleReport report = history.check().people();
				report.verdicts().forEach(verdict -> kinds.put(verdict.id(), verdict.kind()));
				assertEquals(List.of(), report.problems());
				assertEquals(2, report.signers().signatories().size());
			}
			assertEquals(Map.of("v-l", Kind.SIGNED, "v-r", Kind.SIGNED), kinds);
			String said = new PlainGit(clones.folder(REVIEWER)).run("-c",
					"gpg.ssh.allowedSignersFile=" + keys.signers("reviewer"), "verify-commit", "HEAD");
			assertTrue(said.startsWith("Good \"git\" signature for reviewer"), said);
		}
	}
}
