package org.cairnfield.exchange.pack;

import org.cairnfield.core.match.Voting;

/**
 * How a device searches a pack, and how coarsely levels are written.
 *
 * @param levelStepDb levels are rounded to whole steps of so many dB, 1 … 16
 * @param cellProbes  cells searched, 1 … 100
 * @param relative    whether the coarse search goes by relative distances
 * @param voting      of k up to 100
 */
public record PackSettings(int levelStepDb, int cellProbes, boolean relative, Voting voting) {

	/** Levels as they were read, three cells, three samples weighted. */
	public static final PackSettings USUAL = new PackSettings(1, 3, true, Voting.THREE_WEIGHTED);

	/** @throws IllegalArgumentException for a number out of range */
	public PackSettings {
		if (levelStepDb < 1 || levelStepDb > 16 || cellProbes < 1 || cellProbes > 100 || voting.k() > 100) {
			throw new IllegalArgumentException("a pack has steps of 1 … 16 dB, 1 … 100 probes and 1 … 100 voters: " + levelStepDb
					+ ", " + cellProbes + ", " + voting);
		}
	}
}
