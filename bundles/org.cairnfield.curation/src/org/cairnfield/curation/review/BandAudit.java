package org.cairnfield.curation.review;

import java.util.Optional;

import org.cairnfield.curation.decide.AuditPlan;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.model.values.SampleKey;

/** Which audit of a band is under way: its drawn samples are looked at before the rest is approved at once. */
public final class BandAudit {

	private Standings standings;
	private AuditPlan looking;

	BandAudit() {
	}

	/** The audit of a band as it would be, or is under way; empty where there is no such band or split. */
	public Optional<AuditPlan> of(String band) {
		try {
			return Optional.ofNullable(standings).map(all -> all.audit(band));
		} catch (ReviewRefused e) {
			return Optional.empty();
		}
	}

	/** The audit whose drawn samples are being looked at; empty for none. */
	public Optional<AuditPlan> looking() {
		return Optional.ofNullable(looking);
	}

	/** Whether a verdict on a sample counts for the audit under way. */
	public boolean hasDrawn(SampleKey sample) {
		return looking != null && looking.drawn().contains(sample);
	}

	/** Looks at the audit of a band; at another one where that has failed. @param band null for none */
	void look(String band) {
		looking = band == null || of(band).isEmpty() ? null : standings.auditAnew(band);
	}

	/** @param now null for no split */
	void renew(Standings now) {
		standings = now;
		if (looking != null) {
			// one that was drawn after another had failed is in the ledger from its first verdict on
			looking = of(looking.band().name()).map(plan -> looking.failed().contains(plan.id()) ? standings.auditAnew(plan.band().name()) : plan)
					.orElse(null);
		}
	}
}
