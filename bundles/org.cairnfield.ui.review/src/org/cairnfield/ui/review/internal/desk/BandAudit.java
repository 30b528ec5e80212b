package org.cairnfield.ui.review.internal.desk;

import java.util.Optional;

import org.cairnfield.curation.decide.AuditPlan;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.model.values.SampleKey;

/** Approving a band of strength at once, after an audit of samples drawn by lot. */
public final class BandAudit {

	private final ReviewDesk desk;
	private final VerdictDesk verdicts;
	private AuditPlan looking;

	BandAudit(ReviewDesk desk, VerdictDesk verdicts) {
		this.desk = desk;
		this.verdicts = verdicts;
	}

	/** The audit of a band as it would be, or is under way; empty where there is no such band or split. */
	public Optional<AuditPlan> of(String band) {
		try {
			return Optional.ofNullable(verdicts.standings()).map(standings -> standings.audit(band));
		} catch (ReviewRefused e) {
			return Optional.empty();
		}
	}

	/** The audit whose drawn samples are being looked at; empty for none. */
	public Optional<AuditPlan> looking() {
		return Optional.ofNullable(looking);
	}

	/** Whether a verdict on a sample counts for the audit under way. */
	boolean hasDrawn(SampleKey sample) {
		return looking != null && looking.drawn().contains(sample);
	}

	/** Looks at the samples that an audit has drawn, or at all again (null). */
	public void look(String band) {
		looking = band == null ? null : of(band).orElse(null);
		desk.arrange(desk.settings());
		if (looking != null && !hasDrawn(desk.current())) {
			desk.walk(1);
		}
		desk.tell(DeskListener::verdictsChanged);
	}

	/** Nobody looks at an audit any more. */
	void end() {
		looking = null;
	}

	/** Standings have changed. */
	void renew() {
		if (looking != null) {
			looking = of(looking.band().name()).orElse(null);
		}
	}

	/** Approves the rest of a band after its audit. */
	public void approveRest(String band) {
		int rest = of(band).map(plan -> plan.rest().size()).orElse(0);
		verdicts.attempt(() -> {
			if (desk.session().run(verdicts.review().approveBand(band))) {
				verdicts.changedAtOnce(rest + " proposals of band " + band + " approved after the audit.");
			} else {
				verdicts.refuse("Band " + band + " has nothing left to approve.");
			}
		});
	}
}
