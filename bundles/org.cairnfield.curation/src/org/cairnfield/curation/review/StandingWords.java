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
		case MOVED -> standing.awaitsSecond() ? "→ needs 2nd" : "→ C" + standing.home().cluster();
		case POOLED -> standing.awaitsSecond() ? "○ needs 2nd" : "○ pool";
		case REJECTED -> standing.awaitsSecond() ? "✖ needs 2nd" : "✖ out of map";
		case DEFERRED -> "… deferred";
		case DISPUTED -> "≠ disagreement";
		case STALE -> "▲ stale";
		case UNPLACED -> "unplaced";
		case SET_ASIDE -> "∅ set aside";
		};
	}
}
