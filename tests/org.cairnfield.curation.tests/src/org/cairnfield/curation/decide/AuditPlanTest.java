package org.cairnfield.curation.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.cairnfield.core.stats.SamplingPlan;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;

class AuditPlanTest {

	private final ReviewFixture f = new ReviewFixture();
	private static final String BAND = "all";

	AuditPlanTest() {
		f.policy = new ReviewPolicy(Bands.parse("all -1"), java.util.Set.of(), 0.10, 0.95);
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
		AuditPlan audit = f.by("M.Q.").audit(BAND);
		int lot = f.proposals().size();
		assertEquals(SamplingPlan.limitingQuality(lot, 0.10, 0.95, 0), audit.plan());
		assertEquals(audit.plan().size(), new HashSet<>(audit.drawn()).size());
		assertTrue(audit.plan().size() < lot, audit::statement);
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").approveBand(BAND));
		look(audit, 0);
		f.run(f.by("M.Q.").approveBand(BAND));
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
		AuditPlan audit = f.by("M.Q.").audit(BAND);
		f.run(f.by("M.Q.").inAudit(audit).approve(audit.drawn().get(0), "fits", null));
		AuditPlan again = f.by("J.T.").audit(BAND);
		assertEquals(audit.drawn(), again.drawn());
		assertEquals(audit.lot(), again.lot());
		assertEquals(1, again.examined());
	}

	@Test
	void refusesABandThatFails() {
		AuditPlan audit = f.by("M.Q.").audit(BAND);
		look(audit, 1);
		AuditPlan done = f.by("M.Q.").audit(BAND);
		assertTrue(done.isComplete());
		assertFalse(done.isPassed());
		assertTrue(done.wilson().high() > 0.05, done::statement);
		ReviewRefused refused = assertThrows(ReviewRefused.class, () -> f.by("M.Q.").approveBand(BAND));
		assertTrue(refused.getMessage().contains("1 of "), refused.getMessage());
	}

	@Test
	void staysFailedWhenTheVerdictIsTakenBackOrSuperseded() {
		AuditPlan audit = f.by("M.Q.").audit(BAND);
		SampleKey wrong = audit.drawn().get(0);
		look(audit, 1);
		f.recorded.savePointMade(f.archive);
		f.run(f.by("M.Q.").takeBack(wrong));
		f.run(f.by("M.Q.").inAudit(audit).approve(wrong, "fits", "looked again"));
		AuditPlan now = f.by("M.Q.").audit(BAND);
		assertEquals(audit.id(), now.id());
		assertTrue(now.isFailed());
		assertFalse(now.isPassed());
		assertEquals(1, now.notApproved());
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").approveBand(BAND));
	}

	@Test
	void cannotBeMendedByUndo() {
		AuditPlan audit = f.by("M.Q.").audit(BAND);
		f.run(f.by("M.Q.").inAudit(audit).pool(audit.drawn().get(0), null, null));
		f.stack.undo();
		assertEquals(ReviewState.UNDECIDED, f.state(audit.drawn().get(0)));
		assertEquals(2, f.standings().entries().size(), "the verdict, and the line that takes it back");
		assertTrue(f.by("M.Q.").audit(BAND).isFailed());
		f.run(f.by("M.Q.").inAudit(audit).approve(audit.drawn().get(1), "fits", null));
		f.stack.undo();
		assertEquals(2, f.standings().entries().size(), "an approval is undone as ever");
	}

	@Test
	void drawsAnotherLotAfterAFailureAndSaysSo() {
		AuditPlan failed = f.by("M.Q.").audit(BAND);
		look(failed, 1);
		AuditPlan next = f.standings().auditAnew(BAND);
		assertEquals("audit-all-2", next.id());
		assertEquals(List.of("audit-all-1"), next.failed());
		assertTrue(next.drawn().stream().noneMatch(failed.drawn()::contains));
		look(next, 0);
		assertEquals(next.id(), f.by("M.Q.").audit(BAND).id());
		f.run(f.by("M.Q.").approveBand(BAND));
		List<LedgerEntry> entries = f.standings().entries();
		assertTrue(entries.get(entries.size() - 1).text().startsWith("audit-all-2 (audit-all-1 failed): "), entries.get(entries.size() - 1)::text);
	}

	@Test
	void waitsForASampleThatWasDeferred() {
		AuditPlan audit = f.by("M.Q.").audit(BAND);
		look(audit, 0);
		f.run(f.by("M.Q.").inAudit(audit).defer(audit.drawn().get(0), "ask", null));
		AuditPlan now = f.by("M.Q.").audit(BAND);
		assertFalse(now.isComplete());
		assertFalse(now.isFailed());
		f.run(f.by("M.Q.").inAudit(audit).approve(audit.drawn().get(0), "fits", null));
		assertTrue(f.by("M.Q.").audit(BAND).isPassed());
	}

	@Test
	void countsAFaultySampleAsNotApproved() {
		AuditPlan audit = f.by("M.Q.").audit(BAND);
		f.run(f.by("M.Q.").inAudit(audit).faulty(audit.drawn().get(0), "battery"));
		AuditPlan now = f.by("M.Q.").audit(BAND);
		assertEquals(1, now.notApproved());
		assertEquals(audit.drawn(), now.drawn());
	}

	@Test
	void knowsOnlyBandsThatThereAre() {
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").audit("close"));
	}
}
