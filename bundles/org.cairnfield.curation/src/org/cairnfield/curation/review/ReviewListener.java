package org.cairnfield.curation.review;

/** Hears of changes in a review. All calls come on the thread that uses the session. */
public interface ReviewListener {

	/** Hears nothing. */
	ReviewListener NONE = new ReviewListener() {
	};

	/** Evidence is out of date. Compute it on any thread, then hand it to {@link ReviewSession#accept}. */
	default void evidenceWanted(EvidenceRequest request) {
	}

	/** Another split is under review, or its evidence has come, is being computed, or could not be computed. */
	default void splitChanged() {
	}

	/** The queue lists other lines, or in another order. */
	default void queueChanged() {
	}

	/** Verdicts were given or taken back; lines of the queue stay where they are. */
	default void verdictsChanged() {
	}

	/** Another sample is in hand. */
	default void currentChanged() {
	}
}
