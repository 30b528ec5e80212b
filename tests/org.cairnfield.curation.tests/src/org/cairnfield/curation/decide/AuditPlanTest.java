package org.cairnfield.curation.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.cairnfield.core.stats.SamplingPlan;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;

class AuditPlanTest {

	private final ReviewFixture f = new ReviewFixture();
	private static final String BAND = "all";

	AuditPlanTest() {
		f.policy = new ReviewPolicy(Bands.parse("all -1"), Set.of(), 0.10, 0.95);
	}

	private void look(AuditPlan audit, int reject) {
		int n = 0;
		for (SampleKey key : audit.drawn()) {
			Review review = f.by("M.Q.").inAudit(audit);
			f.run(n++ < reject ? review.reject(key, "far", null) : review.approve(key, "fits", null));
		}
	}

	@Test
	void approvesTheRestOfABandAfterItsAudit() {
		AuditPlan audit = f.by("M.Q.").audit(BAND, Set.of());
		int lot = f.proposals().size();
		assertEquals(SamplingPlan.limitingQuality(lot, 0.10, 0.95, 0), audit.plan());
		assertEquals(audit.plan().size(), new HashSet<>(audit.drawn()).size());
		assertTrue(audit.plan().size() < lot, audit::statement);
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").approveBand(BAND, Set.of()));
		look(audit, 0);
		f.run(f.by("M.Q.").approveBand(BAND, Set.of()));
		assertEquals(lot, f.standings().counts().get(ReviewState.APPROVED));
		LedgerEntry last = f.standings().entries().get(lot - 1);
		assertEquals("band-audited", last.reasonCode());
		assertEquals("audit-all-1", last.batch());
		assertTrue(last.text().contains(audit.plan().size() + " of " + lot + " proposals"), last::text);
		assertTrue(last.text().contains("M.Q., 0 not approved (0.0 to "), last::text);
		f.stack.undo();
		assertEquals(audit.plan().size(), f.standings().counts().get(ReviewState.APPROVED));
	}

	@Test
	void goesOnWhereItWasAfterARestart() {
		AuditPlan audit = f.by("M.Q.").audit(BAND, Set.of());
		f.run(f.by("M.Q.").inAudit(audit).approve(audit.drawn().get(0), "fits", null));
		AuditPlan again = f.by("J.T.").audit(BAND, Set.of());
		assertEquals(audit.drawn(), again.drawn());
		assertEquals(audit.lot(), again.lot());
		assertEquals(1, again.examined());
	}

	@Test
	void refusesABandThatFails() {
		AuditPlan audit = f.by("M.Q.").audit(BAND, Set.of());
		look(audit, 1);
		AuditPlan done = f.by("M.Q.").audit(BAND, Set.of());
		assertTrue(done.isComplete());
		assertFalse(done.isPassed());
		assertTrue(done.wilson().high() > 0.05, done::statement);
		ReviewRefused refused = assertThrows(ReviewRefused.class, () -> f.by("M.Q.").approveBand(BAND, Set.of()));
		assertTrue(refused.getMessage().contains("1 of "), refused.getMessage());
	}

	@Test
	void staysFailedWhenTheVerdictIsTakenBackOrSuperseded() {
		AuditPlan audit = f.by("M.Q.").audit(BAND, Set.of());
		SampleKey wrong = audit.drawn().get(0);
		look(audit, 1);
		f.recorded.savePointMade(f.archive);
		f.run(f.by("M.Q.").takeBack(wrong));
		f.run(f.by("M.Q.").inAudit(audit).approve(wrong, "fits", "looked again"));
		AuditPlan now = f.by("M.Q.").audit(BAND, Set.of());
		assertEquals(audit.id(), now.id());
		assertTrue(now.isFailed());
		assertFalse(now.isPassed());
		assertEquals(1, now.notApproved());
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").approveBand(BAND, Set.of()));
	}

	@Test
	void cannotBeMendedByUndo() {
		AuditPlan audit = f.by("M.Q.").audit(BAND, Set.of());
		f.run(f.by("M.Q.").inAudit(audit).pool(audit.drawn().get(0), null, null));
		f.stack.undo();
		assertEquals(ReviewState.UNDECIDED, f.state(audit.drawn().get(0)));
		assertEquals(2, f.standings().entries().size(), "the verdict, and the line that takes it back");
		assertTrue(f.by("M.Q.").audit(BAND, Set.of()).isFailed());
		f.run(f.by("M.Q.").inAudit(audit).approve(audit.drawn().get(1), "fits", null));
		f.stack.undo();
		assertEquals(2, f.standings().entries().size(), "an approval is undone as ever");
	}

	@Test
	void drawsAnotherLotAfterAFailureAndSaysSo() {
		AuditPlan failed = f.by("M.Q.").audit(BAND, Set.of());
		look(failed, 1);
		AuditPlan next = f.standings().auditAnew(BAND, Set.of());
		assertEquals("audit-all-2", next.id());
		assertEquals(List.of("audit-all-1"), next.failed());
		assertTrue(next.drawn().stream().noneMatch(failed.drawn()::contains));
		look(next, 0);
		assertEquals(next.id(), f.by("M.Q.").audit(BAND, Set.of()).id());
		f.run(f.by("M.Q.").approveBand(BAND, Set.of()));
		List<LedgerEntry> entries = f.standings().entries();
		assertTrue(entries.get(entries.size() - 1).text().startsWith("audit-all-2 (audit-all-1 failed): "),
				entries.get(entries.size() - 1)::text);
	}

	@Test
	void waitsForASampleThatWasDeferred() {
		AuditPlan audit = f.by("M.Q.").audit(BAND, Set.of());
		look(audit, 0);
		f.run(f.by("M.Q.").inAudit(audit).defer(audit.drawn().get(0), "ask", null));
		AuditPlan now = f.by("M.Q.").audit(BAND, Set.of());
		assertFalse(now.isComplete());
		assertFalse(now.isFailed());
		f.run(f.by("M.Q.").inAudit(audit).approve(audit.drawn().get(0), "fits", null));
		assertTrue(f.by("M.Q.").audit(BAND, Set.of()).isPassed());
	}

	@Test
	void countsAFaultySampleAsNotApproved() {
		AuditPlan audit = f.by("M.Q.").audit(BAND, Set.of());
		f.run(f.by("M.Q.").inAudit(audit).faulty(audit.drawn().get(0), "battery"));
		AuditPlan now = f.by("M.Q.").audit(BAND, Set.of());
		assertEquals(1, now.notApproved());
		assertEquals(audit.drawn(), now.drawn());
	}

	@Test
	void countsWhatIsDecidedBesideItOnceItHasBegun() {
		AuditPlan audit = f.by("M.Q.").audit(BAND, Set.of());
		SampleKey wrong = audit.drawn().get(1);
		f.run(f.by("M.Q.").inAudit(audit).approve(audit.drawn().get(0), "fits", null));
		f.run(f.by("J.T.").approve(audit.drawn().get(2), "fits", null));
		AuditPlan begun = f.by("M.Q.").audit(BAND, Set.of());
		assertEquals(audit.drawn(), begun.drawn(), "no drawn sample leaves the lot");
		assertEquals(2, begun.examined());
		assertEquals(List.of("J.T.", "M.Q."), begun.people());
		f.run(f.by("J.T.").reject(wrong, "far", null));
		AuditPlan failed = f.by("M.Q.").audit(BAND, Set.of());
		assertEquals(audit.drawn(), failed.drawn());
		assertTrue(failed.isFailed());
		f.recorded.savePointMade(f.archive);
		f.run(f.by("J.T.").takeBack(wrong));
		assertTrue(f.by("M.Q.").audit(BAND, Set.of()).isFailed(), "taken back, and still on record");
	}

	@Test
	void leavesOutWhatCarriesAMark() {
		List<SampleKey> all = f.by("M.Q.").audit(BAND, Set.of()).lot();
		Set<SampleKey> marks = Set.copyOf(all.subList(0, all.size() / 3));
		AuditPlan audit = f.by("M.Q.").audit(BAND, marks);
		assertEquals(marks.size(), audit.marked());
		assertTrue(audit.lot().stream().noneMatch(marks::contains));
		assertEquals(all.size(), marks.size() + audit.lot().size());
		for (SampleKey key : audit.drawn()) {
			f.run(f.by("M.Q.").inAudit(audit).approve(key, "fits", null));
		}
		f.run(f.by("M.Q.").approveBand(BAND, marks));
		marks.forEach(key -> assertEquals(ReviewState.UNDECIDED, f.state(key)));
		assertEquals(all.size() - marks.size(), f.standings().counts().get(ReviewState.APPROVED));
	}

	@Test
	void knowsOnlyBandsThatThereAre() {
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").audit("close", Set.of()));
	}
}
