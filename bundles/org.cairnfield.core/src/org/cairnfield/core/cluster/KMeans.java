package org.cairnfield.core.cluster;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.ObjIntConsumer;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * k-means (S. P. Lloyd, "Least squares quantization in PCM", IEEE Trans. Inf. Theory 28, 1982) on
 * fingerprints, centroids or scores: means of values, nearest by the points' distance. First centres are
 * drawn by seed; a centre that loses all its points is given up. Deterministic.
 *
 * <p>With n points, k centres and T rounds, at most 15, it takes n·k·T distances, each found through what both heard.
 */
public final class KMeans {

	private static final int MOST_ROUNDS = 15;

	private KMeans() {
	}

	/** How the first centres are drawn. */
	public enum Start {
		/** Distinct points, each as likely as any other. */
		CHANCE,
		/**
		 * k-means++: a point is as likely as the square of its distance to the centres drawn before (D. Arthur, S. Vassilvitskii,
		 * "k-means++: the advantages of careful seeding", SODA 2007). Takes n·k more distances.
		 */
		SPREAD
	}

	/** What is clustered. */
	public interface Points {
		int size();

		/** The means of groups of points. */
		Centres means(int[][] groups);
	}

	/** Centres among points. */
	public interface Centres {
		int size();

		/** Distances of a point to all of them; out is at least {@link #size} long. */
		void distances(int point, double[] out);
	}

	/** Samples of a map; the points are numbered as {@code samples} are. */
	public static Points points(Signals signals, int[] samples) {
		return new Points() {
			@Override
			public int size() {
				return samples.length;
			}

			@Override
			public Centres means(int[][] groups) {
				int[][] ofSamples = new int[groups.length][];
				Arrays.setAll(ofSamples, g -> Arrays.stream(groups[g]).map(p -> samples[p]).toArray());
				Centroids means = Centroids.of(signals, ofSamples, Centroids.Kind.MEAN);
				return centres(means.size(), (out, point) -> means.distances(signals.rows(), samples[point], out));
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
			public Centres means(int[][] groups) {
				Centroids means = centroids.grouped(groups);
				return centres(means.size(), (out, point) -> means.distances(centroids, point, out));
			}
		};
	}

	/**
	 * Points with a few coordinates each, such as the scores of a reduction.
	 *
	 * @param rows one row a point, all of one length; not copied
	 */
	public static Points points(double[][] rows, Distance distance) {
		return new Points() {
			@Override
			public int size() {
				return rows.length;
			}

			@Override
			public Centres means(int[][] groups) {
				double[][] means = new double[groups.length][];
				Arrays.setAll(means, g -> DensePoints.mean(rows, groups[g]));
				return centres(means.length, (out, point) -> {
					for (int c = 0; c < means.length; c++) {
						out[c] = DensePoints.between(rows[point], means[c], distance);
					}
				});
			}
		};
	}

	private static Centres centres(int size, ObjIntConsumer<double[]> distances) {
		return new Centres() {
			@Override
			public int size() {
				return size;
			}

			@Override
			public void distances(int point, double[] out) {
				distances.accept(out, point);
			}
		};
	}

	/** At most {@code k} clusters from first centres drawn by {@link Start#CHANCE}. */
	public static Clustering cluster(Points points, int k, long seed, Workers workers) {
		return cluster(points, k, Start.CHANCE, seed, workers);
	}

	/**
	 * At most {@code k} clusters, numbered by their first point; no point is noise.
	 *
	 * @param k at least 1
	 */
	public static Clustering cluster(Points points, int k, Start start, long seed, Workers workers) {
		if (k < 1) {
			throw new IllegalArgumentException("k must be at least 1: " + k);
		}
		int n = points.size();
		int[] label = new int[n];
		if (n == 0) {
			return new Clustering(label, null);
		}
		int first = Math.min(k, n);
		int[][] groups = start == Start.CHANCE ? byChance(n, first, seed) : spread(points, first, seed, workers);
		workers.progress().begin("k-means", (long) n * MOST_ROUNDS);
		boolean same = false;
		int rounds = 0;
		while (rounds < MOST_ROUNDS && !same) {
			Centres centres = points.means(groups);
			int[] next = numberedByFirst(nearest(points, centres, workers));
			same = rounds > 0 && Arrays.equals(next, label);
			label = next;
			groups = same ? groups : new Clustering(label, null).members();
			rounds++;
		}
		workers.progress().advance((long) n * (MOST_ROUNDS - rounds)); // rounds that were not needed
		return new Clustering(label, null);
	}

	private static int[] nearest(Points points, Centres centres, Workers workers) {
		int[] label = new int[points.size()];
		workers.forRanges(label.length, () -> {
			double[] distances = new double[centres.size()];
			return (from, to) -> {
				for (int p = from; p < to; p++) {
					centres.distances(p, distances);
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

	private static int[][] byChance(int n, int k, long seed) {
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

	private static int[][] spread(Points points, int k, long seed, Workers workers) {
		int n = points.size();
		SplittableRandom random = new SplittableRandom(seed);
		double[] square = new double[n];
		Arrays.fill(square, Double.POSITIVE_INFINITY);
		int[][] groups = new int[k][];
		workers.progress().begin(Messages.KMeans_firstCentres, (long) n * k);
		for (int c = 0; c < k; c++) {
			int chosen = c == 0 ? random.nextInt(n) : drawn(square, random.nextDouble());
			if (chosen < 0) { // every point is on a centre
				workers.progress().advance((long) n * (k - c));
				return Arrays.copyOf(groups, c);
			}
			groups[c] = new int[] { chosen };
			Centres centre = points.means(new int[][] { groups[c] });
			workers.forRanges(n, () -> {
				double[] distance = new double[1];
				return (from, to) -> {
					for (int p = from; p < to; p++) {
						centre.distances(p, distance);
						square[p] = Math.min(square[p], distance[0] * distance[0]);
					}
				};
			});
		}
		return groups;
	}

	/** The point at a share, 0 … 1, of the sum of weights; −1 where all are 0. */
	private static int drawn(double[] weight, double share) {
		double left = share * Arrays.stream(weight).sum();
		int last = -1;
		for (int p = 0; p < weight.length && left >= 0; p++) {
			if (weight[p] > 0) {
				last = p;
				left -= weight[p];
			}
		}
		return last;
	}

	/** The same partition, its clusters numbered by their first point. */
	static int[] numberedByFirst(int[] label) {
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
