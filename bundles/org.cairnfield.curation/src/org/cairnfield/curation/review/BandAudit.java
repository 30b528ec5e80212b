package org.cairnfield.curation.review;

import java.util.Optional;
import java.util.Set;

import org.cairnfield.curation.decide.AuditPlan;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.model.values.SampleKey;

/** Which audit of a band is under way: its drawn samples are looked at before the rest is approved at once. */
public final class BandAudit {

	private Standings standings;
	private Set<SampleKey> marks = Set.of();
	private AuditPlan looking;

	BandAudit() {
	}

	/** The audit of a band as it would be, or is under way; empty where there is no such band or split. */
	public Optional<AuditPlan> of(String band) {
		try {
			return Optional.ofNullable(standings).map(all -> all.audit(band, marks));
		} catch (ReviewRefused e) {
			return Optional.empty();
		}
	}

	/** The audit whose drawn samples are being looked at; empty for none. */
	public Optional<AuditPlan> looking() {
		return Optional.ofNullable(looking);
	}

	/** Whether a sample is one of those that are being looked at. */
	public boolean hasDrawn(SampleKey sample) {
		return looking != null && looking.drawn().contains(sample);
	}

	/** The audit for which a verdict on a sample counts: the one looked at, or any that has begun and has drawn it. */
	Optional<AuditPlan> counting(SampleKey sample) {
		if (hasDrawn(sample)) {
			return looking();
		}
		if (standings == null || standings.entries().stream().allMatch(entry -> entry.batch() == null)) {
			return Optional.empty();
		}
		return standings.policy().bands().all().stream().map(band -> standings.audit(band.name(), marks))
				.filter(plan -> plan.isBegun() && plan.drawn().contains(sample)).findFirst();
	}

	/** Looks at the audit of a band; at another one where that has failed. @param band null for none */
	void look(String band) {
		looking = band == null || of(band).isEmpty() ? null : standings.auditAnew(band, marks);
	}

	/**
	 * @param now  null for no split
	 * @param mark samples to be looked at one by one
	 */
	void renew(Standings now, Set<SampleKey> mark) {
		standings = now;
		marks = mark;
		if (looking != null) {
			// one that was drawn after another had failed is in the ledger from its first verdict on
			looking = of(looking.band().name())
					.map(plan -> looking.failed().contains(plan.id()) ? standings.auditAnew(plan.band().name(), marks)
							: plan)
					.orElse(null);
		}
	}
}
