package org.cairnfield.curation.internal.rules.reading;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.rules.RuleInput;

/** How often each level occurs in a unit. */
final class LevelCounts {

	private final int[] count = new int[-RadioMap.LOWEST_RSSI_DBM + 1];
	private final long total;

	private LevelCounts(RadioMap map) {
		long all = 0;
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				count[-map.rssiDbm(k)]++;
				all++;
			}
		}
		total = all;
	}

	static LevelCounts of(RuleInput input) {
		return input.shared(LevelCounts.class, () -> new LevelCounts(input.map().map()));
	}

	/** Readings in all. */
	long total() {
		return total;
	}

	/** Readings at a level; 0 beyond what a map can hold. */
	int at(int rssiDbm) {
		return rssiDbm > 0 || rssiDbm < RadioMap.LOWEST_RSSI_DBM ? 0 : count[-rssiDbm];
	}

	/** The most at one level within {@code within} dB of a level, itself left out. */
	int mostAround(int rssiDbm, int within) {
		int most = 0;
		for (int d = 1; d <= within; d++) {
			most = Math.max(most, Math.max(at(rssiDbm - d), at(rssiDbm + d)));
		}
		return most;
	}
}
