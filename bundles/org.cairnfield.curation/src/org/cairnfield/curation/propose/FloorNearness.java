package org.cairnfield.curation.propose;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Percentile;

/** How near the samples of clusters are on a floor. */
final class FloorNearness {

	/** Nearest sample of a cluster on a floor; −1 and NaN where there is none. */
	record Near(int sample, double metres) {
	}

	private static final int MOST_MEASURED = 2000;
	/** So many per cent of a cluster's samples have a fellow at another point of their floor within what counts as near. */
	private static final double NEAR_PERCENT = 99;

	private final RadioMap map;
	/** Samples of each cluster by floor. */
	private final Map<List<Integer>, int[]> members = new HashMap<>();
	private final int[] sizes;
	private final double farMetres;

	FloorNearness(RadioMap map, Clustering clustering) {
		this.map = map;
		sizes = clustering.sizes();
		Map<List<Integer>, Integer> filled = new HashMap<>();
		for (int pass = 0; pass < 2; pass++) {
			for (int s = 0; s < map.size(); s++) {
				if (!clustering.isNoise(s)) {
					List<Integer> key = key(clustering.label(s), s);
					int at = filled.merge(key, 1, Integer::sum) - 1;
					if (pass == 1) {
						members.get(key)[at] = s;
					}
				}
			}
			if (pass == 0) {
				filled.forEach((key, count) -> members.put(key, new int[count]));
				filled.clear();
			}
		}
		farMetres = far(clustering);
	}

	private List<Integer> key(int cluster, int sample) {
		return List.of(cluster, map.site(sample), map.floor(sample));
	}

	private double far(Clustering clustering) {
		int step = Math.max(1, (map.size() + MOST_MEASURED - 1) / MOST_MEASURED);
		double[] metres = new double[map.size() / step + 1];
		int n = 0;
		for (int s = 0; s < map.size(); s += step) {
			if (!clustering.isNoise(s)) {
				Near near = nearest(clustering.label(s), s, 0);
				if (near.sample() >= 0) {
					metres[n++] = near.metres();
				}
			}
		}
		return n == 0 ? Double.POSITIVE_INFINITY : Percentile.of(Arrays.copyOf(metres, n), NEAR_PERCENT);
	}

	/** The nearest sample of a cluster on the floor of a sample, itself left out; of equals the first. */
	Near nearest(int cluster, int sample) {
		return nearest(cluster, sample, -1);
	}

	/** @param beyondMetres nearer ones, and those as near, do not count: with 0, repeated scans of one point */
	private Near nearest(int cluster, int sample, double beyondMetres) {
		int best = -1;
		double least = Double.POSITIVE_INFINITY;
		for (int other : members.getOrDefault(key(cluster, sample), new int[0])) {
			double d = other == sample ? Double.POSITIVE_INFINITY : map.metresApart(sample, other);
			if (d > beyondMetres && d < least) {
				least = d;
				best = other;
			}
		}
		return best < 0 ? new Near(-1, Double.NaN) : new Near(best, least);
	}

	/** Share of a cluster's samples that are on the floor of a sample, 0 … 1. */
	double shareOnFloor(int cluster, int sample) {
		return (double) members.getOrDefault(key(cluster, sample), new int[0]).length / sizes[cluster];
	}

	/** Farther than this, in metres, samples of one cluster hardly ever are from their nearest fellow. */
	double farMetres() {
		return farMetres;
	}
}
