package org.cairnfield.core.stats;

import java.util.Arrays;
import org.cairnfield.core.task.Workers;

/**
 * How well each sample lies within its cluster, from -1 (among the wrong ones) to 1: Rousseeuw,
 * "Silhouettes", Journal of Computational and Applied Mathematics 20 (1987). With a the mean distance to
 * the others of its own cluster and b the least mean distance to another cluster, s = (b - a) / max(a, b);
 * a sample alone in its cluster has s = 0. Noise is left out.
 */
public final class Silhouette {

	private final double[] values;
	private final double mean;

	private Silhouette(double[] values) {
		this.values = values;
		this.mean = Arrays.stream(values).filter(s -> !Double.isNaN(s)).average().orElse(Double.NaN);
	}

	/**
	 * Compares every pair: the time grows with n².
	 *
	 * @param labels the cluster of each sample; any negative one means noise
	 */
	public static Silhouette of(int[] labels, PairDistance distance, Workers workers) {
		int n = labels.length;
		double[] values = new double[n];
		Arrays.fill(values, Double.NaN);
		int[] names = Arrays.stream(labels).filter(label -> label >= 0).distinct().sorted().toArray();
		if (names.length >= 2) {
			int[] cluster = new int[n];
			int[] size = new int[names.length];
			for (int i = 0; i < n; i++) {
				cluster[i] = labels[i] < 0 ? -1 : Arrays.binarySearch(names, labels[i]);
				if (cluster[i] >= 0) {
					size[cluster[i]]++;
				}
			}
			workers.progress().begin("silhouette", n);
			workers.forRanges(n, () -> {
				double[] sum = new double[size.length];
				return (from, to) -> {
					for (int i = from; i < to; i++) {
						if (cluster[i] >= 0) {
							values[i] = value(i, cluster, size, distance, sum);
						}
					}
				};
			});
		}
		return new Silhouette(values);
	}

	private static double value(int i, int[] cluster, int[] size, PairDistance distance, double[] sum) {
		int own = cluster[i];
		if (size[own] == 1) {
			return 0;
		}
		Arrays.fill(sum, 0);
		for (int j = 0; j < cluster.length; j++) {
			if (j != i && cluster[j] >= 0) {
				sum[cluster[j]] += distance.between(i, j);
			}
		}
		double a = sum[own] / (size[own] - 1);
		double b = Double.POSITIVE_INFINITY;
		for (int c = 0; c < size.length; c++) {
			if (c != own) {
				b = Math.min(b, sum[c] / size[c]);
			}
		}
		// All at one place: neither nearer nor farther.
		return a == b ? 0 : (b - a) / Math.max(a, b);
	}

	/** s of a sample; NaN for noise, and for all where there are fewer than two clusters. */
	public double value(int sample) {
		return values[sample];
	}

	/** The mean of all that are not noise; NaN where there are fewer than two clusters. */
	public double mean() {
		return mean;
	}
}
