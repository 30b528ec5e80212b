package org.cairnfield.benchmarks;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Role;

/** Compares clusterings. To which of two clusters in reach a border sample goes is free in DBSCAN. */
final class Partitions {

	private Partitions() {
	}

	/**
	 * Whether noise is the same, core samples are parted the same way, and there are no clusters beyond theirs.
	 *
	 * @param labels the other's, negative for noise
	 */
	static boolean same(Clustering ours, int[] labels) {
		Map<Integer, Integer> toTheirs = new HashMap<>();
		Map<Integer, Integer> toOurs = new HashMap<>();
		for (int s = 0; s < labels.length; s++) {
			if (ours.isNoise(s) != labels[s] < 0) {
				return false;
			}
			if (ours.role(s) == Role.CORE && (differs(toTheirs, ours.label(s), labels[s])
					|| differs(toOurs, labels[s], ours.label(s)))) {
				return false;
			}
		}
		return Arrays.stream(labels).filter(l -> l >= 0).distinct().count() == ours.clusters();
	}

	private static boolean differs(Map<Integer, Integer> map, int from, int to) {
		Integer before = map.putIfAbsent(from, to);
		return before != null && before != to;
	}

	static boolean identical(Clustering a, Clustering b) {
		return Arrays.equals(a.labels(), b.labels());
	}
}
