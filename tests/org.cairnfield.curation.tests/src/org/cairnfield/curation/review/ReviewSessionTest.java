package org.cairnfield.curation.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.Home;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.split.RemoveSplitCommand;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.MoveSampleCommand;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviewSessionTest {

	private final SessionFixture f = new SessionFixture();
	private final ReviewSession session = f.session;

	private List<SampleKey> listed() {
		return session.queue().list().lines().stream().filter(line -> !line.isHeading()).map(line -> line.row().key())
				.toList();
	}

	private ReviewState state(SampleKey sample) {
		return session.standings().of(sample).state();
	}

	private long joined() {
		return session.standings().homes().stream().filter(home -> home.kind() == Home.Kind.CLUSTER).count();
	}

	private void approve() {
		session.setDraft(new RulingDraft("known-place", ""));
		assertTrue(session.decide(Choice.APPROVE), session.message().text());
	}

	@Test
	void beginsWithTheFirstSampleToDecideOnceTheEvidenceHasCome() {
		assertEquals("whole", session.split().getId());
		assertTrue(session.evidence().isWaiting());
		assertNull(session.current());
		f.compute();
		assertFalse(session.evidence().isWaiting());
		assertEquals(listed().get(0), session.current());
		assertEquals(session.current(), session.evidence().of(session.current()).sample());
	}

	@Test
	void takesUpTheNextSampleAsSoonAsOneIsDecidedAndBeforeTheLedgerIsRead() {
		f.compute();
		List<SampleKey> before = listed();
		approve();
		assertEquals(before.get(1), session.current());
		assertEquals(ReviewState.APPROVED, state(before.get(0)));
		assertEquals(before, listed(), "a verdict moves no line");
		assertEquals(ReviewState.UNDECIDED, session.standings().all().of(before.get(0)).orElseThrow().state());
		session.ledgersChanged();
		assertEquals(ReviewState.APPROVED, session.standings().all().of(before.get(0)).orElseThrow().state());
		assertEquals(before.get(1), session.current());
		assertEquals(RulingDraft.EMPTY, session.draft());
	}

	@Test
	void takesASampleInHandAgainWhoseVerdictIsUndone() {
		f.compute();
		SampleKey first = session.current();
		approve();
		f.stack.undo();
		session.undone("Approve");
		assertEquals(first, session.current());
		assertEquals(ReviewState.UNDECIDED, state(first));
		assertEquals("Undone: Approve.", session.message().text());
	}

	@Test
	void dropsEvidenceOfAnEarlierStateOfTheMap() {
		EvidenceRequest early = f.wanted.get(0);
		SampleRef ref = ArchiveIndex.of(f.archive).sample(f.split.getProposals().all().get(0).sample()).orElseThrow();
		f.stack.execute(new MoveSampleCommand(ref, ref.sample().xMetres() + 30, ref.sample().yMetres()));
		session.archiveChanged();
		session.accept(early.compute(Workers.inline()));
		assertFalse(session.evidence().isKnown());
		assertEquals(2, f.wanted.size());
		f.compute();
		assertTrue(session.evidence().isKnown());
		session.archiveChanged();
		assertEquals(2, f.wanted.size(), "nothing has changed since");
	}

	@Test
	void keepsTheSampleInHandWhenEvidenceIsComputedAgain() {
		f.compute();
		session.walk(1);
		SampleKey inHand = session.current();
		SampleRef ref = ArchiveIndex.of(f.archive).sample(listed().get(5)).orElseThrow();
		f.stack.execute(new MoveSampleCommand(ref, ref.sample().xMetres() + 1, ref.sample().yMetres()));
		session.archiveChanged();
		f.compute();
		assertEquals(inHand, session.current());
	}

	@Test
	void reportsWhyEvidenceCouldNotBeComputed() {
		session.evidenceFailed("the survey is empty");
		assertEquals("the survey is empty", session.evidence().problem());
		assertFalse(session.evidence().isWaiting());
	}

	@Test
	void refusesToDecideInAnArchiveThatCannotBeChanged() {
		f.compute();
		f.readOnly = "another program has it open";
		assertFalse(session.decide(Choice.DEFER));
		assertTrue(session.message().refused());
		assertEquals("Nothing can be decided: another program has it open.", session.message().text());
		assertTrue(f.archive.getLedgers().isEmpty());
	}

	@Test
	void asksForAReasonToApproveAgainstTheEvidence() {
		f.compute();
		QueueRow warned = session.queue().rows().stream()
				.filter(row -> row.evidence().made() && !row.evidence().marks().isEmpty())
				.findFirst().orElseThrow();
		session.show(warned.key());
		assertFalse(session.decide(Choice.APPROVE));
		assertTrue(session.message().text().startsWith("The evidence on " + warned.sample() + " warns ("
				+ warned.evidence().marks().get(0).word()), session.message().text());
		assertTrue(session.message().text().endsWith("choose a reason to approve it all the same (T), then press A."),
				session.message().text());
		session.setDraft(new RulingDraft("known-place", ""));
		assertTrue(session.decide(Choice.APPROVE), session.message().text());
	}

	@Test
	void leavesADisagreementToAThirdPerson() {
		session.setReviewer(new Reviewer("M.Q.", ReviewPolicy.USUAL.withSecond(Set.of("loose", "fair", "close"))));
		f.compute();
		SampleKey sample = session.current();
		approve();
		session.setReviewer(new Reviewer("J.T.", session.reviewer().policy()));
		session.show(sample);
		assertTrue(session.decide(Choice.POOL));
		session.ledgersChanged();
		session.show(sample);
		session.setDraft(new RulingDraft("known-place", "we talked"));
		assertFalse(session.decide(Choice.APPROVE));
		assertTrue(session.message().text().contains("a third person has to settle it"), session.message().text());
		session.setReviewer(new Reviewer("R.S.", session.reviewer().policy()));
		session.show(sample);
		session.setDraft(new RulingDraft("known-place", "I was there"));
		assertTrue(session.decide(Choice.APPROVE), session.message().text());
		session.ledgersChanged();
		assertEquals(ReviewState.APPROVED, state(sample));
	}

	@Test
	void holdsNothingOfASplitThatWasRemoved() {
		f.compute();
		f.stack.execute(new RemoveSplitCommand(f.archive, f.split));
		session.setReviewer(new Reviewer("J.T.", ReviewPolicy.USUAL));
		session.archiveChanged();
		assertNull(session.split());
		assertNull(session.current());
		assertEquals(List.of(), session.queue().rows());
		f.stack.undo();
		session.archiveChanged();
		f.compute();
		assertEquals("whole", session.split().getId());
		assertEquals(ReviewState.UNDECIDED, state(session.current()));
	}

	@Test
	void keepsAFaultySampleInTheQueue() {
		f.compute();
		SampleKey faulty = session.current();
		int rows = session.queue().rows().size();
		assertTrue(session.decide(Choice.FAULTY));
		SampleKey next = session.current();
		session.archiveChanged();
		f.compute();
		assertEquals(rows, session.queue().rows().size());
		assertTrue(listed().contains(faulty));
		assertEquals("∅ set aside", session.standings().text(faulty));
		assertEquals(next, session.current());
		session.show(faulty);
		assertEquals(f.split.getProposals().of(faulty).orElseThrow().cluster(),
				session.evidence().of(faulty).cluster());
		session.arrange(session.queue().settings().withShown(QueueShown.DECIDED));
		assertEquals(List.of(faulty), listed());
		f.stack.undo();
		session.archiveChanged();
		f.compute();
		assertEquals(0, session.evidence().of(faulty).index() < 0 ? 1 : 0, "it is in the map again");
	}

	@Test
	void movesASampleToTheClusterOfTheNearestLabelledOneUnlessAnotherIsNamed() {
		f.compute();
		QueueRow differing = session.queue().rows().stream()
				.filter(row -> row.evidence().made() && !row.evidence().agrees()).findFirst()
				.orElseThrow();
		session.show(differing.key());
		assertTrue(session.decide(Choice.MOVE), session.message().text());
		int nearest = differing.evidence().nearestCluster();
		assertEquals(differing.sample() + " moved to cluster " + nearest + " (other-cluster).",
				session.message().text());
		assertEquals("→ C" + nearest, session.standings().text(differing.key()), "before the ledger is read");
		session.ledgersChanged();
		assertEquals(Home.cluster(nearest), session.standings().all().of(differing.key()).orElseThrow().home());
		session.show(differing.key());
		int other = nearest == 0 || differing.evidence().cluster() == 0 ? 1 : 0;
		other = other == nearest || other == differing.evidence().cluster() ? 2 : other;
		session.setDraft(new RulingDraft(" c" + other, "", "by the lift"));
		assertTrue(session.decide(Choice.MOVE), session.message().text());
		session.ledgersChanged();
		assertEquals(Home.cluster(other), session.standings().all().of(differing.key()).orElseThrow().home());
		assertEquals(1, joined());
	}

	@Test
	void asksForAClusterWhereTheNearestLabelledSampleIsInTheOneProposed() {
		f.compute();
		QueueRow agreeing = session.queue().rows().stream()
				.filter(row -> row.evidence().made() && row.evidence().agrees()).findFirst()
				.orElseThrow();
		session.show(agreeing.key());
		assertFalse(session.decide(Choice.MOVE));
		assertEquals("The nearest labelled sample is in cluster " + agreeing.evidence().cluster()
				+ " too, which is proposed: press A, or name another cluster, then press M.", session.message().text());
		for (String written : List.of("lift", "-1", "99999999999")) {
			session.setDraft(new RulingDraft(written, "", ""));
			assertFalse(session.decide(Choice.MOVE));
			assertEquals("'" + written + "' is not a number of a cluster.", session.message().text());
		}
		session.setDraft(new RulingDraft("4711", "", ""));
		assertFalse(session.decide(Choice.MOVE));
		assertTrue(session.message().text().contains("has no cluster 4711"), session.message().text());
		assertTrue(f.archive.getLedgers().isEmpty());
	}

	@Test
	void sendsASampleToThePoolByOneKeyAndWithoutAReason() {
		f.compute();
		SampleKey sound = session.queue().rows().stream()
				.filter(row -> row.evidence().made() && row.evidence().warnings().isEmpty())
				.findFirst().orElseThrow().key();
		session.show(sound);
		assertTrue(session.decide(Choice.POOL), session.message().text());
		assertEquals(sound.sample() + " sent to the pool.", session.message().text());
		assertEquals("○ pool", session.standings().text(sound));
		session.ledgersChanged();
		assertEquals(Home.POOL, session.standings().all().of(sound).orElseThrow().home());
	}

	@Test
	void listsWhatIsAskedForAndKeepsThatForTheNextSplit() {
		f.compute();
		SampleKey first = session.current();
		session.decide(Choice.DEFER);
		session.ledgersChanged();
		session.arrange(session.queue().settings().withShown(QueueShown.DEFERRED));
		assertEquals(List.of(first), listed());
		SmallArchives.split(f.archive, "fine", 80, 4);
		session.choose("fine");
		assertEquals(List.of(), listed());
		assertEquals(QueueShown.DEFERRED, session.queue().settings().shown());
		f.compute();
		session.arrange(session.queue().settings().withShown(QueueShown.ALL));
		assertEquals(session.queue().rows().size(), listed().size());
	}

	@Test
	void hidesTheFirstVerdictFromTheSecondReviewerAndQueuesTheDisagreement() {
		session.setReviewer(new Reviewer("M.Q.", ReviewPolicy.USUAL.withSecond(Set.of("loose", "fair", "close"))));
		f.compute();
		SampleKey sample = session.current();
		approve();
		session.ledgersChanged();
		session.show(sample);
		session.setDraft(new RulingDraft("known-place", ""));
		assertFalse(session.decide(Choice.APPROVE));
		assertEquals("You gave the first verdict on " + sample.sample() + ", so somebody else has to give the second.",
				session.message().text());
		session.setReviewer(new Reviewer("J.T.", session.reviewer().policy()));
		assertEquals(ReviewMessage.NONE, session.message());
		assertTrue(session.standings().of(sample).hidden());
		assertEquals("2nd review", session.standings().text(sample));
		session.show(sample);
		session.setDraft(new RulingDraft("far", ""));
		assertTrue(session.decide(Choice.POOL));
		SampleKey next = session.current();
		assertNotEquals(sample, next);
		session.ledgersChanged();
		assertEquals(ReviewState.DISPUTED, state(sample));
		assertEquals(next, session.current(), "one's own verdict brings nothing back");
	}

	@Test
	void takesBackAVerdictHoweverOld() {
		f.compute();
		SampleKey sample = session.current();
		approve();
		session.savePointMade();
		session.show(sample);
		assertTrue(session.takeBack());
		assertEquals(ReviewState.UNDECIDED, state(sample));
		assertFalse(session.takeBack());
		assertTrue(session.message().refused());
	}

	@Test
	void holdsNothingOfAnArchiveWithoutSplits() {
		ReviewSession empty = new ReviewSession(ReviewedArchive.none(), new Reviewer("M.Q.", ReviewPolicy.USUAL),
				f.clock, ReviewListener.NONE);
		empty.archiveChanged();
		assertNull(empty.split());
		assertFalse(empty.decide(Choice.APPROVE));
		assertFalse(empty.takeBack());
		assertEquals("", empty.countText());
	}

	@Test
	void takesInATableUnlessTheArchiveHasChangedSinceItWasRead(@TempDir Path folder) throws Exception {
		f.compute();
		VerdictTransfer transfer = new VerdictTransfer(session);
		Path file = folder.resolve("verdicts.csv");
		assertEquals(session.queue().rows().size(), transfer.export(file).call());
		List<String> lines = Files.readAllLines(file);
		int decision = List.of(lines.get(0).split(",")).indexOf("decision");
		Files.write(file, lines.stream().map(line -> {
			String[] fields = line.split(",", -1);
			fields[decision] = line.equals(lines.get(0)) ? "decision" : "defer";
			return String.join(",", fields);
		}).collect(Collectors.toList()));
		VerdictTransfer.Table table = transfer.read(file).call();
		session.decide(Choice.DEFER);
		assertEquals(List.of(), transfer.take(table));
		assertEquals("The archive has changed while the table was read; take it in again.", session.message().text());
		session.ledgersChanged();
		transfer.take(transfer.read(file).call());
		assertFalse(session.message().refused(), session.message().text());
		assertTrue(session.queue().rows().stream().allMatch(row -> state(row.key()) == ReviewState.DEFERRED));
	}

	@Test
	void carriesVerdictsOverToASplitThatNobodyHasReviewed() throws Exception {
		f.compute();
		approve();
		session.ledgersChanged();
		SmallArchives.split(f.archive, "again", 90, 4);
		session.choose("again");
		VerdictTransfer transfer = new VerdictTransfer(session);
		assertEquals("whole", transfer.offer().orElseThrow().split().getId());
		assertTrue(transfer.carry(transfer.look("whole").call()), session.message().text());
		assertEquals("1 verdict carried over from whole. One Undo takes them back.", session.message().text());
		assertTrue(transfer.offer().isEmpty());
		assertNotNull(session.standings().all());
		assertEquals(1, joined());
	}
}
