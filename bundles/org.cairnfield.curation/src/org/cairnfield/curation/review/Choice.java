package org.cairnfield.curation.review;

import java.util.Optional;
import java.util.Set;

import org.cairnfield.curation.decide.ReasonCode;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.model.Decision;

/** What a key of the reviewer decides. */
public enum Choice {
	APPROVE(Decision.APPROVE, "approved"), REJECT(Decision.REJECT, "rejected"), DEFER(Decision.DEFER, "deferred"),
	/** Rejects, and sets the sample aside. */
	FAULTY(Decision.REJECT, "marked as faulty");

	private final Decision decision;
	private final String done;

	Choice(Decision decision, String done) {
		this.decision = decision;
		this.done = done;
	}

	/** As the ledger has it. */
	public Decision decision() {
		return decision;
	}

	/** Such as "approved". */
	public String done() {
		return done;
	}

	/**
	 * The reason that goes with it: the chosen one where it suits the decision or is one's own, otherwise what the evidence
	 * says.
	 *
	 * @param chosen code, empty where the evidence is to say it
	 * @return null for none
	 */
	public String reason(String chosen, Evidence evidence) {
		Optional<ReasonCode> known = ReasonCode.named(chosen);
		if (!chosen.isBlank() && (known.isEmpty() || ReasonCode.of(decision).contains(known.get()))) {
			return chosen.strip();
		}
		if (evidence == null) {
			return null;
		}
		Set<Warning> warnings = evidence.warnings();
		return switch (this) {
			case APPROVE -> warnings.isEmpty() ? ReasonCode.FITS.code() : null;
			case REJECT -> warnings.contains(Warning.OTHER_FLOOR) ? ReasonCode.OTHER_FLOOR.code()
					: warnings.contains(Warning.NEAREST_DIFFERS) || warnings.contains(Warning.TIGHT_MARGIN)
							? ReasonCode.OTHER_CLUSTER.code()
							: warnings.contains(Warning.FAR) ? ReasonCode.FAR.code() : null;
			default -> null;
		};
	}
}
