package org.cairnfield.curation.review;

import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Standing;

/** Which samples the queue lists. */
public enum QueueShown {
	ALL("all"), LEFT(Messages.QueueShown_leftToDecide), MINE(Messages.QueueShown_assignedToMe),
	DISPUTED("disagreements"), STALE(Messages.QueueShown_staleVerdicts),
	DEFERRED("deferred"),
	DECIDED("decided"), UNPLACED("unplaced");

	private final String title;

	QueueShown(String title) {
		this.title = title;
	}

	/** For a person. */
	public String title() {
		return title;
	}

	/** @param person who looks */
	boolean shows(QueueRow row, Standing standing, String person) {
		ReviewState state = standing.state();
		return switch (this) {
		case ALL -> true;
		case LEFT -> row.evidence().made() && PersonalStandings.isLeft(standing);
		case MINE -> row.isAssignedTo(person);
		case DISPUTED -> state == ReviewState.DISPUTED;
		case STALE -> state == ReviewState.STALE;
		case DEFERRED -> state == ReviewState.DEFERRED;
		case DECIDED -> state.isDecided() || state == ReviewState.SET_ASIDE;
		case UNPLACED -> !row.evidence().made();
		};
	}
}
