package org.cairnfield.curation.internal.selftest;

/** What is planted into a copy of a map. */
enum TrialFault {

	/** A sample noted at the place of another, on its own floor. */
	WRONG_PLACE,
	/** A sample, or a stretch of them, noted on another floor of the site. */
	WRONG_FLOOR,
	/** A stretch noted with x and y exchanged. */
	SWAPPED_AXES,
	/** A sender that is carried across a floor. */
	WALKING_SENDER,
	/** An access point that hangs elsewhere from the last campaign on. */
	MOVED,
	/** One that is not heard in the last campaign. */
	VANISHED,
	/** One that is heard in the last campaign only. */
	APPEARED
}
