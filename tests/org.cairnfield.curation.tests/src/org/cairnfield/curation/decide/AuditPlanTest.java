package org.cairnfield.curation.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
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
