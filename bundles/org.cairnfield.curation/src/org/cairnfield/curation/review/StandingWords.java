package org.cairnfield.curation.review;

import org.cairnfield.curation.decide.Standing;

/** Where a sample stands, in words with a sign. */
final class StandingWords {

	private StandingWords() {
	}

	/** @param standing null for a sample that is not noise */
	static String of(Standing standing) {
		if (standing == null) {
			return "";
		}
		return switch (standing.state()) {
			case UNDECIDED -> standing.hidden() ? "2nd review" : "";
			case APPROVED -> standing.awaitsSecond() ? "✔ needs 2nd" : "✔ approved";
			case REJECTED -> standing.awaitsSecond() ? "✖ needs 2nd" : "✖ rejected";
			case DEFERRED -> "… deferred";
			case DISPUTED -> "≠ disagreement";
			case STALE -> "▲ stale";
			case UNPLACED -> "unplaced";
			case SET_ASIDE -> "∅ set aside";
		};
	}
}
