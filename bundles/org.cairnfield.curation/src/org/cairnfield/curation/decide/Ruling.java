package org.cairnfield.curation.decide;

import org.cairnfield.model.Decision;

/**
 * Where a person wants a noise sample to go, and why.
 *
 * @param cluster    number of the cluster that a move goes to; −1 for any other decision
 * @param reasonCode may be null
 * @param text       in the person's own words; may be null
 */
public record Ruling(Decision decision, int cluster, String reasonCode, String text) {

	/** No cluster of its own. */
	public static final int NO_CLUSTER = -1;

	/** @throws IllegalArgumentException for a move without a cluster, or a cluster without a move */
	public Ruling {
		if ((decision == Decision.MOVE) != (cluster >= 0)) {
			throw new IllegalArgumentException(decision + " to cluster " + cluster);
		}
	}

	/** Any decision but a move. */
	public static Ruling of(Decision decision, String reasonCode, String text) {
		return new Ruling(decision, NO_CLUSTER, reasonCode, text);
	}

	/** Into another cluster than the one proposed. */
	public static Ruling move(int cluster, String reasonCode, String text) {
		return new Ruling(Decision.MOVE, cluster, reasonCode, text);
	}

	boolean hasReason() {
		return reasonCode != null && !reasonCode.isBlank();
	}

	/** The text, or null where it is blank. */
	String ownWords() {
		return text == null || text.isBlank() ? null : text.strip();
	}
}
