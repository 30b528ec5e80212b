package org.cairnfield.core.cluster;

import java.util.Arrays;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * Distance of every sample to its k-th nearest other sample. Sorted, it is the curve on which ε is chosen
 * (Ester et al. 1996, section 4.2). Samples at one point are computed once.
 */
public final class KDistances {

	private final int[] ks;
	private final double[][] distance;

	private KDistances(int[] ks, double[][] distance) {
		this.ks = ks;
		this.distance = distance;
	}

	/**
	 * @param ks which k, each at least 0; the 0-th nearest is the sample itself
	 */
	public static KDistances of(PointSet points, Workers workers, int... ks) {
		int largest = Arrays.stream(ks).max().orElse(0);
		if (Arrays.stream(ks).anyMatch(k -> k < 0)) {
			throw new IllegalArgumentException("k must be at least 0: " + Arrays.toString(ks));
		}
		double[][] distance = new double[ks.length][points.samples()];
		workers.progress().begin("k-distances", points.size());
		workers.forRanges(points.size(), () -> {
			PointSet.Surroundings around = points.surroundings();
			double[] nearest = new double[largest];
			return (from, to) -> {
				for (int p = from; p < to; p++) {
					if (largest > 0) {
						around.nearest(p, nearest);
					}
					for (int i = 0; i < ks.length; i++) {
						for (int at = 0; at < points.weight(p); at++) {
							distance[i][points.sample(p, at)] = ks[i] == 0 ? 0 : nearest[ks[i] - 1];
						}
					}
				}
			};
		});
		return new KDistances(ks.clone(), distance);
	}

	/** As above, for the samples of a map. */
	public static KDistances of(Signals signals, Workers workers, int... ks) {
		return of(PointSet.of(signals), workers, ks);
	}

	/** By sample; positive infinity where there are fewer than k others. */
	public double[] bySample(int k) {
		for (int i = 0; i < ks.length; i++) {
			if (ks[i] == k) {
				return distance[i].clone();
			}
		}
		throw new IllegalArgumentException("no distances for k = " + k + ", only " + Arrays.toString(ks));
	}

	/** Ascending: the k-distance curve. */
	public double[] sorted(int k) {
		double[] sorted = bySample(k);
		Arrays.sort(sorted);
		return sorted;
	}
}
