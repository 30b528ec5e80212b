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
		case UNDECIDED -> standing.hidden() ? Messages.StandingWords_2ndReview : "";
		case APPROVED -> standing.awaitsSecond() ? Messages.StandingWords_needs2nd : Messages.StandingWords_approved;
		case MOVED -> standing.awaitsSecond() ? Messages.StandingWords_needs2nd2 : "→ C" + standing.home().cluster();
		case POOLED -> standing.awaitsSecond() ? Messages.StandingWords_needs2nd3 : Messages.StandingWords_pool;
		case REJECTED -> standing.awaitsSecond() ? Messages.StandingWords_needs2nd4 : Messages.StandingWords_outOfMap;
		case DEFERRED -> Messages.StandingWords_deferred;
		case DISPUTED -> Messages.StandingWords_disagreement;
		case STALE -> Messages.StandingWords_stale;
		case UNPLACED -> "unplaced";
		case SET_ASIDE -> Messages.StandingWords_setAside;
		};
	}
}
