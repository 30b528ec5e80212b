package org.cairnfield.ui.review.internal.desk;

/** Hears what happens on the desk of the reviewer. All calls come on the user interface thread. */
public interface DeskListener {

	/** Another archive is on show, or another split under review, or its evidence has come, or is being computed. */
	default void splitChanged() {
	}

	/** The queue lists other lines, or in another order. */
	default void queueChanged() {
	}

	/** Verdicts were given or taken back; lines of the queue stay where they are. */
	default void verdictsChanged() {
	}

	/** Another sample is looked at. */
	default void currentChanged() {
	}

	/** The person wants to say why. */
	default void reasonAsked() {
	}
}
