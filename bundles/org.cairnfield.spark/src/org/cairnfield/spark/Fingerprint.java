package org.cairnfield.spark;

import java.io.Serializable;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;

/**
 * A sample on its way between machines.
 *
 * @param id           its place in the whole map, from 0
 * @param site         number of its site
 * @param floor        level
 * @param x            metres, floor frame
 * @param y            metres, floor frame
 * @param accessPoints numbers of those heard
 * @param levels       in dBm, one for each
 */
record Fingerprint(int id, int site, int floor, double x, double y, int[] accessPoints, byte[] levels)
		implements Serializable {

	/** Of sample {@code sample} of a map. */
	static Fingerprint of(RadioMap map, int sample, int id, int site, int[] numberOfAccessPoint) {
		int from = map.firstReading(sample);
		int[] heard = new int[map.heard(sample)];
		byte[] levels = new byte[heard.length];
		for (int k = 0; k < heard.length; k++) {
			heard[k] = numberOfAccessPoint[map.accessPoint(from + k)];
			levels[k] = (byte) map.rssiDbm(from + k);
		}
		return new Fingerprint(id, site, map.floor(sample), map.x(sample), map.y(sample), heard, levels);
	}

	/**
	 * Samples as a map of their own, in the order given.
	 *
	 * @param accessPointName by number; only those heard get into the map
	 */
	static RadioMap map(Collection<Fingerprint> samples, IntFunction<String> siteName,
			IntFunction<String> accessPointName) {
		return map(samples, siteName, accessPointName, List.of());
	}

	/** The same with access points that come first, whether or not they are heard. */
	static RadioMap map(Collection<Fingerprint> samples, IntFunction<String> siteName,
			IntFunction<String> accessPointName, Collection<String> first) {
		RadioMapBuilder builder = new RadioMapBuilder();
		first.forEach(builder::accessPoint);
		Map<Integer, Integer> column = new HashMap<>();
		for (Fingerprint f : samples) {
			builder.sample(siteName.apply(f.site), f.floor, f.x, f.y);
			for (int k = 0; k < f.levels.length; k++) {
				builder.reading(
						column.computeIfAbsent(f.accessPoints[k], a -> builder.accessPoint(accessPointName.apply(a))),
						f.levels[k]);
			}
		}
		return builder.build();
	}

	/**
	 * Σ of the values, as core's signals have it in positive representation.
	 *
	 * @param lowestRssiDbm of the whole map
	 */
	double magnitude(int lowestRssiDbm) {
		double sum = 0;
		for (byte level : levels) {
			sum += level - (lowestRssiDbm - 1);
		}
		return sum;
	}
}
