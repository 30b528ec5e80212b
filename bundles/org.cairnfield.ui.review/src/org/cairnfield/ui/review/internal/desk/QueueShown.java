package org.cairnfield.ui.review.internal.desk;

/** Which samples the queue lists. */
public enum QueueShown {
	ALL("all"), LEFT("left to decide"), DISPUTED("disagreements"), STALE("stale verdicts"), DEFERRED("deferred"),
	DECIDED("decided"), UNPLACED("unplaced");

	private final String title;

	QueueShown(String title) {
		this.title = title;
	}

	/** For a person. */
	public String title() {
		return title;
	}
}
