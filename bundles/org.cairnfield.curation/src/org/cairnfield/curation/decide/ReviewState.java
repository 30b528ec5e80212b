package org.cairnfield.curation.decide;

/** Where a noise sample stands. */
public enum ReviewState {
	/** Nobody has decided. */
	UNDECIDED("undecided", true),
	/** It joins the cluster that was proposed. */
	APPROVED("approved", false),
	/** It joins another cluster. */
	MOVED("moved", false),
	/** It is searched by every query. */
	POOLED("pooled", false),
	/** It is left out of the map. */
	REJECTED("rejected", false),
	/** Somebody decides later. */
	DEFERRED("deferred", true),
	/** Two reviewers disagree. */
	DISPUTED("disputed", true),
	/** Sample or evidence changed after the verdict, which no longer counts. */
	STALE("stale", true),
	/** Nothing is proposed, so there is nothing to decide. */
	UNPLACED("unplaced", false),
	/** The sample is not in the map any more. */
	SET_ASIDE(Messages.ReviewState_setAside, false);

	private final String word;
	private final boolean open;

	ReviewState(String word, boolean open) {
		this.word = word;
		this.open = open;
	}

	/** Whether somebody has still to decide. */
	public boolean isOpen() {
		return open;
	}

	/** Whether a verdict says where it goes. */
	public boolean isDecided() {
		return this == APPROVED || this == REJECTED || this == MOVED || this == POOLED;
	}

	/** For a person. */
	@Override
	public String toString() {
		return word;
	}
}
