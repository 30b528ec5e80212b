package org.cairnfield.exchange.pack;

import org.cairnfield.core.match.Search;

/**
 * How a device searches a pack, and how coarsely levels are written.
 *
 * @param levelStepDb levels are rounded to whole steps of so many dB, 1 … {@value #COARSEST_STEP_DB}
 * @param search      of the map that was made ready for it
 */
public record PackSettings(int levelStepDb, Search search) {

	/** Coarsest step of levels, in dB. */
	public static final int COARSEST_STEP_DB = 16;
	/** Levels as they were read, for a map whose split knows no better search. */
	public static final PackSettings USUAL = new PackSettings(1, Search.USUAL);

	/** @throws IllegalArgumentException for a step out of range */
	public PackSettings {
		if (levelStepDb < 1 || levelStepDb > COARSEST_STEP_DB) {
			throw new IllegalArgumentException(
					"a pack has steps of 1 to " + COARSEST_STEP_DB + " dB, not " + levelStepDb);
		}
	}
}
