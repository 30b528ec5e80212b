package org.cairnfield.core.health;

import org.cairnfield.core.map.RadioMap;

/**
 * Two samples compared by what they heard.
 *
 * @param shared           access points heard by both
 * @param either           access points heard by at least one
 * @param meanDifferenceDb level of the first less that of the second, on average over those shared; NaN if none
 * @param scatterDb        standard deviation of that difference (n − 1); NaN for fewer than {@link #FEWEST}
 */
record SharedReadings(int shared, int either, double meanDifferenceDb, double scatterDb) {

	/** Access points in common below which a scatter says nothing. */
	private static final int FEWEST = 3;

	static SharedReadings of(RadioMap map, int a, int b) {
		int i = map.firstReading(a);
		int j = map.firstReading(b);
		int endA = map.endReading(a);
		int endB = map.endReading(b);
		int shared = 0;
		double difference = 0;
		double squares = 0;
		while (i < endA && j < endB) {
			int order = Integer.compare(map.accessPoint(i), map.accessPoint(j));
			if (order == 0) {
				shared++;
				double d = map.rssiDbm(i) - map.rssiDbm(j);
				difference += d;
				squares += d * d;
			}
			i += order <= 0 ? 1 : 0;
			j += order >= 0 ? 1 : 0;
		}
		double mean = shared == 0 ? Double.NaN : difference / shared;
		// Whole numbers of at most three digits: no cancellation to fear.
		double scatter = shared < FEWEST ? Double.NaN
				: Math.sqrt(Math.max(0, squares - mean * difference) / (shared - 1));
		return new SharedReadings(shared, map.heard(a) + map.heard(b) - shared, mean, scatter);
	}

	/** Jaccard overlap; 1 where neither heard anything. */
	double overlap() {
		return either == 0 ? 1 : (double) shared / either;
	}
}
