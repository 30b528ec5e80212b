package org.cairnfield.core.cluster;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * k-means (S. P. Lloyd, "Least squares quantization in PCM", IEEE Trans. Inf. Theory 28, 1982) on
 * fingerprints or on centroids: means of values, nearest by the signals' distance. First centres are
 * distinct points drawn by seed; a centre that loses all its points is given up. Deterministic.
 */
public final class KMeans {

	private static final int MOST_ROUNDS = 15;

	private KMeans() {
	}

	/** What is clustered. */
	public interface Points {
		int size();

		/** Distances of a point to all of some centroids. */
		void distances(int point, Centroids to, double[] out);

		/** The means of groups of points. */
		Centroids means(int[][] groups);
	}

	/** Samples of a map; the points are numbered as {@code samples} are. */
	public static Points points(Signals signals, int[] samples) {
		return new Points() {
			@Override
			public int size() {
				return samples.length;
			}

			@Override
			public void distances(int point, Centroids to, double[] out) {
				to.distances(signals.rows(), samples[point], out);
			}

			@Override
			public Centroids means(int[][] groups) {
				int[][] ofSamples = new int[groups.length][];
				Arrays.setAll(ofSamples, g -> Arrays.stream(groups[g]).map(p -> samples[p]).toArray());
				return Centroids.of(signals, ofSamples, Centroids.Kind.MEAN);
			}
		};
	}

	/** The centroids of a split. */
	public static Points points(Centroids centroids) {
		return new Points() {
			@Override
			public int size() {
				return centroids.size();
			}

			@Override
			public void distances(int point, Centroids to, double[] out) {
				to.distances(centroids, point, out);
			}

			@Override
			public Centroids means(int[][] groups) {
				return centroids.grouped(groups);
			}
		};
	}

	/**
	 * At most {@code k} clusters, numbered by their first point; no point is noise.
	 *
	 * @param k at least 1
	 */
	public static Clustering cluster(Points points, int k, long seed, Workers workers) {
		if (k < 1) {
			throw new IllegalArgumentException("k must be at least 1: " + k);
		}
		int n = points.size();
		int[] label = new int[n];
		if (n == 0) {
			return new Clustering(label, null);
		}
		int[][] groups = firstCentres(n, Math.min(k, n), seed);
		workers.progress().begin("k-means", (long) n * MOST_ROUNDS);
		boolean same = false;
		int rounds = 0;
		while (rounds < MOST_ROUNDS && !same) {
			Centroids centres = points.means(groups);
			int[] next = numberedByFirst(nearest(points, centres, workers));
			same = rounds > 0 && Arrays.equals(next, label);
			label = next;
			groups = same ? groups : new Clustering(label, null).members();
			rounds++;
		}
		workers.progress().advance((long) n * (MOST_ROUNDS - rounds)); // rounds that were not needed
		return new Clustering(label, null);
	}

	private static int[] nearest(Points points, Centroids centres, Workers workers) {
		int[] label = new int[points.size()];
		workers.forRanges(label.length, () -> {
			double[] distances = new double[centres.size()];
			return (from, to) -> {
				for (int p = from; p < to; p++) {
					points.distances(p, centres, distances);
					int best = 0;
					for (int c = 1; c < distances.length; c++) {
						if (distances[c] < distances[best]) {
							best = c;
						}
					}
					label[p] = best;
				}
			};
		});
		return label;
	}

	private static int[][] firstCentres(int n, int k, long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		int[] order = new int[n];
		Arrays.setAll(order, i -> i);
		int[][] groups = new int[k][];
		for (int c = 0; c < k; c++) { // the first k of a Fisher-Yates shuffle
			int other = c + random.nextInt(n - c);
			int chosen = order[other];
			order[other] = order[c];
			groups[c] = new int[] { chosen };
		}
		return groups;
	}

	private static int[] numberedByFirst(int[] label) {
		int[] number = new int[Arrays.stream(label).max().orElse(-1) + 1];
		Arrays.fill(number, -1);
		int next = 0;
		int[] numbered = new int[label.length];
		for (int p = 0; p < label.length; p++) {
			if (number[label[p]] < 0) {
				number[label[p]] = next++;
			}
			numbered[p] = number[label[p]];
		}
		return numbered;
	}
}
