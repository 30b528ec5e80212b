package org.cairnfield.curation.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Round;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.edit.MoveSampleCommand;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.model.values.SampleKey;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

class ReviewTest {

	private final ReviewFixture f = new ReviewFixture();
	private final SampleKey one = f.sample(0);
	private final SampleKey other = f.sample(1);

	@Test
	void keepsAVerdictWithPersonTimeReasonAndWhatItRestsOn() {
		f.run(f.by(" M.Q. ").approve(one, "fits", "by the stairs"));
		LedgerEntry entry = f.standing(one).first().get();
		assertEquals("M.Q.", entry.person());
		assertEquals("fits", entry.reasonCode());
		assertEquals("by the stairs", entry.text());
		assertEquals(f.proposals().get(0).cluster(), entry.cluster());
		assertEquals(16, entry.sampleContent().length());
		assertEquals(16, entry.evidence().length());
		assertEquals(Round.FIRST, entry.round());
		assertEquals("whole", f.archive.getLedgers().get(0).getId());
		assertEquals(Diagnostic.OK, Diagnostician.INSTANCE.validate(f.archive.getLedgers().get(0)).getSeverity());
		assertEquals(ReviewState.APPROVED, f.state(one));
		assertEquals(ReviewState.UNDECIDED, f.state(other));
	}

	@Test
	void letsALaterVerdictSupersedeAndShowsBoth() {
		f.run(f.by("M.Q.").approve(one, "fits", null));
		f.run(f.by("J.T.").reject(one, "far", null));
		Standing standing = f.standing(one);
		assertEquals(ReviewState.REJECTED, standing.state());
		assertEquals(2, standing.entries().size());
		assertEquals(standing.entries().get(0).id(), standing.entries().get(1).supersedes());
	}

	/** As an exchange brings them together. */
	private void giveApart(Runnable mine, Runnable theirs) {
		mine.run();
		Verdict first = EcoreUtil.copy(f.archive.getLedgers().get(0).getVerdicts().get(0));
		f.stack.undo();
		theirs.run();
		f.archive.getLedgers().get(0).getVerdicts().add(0, first);
	}

	@Test
	void twoWhoDecideDifferentlyWithoutKnowingOfEachOtherAreInDisputeUntilAThirdSettlesIt() {
		giveApart(() -> f.run(f.by("M.Q.").approve(one, "fits", null)),
				() -> f.run(f.by("J.T.").pool(one, "far", null)));
		assertEquals(ReviewState.DISPUTED, f.state(one));
		assertThrows(ReviewRefused.class, () -> f.by("J.T.").resolve(one, Decision.POOL, null, "far indeed"));
		f.run(f.by("A.B.").resolve(one, Decision.APPROVE, null, "heard it there"));
		assertEquals(ReviewState.APPROVED, f.state(one));
	}

	@Test
	void twoWhoDecideAlikeWithoutKnowingOfEachOtherAreTwoReviewers() {
		giveApart(() -> f.run(f.by("M.Q.").approve(one, "fits", null)),
				() -> f.run(f.by("J.T.").approve(one, "fits", null)));
		assertEquals(ReviewState.APPROVED, f.state(one));
		assertEquals("J.T.", f.standing(one).second().get().person());
	}

	@Test
	void undoesAndRedoes() {
		f.run(f.by("M.Q.").defer(one, "ask", null));
		f.stack.undo();
		assertEquals(ReviewState.UNDECIDED, f.state(one));
		assertTrue(f.archive.getLedgers().isEmpty());
		f.stack.redo();
		assertEquals(ReviewState.DEFERRED, f.state(one));
		assertEquals(1, f.standing(one).entries().size());
	}

	@Test
	void appendsOnceASavePointHoldsTheVerdict() {
		f.run(f.by("M.Q.").approve(one, "fits", null));
		f.run(f.by("M.Q.").reject(one, "far", null));
		f.recorded.savePointMade(f.archive);
		f.stack.undo();
		assertEquals(ReviewState.APPROVED, f.state(one));
		assertEquals(3, f.standing(one).entries().size());
		f.stack.redo();
		assertEquals(ReviewState.REJECTED, f.state(one));
		assertEquals(2, f.standing(one).entries().size());
		f.stack.undo();
		f.recorded.savePointMade(f.archive);
		f.stack.redo();
		assertEquals(ReviewState.REJECTED, f.state(one));
		assertEquals(4, f.standing(one).entries().size());
	}

	@Test
	void takesBackAnOldVerdictOfOnesOwn() {
		f.run(f.by("M.Q.").approve(one, "fits", null));
		assertThrows(ReviewRefused.class, () -> f.by("J.T.").takeBack(one));
		f.run(f.by("m.q.").takeBack(one));
		assertEquals(ReviewState.UNDECIDED, f.state(one));
		assertEquals(2, f.standing(one).entries().size());
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").takeBack(one));
	}

	@Test
	void marksAVerdictStaleWhenTheSampleIsEdited() {
		f.run(f.by("M.Q.").approve(one, "fits", null));
		var ref = f.ref(one);
		f.run(new MoveSampleCommand(ref, ref.sample().xMetres() + 1, ref.sample().yMetres()));
		assertEquals(ReviewState.STALE, f.state(one));
		assertFalse(f.standing(one).joins());
		f.stack.undo();
		assertEquals(ReviewState.APPROVED, f.state(one));
	}

	@Test
	void marksAVerdictStaleWhenItsCarrierChangesOrIsSetAside() {
		f.run(f.by("M.Q.").approve(one, "fits", null));
		f.run(SetSampleStateCommand.setAside(List.of(f.ref(f.proposals().get(0).carrier())), "doubtful"));
		assertEquals(ReviewState.STALE, f.state(one));
	}

	@Test
	void marksAVerdictStaleWhenTheProposalChanges() {
		f.run(f.by("M.Q.").approve(one, "fits", null));
		var p = f.proposals().get(0);
		f.split.setProposals(org.cairnfield.model.values.Proposals.of(f.proposals().stream().map(x -> x == p
				? new org.cairnfield.model.values.Proposal(p.sample(), p.cluster(), p.strengthR() - 0.02, p.margin(),
						p.carrier(), p.nearestCluster())
				: x).toList()));
		assertEquals(ReviewState.STALE, f.state(one));
		f.run(f.by("J.T.").approve(one, "fits", null));
		assertEquals(ReviewState.APPROVED, f.state(one));
	}

	@Test
	void setsAFaultySampleAsideWithItsVerdictAndBack() {
		f.run(f.by("M.Q.").faulty(one, "battery\nlow"));
		assertEquals("faulty: battery low", f.ref(one).sample().reason());
		assertEquals(ReviewState.SET_ASIDE, f.state(one));
		assertEquals("faulty", f.standing(one).first().get().reasonCode());
		assertFalse(f.standing(one).stale());
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").approve(one, "fits", null));
		f.stack.undo();
		assertEquals(null, f.ref(one).sample().reason());
		assertEquals(ReviewState.UNDECIDED, f.state(one));
		f.stack.redo();
		f.run(SetSampleStateCommand.keep(List.of(f.ref(one))));
		assertEquals(ReviewState.STALE, f.state(one));
	}

	@Test
	void refusesWhatTheRulesDoNotAllow() {
		SampleKey labelled = f.proposals().get(0).carrier();
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").approve(labelled, "fits", null));
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").reject(one, " ", null));
		assertThrows(ReviewRefused.class, () -> f.by(" "));
		SmallArchives.propose(f.archive, f.split, 0.9);
		SampleKey unplaced = f.proposals().stream().filter(p -> p.strengthR() < 0.9).findFirst().get().sample();
		assertEquals(ReviewState.UNPLACED, f.state(unplaced));
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").approve(unplaced, "fits", null));
		f.run(f.by("M.Q.").reject(unplaced, "far", null));
		assertEquals(ReviewState.REJECTED, f.state(unplaced));
	}

	@Test
	void hidesTheFirstVerdictFromTheSecondReviewer() {
		f.withSecond();
		f.run(f.by("M.Q.").approve(one, "fits", "secret"));
		Standing seen = f.standing(one).seenBy("J.T.");
		assertTrue(seen.hidden());
		assertEquals(ReviewState.UNDECIDED, seen.state());
		assertTrue(seen.entries().isEmpty() && seen.first().isEmpty());
		assertFalse(f.standing(one).seenBy("m.q.").hidden());
		assertFalse(f.standing(one).joins());
		assertTrue(f.standing(one).isOpen());
		f.run(f.by("J.T.").approve(one, "fits", null));
		assertEquals(Round.SECOND, f.standing(one).second().get().round());
		assertFalse(f.standing(one).seenBy("J.T.").hidden());
		assertTrue(f.standing(one).joins());
	}

	@Test
	void letsNobodyBeTheirOwnSecond() {
		f.withSecond();
		f.run(f.by("M.Q.").approve(one, "fits", null));
		assertThrows(ReviewRefused.class, () -> f.by("m.q. ").second(one, Decision.APPROVE, "fits", null));
		f.run(f.by("M.Q.").approve(one, "fits", "again"));
		assertTrue(f.standing(one).awaitsSecond());
		f.run(f.by("J.T.").second(one, Decision.REJECT, "far", null));
		// who gave the second does not become the first either
		f.run(f.by("J.T.").approve(one, "fits", null));
		assertEquals("M.Q.", f.standing(one).first().get().person());
		assertEquals("J.T.", f.standing(one).second().get().person());
	}

	@Test
	void queuesDisagreementsUntilTheyAreSettled() {
		f.withSecond();
		f.run(f.by("M.Q.").approve(one, "fits", null));
		f.run(f.by("J.T.").reject(one, "far", null));
		assertEquals(ReviewState.DISPUTED, f.state(one));
		assertEquals(List.of(one), f.standings().disputes().stream().map(Standing::sample).toList());
		assertThrows(ReviewRefused.class, () -> f.by("A.L.").resolve(one, Decision.APPROVE, "fits", " "));
		for (String either : List.of("m.q.", "J.T.")) {
			ReviewRefused refused = assertThrows(ReviewRefused.class,
					() -> f.by(either).resolve(one, Decision.APPROVE, "fits", "we talked"));
			assertTrue(refused.getMessage().contains("a third person"), refused.getMessage());
		}
		f.run(f.by("A.L.").resolve(one, Decision.APPROVE, "fits", "seen on site"));
		assertEquals(ReviewState.APPROVED, f.state(one));
		assertTrue(f.standing(one).joins());
		f.run(f.by("J.T.").reject(one, "far", "still"));
		assertEquals(ReviewState.DISPUTED, f.state(one));
		f.run(f.by("J.T.").approve(one, "fits", "convinced"));
		assertEquals(ReviewState.APPROVED, f.state(one));
		assertThrows(ReviewRefused.class, () -> f.by("A.L.").resolve(one, Decision.REJECT, "far", "late"));
	}

	@Test
	void statesTheAgreementOfTheBlindVerdicts() {
		f.withSecond();
		// The worked example of 50 items: 20 approved by both, 5 and 10 by one alone, 15 by none: κ 0.4 (see KappaTest).
		int[][] counts = { { 20, 5 }, { 10, 15 } };
		int next = 0;
		for (int i = 0; i < 2; i++) {
			for (int j = 0; j < 2; j++) {
				for (int n = 0; n < counts[i][j]; n++) {
					SampleKey key = f.sample(next++);
					f.run(i == 0 ? f.by("M.Q.").approve(key, "fits", null) : f.by("M.Q.").reject(key, "far", null));
					f.run(f.by("J.T.").second(key, j == 0 ? Decision.APPROVE : Decision.REJECT, "fits", null));
				}
			}
		}
		f.run(f.by("J.T.").approve(f.sample(20), "fits", "after talking")); // does not count
		Agreement agreement = f.standings().agreement();
		assertEquals(0.4, agreement.kappa().value(), 1e-12);
		assertEquals(50, agreement.kappa().items());
		assertEquals(15, agreement.differing().size());
		assertEquals(14, f.standings().disputes().size());
	}

	@Test
	void saysThatKappaSaysNothingWhereOneReviewerGaveAllTheSameAnswer() {
		f.withSecond();
		for (int i = 0; i < 6; i++) {
			f.run(f.by("M.Q.").approve(f.sample(i), "fits", null));
			f.run(f.by("J.T.").second(f.sample(i), i < 2 ? Decision.POOL : Decision.APPROVE, null, null));
		}
		Agreement agreement = f.standings().agreement();
		assertTrue(agreement.isDegenerate());
		assertEquals("κ says nothing, as one of the two gave every sample the same answer", agreement.kappaText());
		f.run(f.by("M.Q.").pool(f.sample(6), null, null));
		f.run(f.by("J.T.").second(f.sample(6), Decision.POOL, null, null));
		assertFalse(f.standings().agreement().isDegenerate());
		assertTrue(f.standings().agreement().kappaText().startsWith("Cohen's κ 0."),
				f.standings().agreement().kappaText());
	}

	@Test
	void countsNoPairWhereTheFirstVerdictCameWithItsBand() {
		f.policy = new ReviewPolicy(org.cairnfield.curation.propose.Bands.parse("all -1"), java.util.Set.of("all"),
				0.10, 0.95);
		AuditPlan audit = f.by("M.Q.").audit("all", Set.of());
		audit.drawn().forEach(key -> f.run(f.by("M.Q.").inAudit(audit).approve(key, "fits", null)));
		SampleKey unseen = f.by("M.Q.").audit("all", Set.of()).rest().get(0);
		f.run(f.by("M.Q.").approveBand("all", Set.of()));
		f.run(f.by("J.T.").second(unseen, Decision.APPROVE, "fits", null));
		assertEquals(0, f.standings().agreement().kappa().items());
		f.run(f.by("J.T.").second(audit.drawn().get(0), Decision.APPROVE, "fits", null));
		assertEquals(1, f.standings().agreement().kappa().items());
	}

	@Test
	void makesApprovedSamplesJoinTheirCluster() {
		SplitOnMap onMap = SplitOnMap.of(f.archive, f.split);
		f.run(f.by("M.Q.").approve(one, "fits", null));
		f.run(f.by("M.Q.").reject(other, "far", null));
		f.run(f.by("M.Q.").defer(f.sample(2), null, null));
		Outcome outcome = Outcome.of(onMap, f.standings());
		int cluster = f.proposals().get(0).cluster();
		assertEquals(cluster, outcome.clustering().label(onMap.index(one)));
		assertTrue(outcome.clustering().isNoise(onMap.index(other)));
		assertTrue(outcome.clustering().isNoise(onMap.index(f.sample(2))));
		assertEquals(1, outcome.joined());
		assertEquals(onMap.clustering().noise() - 1, outcome.noise());
		assertEquals(onMap.clustering().sizes()[cluster] + 1, outcome.clustering().sizes()[cluster]);
		assertTrue(outcome.open() > 0);
		assertEquals(f.proposals().size() - 2, outcome.open());
	}

	@Test
	void holdsTheGateUntilAllIsDecided() {
		f.run(f.by("M.Q.").decide(f.proposals().stream().map(p -> p.sample()).toList(), Decision.REJECT, "far", null));
		assertEquals(0, Outcome.of(SplitOnMap.of(f.archive, f.split), f.standings()).open());
		f.run(f.by("M.Q.").defer(one, "ask", null));
		assertEquals(1, Outcome.of(SplitOnMap.of(f.archive, f.split), f.standings()).open());
	}
}
