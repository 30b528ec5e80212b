package org.cairnfield.curation.review;

import java.util.Optional;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.ReasonCode;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.model.Decision;

/** What a key of the reviewer decides: one a home of the sample, and one to decide later. */
public enum Choice {
	APPROVE(Decision.APPROVE, ReviewState.APPROVED),
	/** Into another cluster than the one proposed. */
	MOVE(Decision.MOVE, ReviewState.MOVED),
	/** To where every query searches. */
	POOL(Decision.POOL, ReviewState.POOLED),
	/** Takes the sample out of the map, and sets it aside. */
	FAULTY(Decision.FAULTY, ReviewState.SET_ASIDE),
	DEFER(Decision.DEFER, ReviewState.DEFERRED);

	private final Decision decision;
	private final ReviewState expected;

	Choice(Decision decision, ReviewState expected) {
		this.decision = decision;
		this.expected = expected;
	}

	/** As the ledger has it. */
	public Decision decision() {
		return decision;
	}

	/** How a sample stands after it, unless a second reviewer chose it. */
	ReviewState expected() {
		return expected;
	}

	/** Such as "moved to cluster 7". */
	String done(int cluster) {
		return switch (this) {
		case APPROVE -> "approved";
		case MOVE -> Words.bind(Messages.Choice_movedToCluster, cluster);
		case POOL -> Messages.Choice_sentToThePool;
		case FAULTY -> Messages.Choice_markedAsFaulty;
		case DEFER -> "deferred";
		};
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
		Set<Warning> warnings = evidence == null ? Set.of() : evidence.warnings();
		return switch (this) {
		case APPROVE -> evidence != null && evidence.marks().isEmpty() ? ReasonCode.FITS.code() : null;
		case MOVE -> ReasonCode.OTHER_CLUSTER.code();
		case POOL -> warnings.contains(Warning.OTHER_FLOOR) ? ReasonCode.OTHER_FLOOR.code()
				: warnings.contains(Warning.FAR) ? ReasonCode.FAR.code() : null;
		case FAULTY -> ReasonCode.FAULTY.code();
		case DEFER -> null;
		};
	}
}
