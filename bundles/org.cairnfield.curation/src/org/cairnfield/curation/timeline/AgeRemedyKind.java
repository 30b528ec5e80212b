package org.cairnfield.curation.timeline;

import java.util.Locale;

/** What can be done about a map that a newer survey contradicts. */
public enum AgeRemedyKind {
	/** Access points of the map that the newer survey no longer hears are left out of it. */
	VANISHED(Messages.AgeRemedyKind_setVanishedOnesAside),
	/** Readings of access points that were replaced count for their successors; others that vanished are left out. */
	SUCCESSORS(Messages.AgeRemedyKind_countReplacedAsSuccessors),
	/** Where the newer survey has been, its samples replace older ones. */
	REVISITED(Messages.AgeRemedyKind_replaceRevisitedSamples),
	/** The newer survey alone makes the map. */
	START_ANEW(Messages.AgeRemedyKind_startTheMapAnew),
	/** Levels of the newer survey's device come into the map as those of the older ones. */
	DEVICE(Messages.AgeRemedyKind_correctTheNewerDevice);

	private final String title;

	AgeRemedyKind(String title) {
		this.title = title;
	}

	/** For a button or a list. */
	public String title() {
		return title;
	}

	/** Whether older samples are left out of the map. */
	boolean givesSamplesUp() {
		return this == REVISITED || this == START_ANEW;
	}

	/** For a command line: {@code start-anew}. */
	public String word() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}
}
