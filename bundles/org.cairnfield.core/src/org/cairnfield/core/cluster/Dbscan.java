package org.cairnfield.core.cluster;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.cairnfield.core.distance.DisjointSets;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * DBSCAN as defined by M. Ester, H.-P. Kriegel, J. Sander, X. Xu, "A density-based algorithm for discovering
 * clusters in large spatial databases with noise", KDD-96, pp. 226–231.
 *
 * <p>The neighbourhood is the closed ball and <em>the sample itself counts</em> in minPts; a library that
 * does not count it needs minPts − 1. A border sample in reach of several clusters joins the one whose core
 * sample is nearest, of equally near ones the first in the map. So the result does not depend on threads,
 * and on the order of the map only where cores are equally near.
 *
 * <p>One row of distances a sample. No neighbour lists are kept but those of samples that are not core,
 * which are shorter than minPts: memory grows with n·minPts, whatever ε.
 */
public final class Dbscan {

	private Dbscan() {
	}

	/**
	 * @param epsilon in units of the points' distance, at least 0
	 * @param minPts  samples within ε that make a core sample, itself counted; at least 1
	 */
	public static Clustering cluster(PointSet points, double epsilon, int minPts, Workers workers) {
		if (!(epsilon >= 0) || minPts < 1) {
			throw new IllegalArgumentException(
					"need epsilon ≥ 0 and minPts ≥ 1, got " + epsilon + " and " + minPts);
		}
		return new Run(points, epsilon, minPts).run(workers);
	}

	/** As above, for the samples of a map; ε in units of the signals' distance. */
	public static Clustering cluster(Signals signals, double epsilon, int minPts, Workers workers) {
		return cluster(PointSet.of(signals), epsilon, minPts, workers);
	}

	/** Numbers clusters by their first core sample. */
	static Clustering label(boolean[] core, DisjointSets sets, int[] nearestCore) {
		int n = core.length;
		int[] label = new int[n];
		Role[] role = new Role[n];
		int next = 0;
		for (int s = 0; s < n; s++) {
			if (core[s]) {
				int first = sets.find(s);
				label[s] = first == s ? next++ : label[first];
				role[s] = Role.CORE;
			}
		}
		for (int s = 0; s < n; s++) {
			if (!core[s]) {
				label[s] = nearestCore[s] < 0 ? Clustering.NOISE : label[nearestCore[s]];
				role[s] = nearestCore[s] < 0 ? Role.NOISE : Role.BORDER;
			}
		}
		return new Clustering(label, role);
	}

	private static final class Run {
		private final PointSet points;
		private final double epsilon;
		private final int minPts;
		private final AtomicIntegerArray core;
		private final DisjointSets sets;
		/** Neighbours of samples that are not core, nearest first, then first in the map. */
		private final int[][] fewNeighbours;

		Run(PointSet points, double epsilon, int minPts) {
			this.points = points;
			this.epsilon = epsilon;
			this.minPts = minPts;
			core = new AtomicIntegerArray(points.size());
			sets = new DisjointSets(points.size());
			fewNeighbours = new int[points.size()][];
		}

		Clustering run(Workers workers) {
			int n = points.size();
			workers.progress().begin("clustering", n);
			workers.forRanges(n, () -> {
				PointSet.Surroundings around = points.surroundings();
				Found found = new Found();
				return (from, to) -> {
					for (int s = from; s < to; s++) {
						found.count = 0;
						around.visit(s, epsilon, (other, d) -> found.add(other, d, epsilon));
						settle(s, found);
					}
				};
			});
			boolean[] isCore = new boolean[n];
			int[] nearestCore = new int[n];
			Arrays.fill(nearestCore, -1);
			for (int s = 0; s < n; s++) {
				isCore[s] = core.get(s) == 1;
				if (!isCore[s]) {
					nearestCore[s] = Arrays.stream(fewNeighbours[s]).filter(o -> core.get(o) == 1).findFirst().orElse(-1);
				}
			}
			return label(isCore, sets, nearestCore);
		}

		/**
		 * The core flag is set before the neighbours' flags are read, so of two neighbouring cores on two
		 * threads at least one sees the other.
		 */
		private void settle(int sample, Found found) {
			if (found.count + 1 >= minPts) {
				core.set(sample, 1);
				for (int i = 0; i < found.count; i++) {
					if (core.get(found.sample[i]) == 1) {
						sets.join(sample, found.sample[i]);
					}
				}
			} else {
				fewNeighbours[sample] = found.nearestFirst();
			}
		}
	}

	private static final class Found {
		int[] sample = new int[256];
		double[] distance = new double[256];
		int count;

		double add(int other, double d, double reach) {
			if (count == sample.length) {
				sample = Arrays.copyOf(sample, count * 2);
				distance = Arrays.copyOf(distance, count * 2);
			}
			sample[count] = other;
			distance[count++] = d;
			return reach;
		}

		int[] nearestFirst() {
			int[] sorted = Arrays.copyOf(sample, count);
			double[] key = Arrays.copyOf(distance, count);
			for (int i = 1; i < count; i++) { // insertion: shorter than minPts
				for (int k = i; k > 0 && before(key, sorted, k); k--) {
					double d = key[k];
					key[k] = key[k - 1];
					key[k - 1] = d;
					int s = sorted[k];
					sorted[k] = sorted[k - 1];
					sorted[k - 1] = s;
				}
			}
			return sorted;
		}

		private static boolean before(double[] key, int[] sorted, int k) {
			return key[k] < key[k - 1] || (key[k] == key[k - 1] && sorted[k] < sorted[k - 1]);
		}
	}
}
