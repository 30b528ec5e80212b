package org.cairnfield.curation.rules;

import org.cairnfield.core.map.RadioMap;

/**
 * How levels of one device become those that another would have read.
 *
 * @param slope   dB of the other for one of this one
 * @param shiftDb added after that
 */
public record LevelLine(double slope, double shiftDb) {

	/** As it was read. */
	public static final LevelLine NONE = new LevelLine(1, 0);

	/** A level in whole dBm, within what a map can hold. */
	public int of(int dbm) {
		return (int) Math.max(RadioMap.LOWEST_RSSI_DBM,
				Math.min(RadioMap.HIGHEST_RSSI_DBM, Math.round(slope * dbm + shiftDb)));
	}
}
