package org.cairnfield.core.cluster;

import java.util.Arrays;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * Distance of every sample to its k-th nearest other sample. Sorted, it is the curve on which ε is chosen
 * (Ester et al. 1996, section 4.2). Cost: one row of distances a sample.
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
		int n = points.size();
		double[][] distance = new double[ks.length][n];
		workers.progress().begin("k-distances", n);
		workers.forRanges(n, () -> {
			PointSet.Surroundings around = points.surroundings();
			double[] nearest = new double[largest + 1];
			return (from, to) -> {
				for (int s = from; s < to; s++) {
					Arrays.fill(nearest, Double.POSITIVE_INFINITY);
					nearest[0] = 0;
					around.visit(s, Double.POSITIVE_INFINITY, (other, d) -> insert(nearest, d));
					for (int i = 0; i < ks.length; i++) {
						distance[i][s] = nearest[ks[i]];
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

	/** Keeps the smallest in order behind the sample itself; answers the largest kept. */
	private static double insert(double[] nearest, double d) {
		int last = nearest.length - 1;
		if (last == 0) {
			return -1;
		}
		if (d < nearest[last]) {
			int at = last;
			while (at > 1 && nearest[at - 1] > d) {
				nearest[at] = nearest[at - 1];
				at--;
			}
			nearest[at] = d;
		}
		return nearest[last];
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
