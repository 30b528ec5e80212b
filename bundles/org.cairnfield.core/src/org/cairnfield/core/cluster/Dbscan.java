package org.cairnfield.core.cluster;

import java.util.Arrays;
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
 * <p>Each pair within reach is looked at once and not kept, but for the neighbours of points that are not core, which are fewer
 * than minPts: memory grows with n·minPts, whatever ε.
 */
public final class Dbscan {

	private final PointSet points;
	private final int minPts;
	private final DisjointSets sets;
	/** Samples within reach by point, itself counted; no longer counted from minPts on. */
	private final int[] count;
	/** Neighbours of points that are not core, or were not when the pair came. */
	private final int[][] neighbours;
	private final double[][] distances;
	private final int[] waiting;

	private Dbscan(PointSet points, int minPts) {
		this.points = points;
		this.minPts = minPts;
		int n = points.size();
		sets = new DisjointSets(n);
		count = new int[n];
		Arrays.setAll(count, points::weight);
		neighbours = new int[n][];
		distances = new double[n][];
		waiting = new int[n];
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
		workers.progress().begin("clustering", points.size());
		Dbscan run = new Dbscan(points, minPts);
		Pairs.within(epsilon, points, workers, run::meet);
		return run.result();
	}

	/** As above, for the samples of a map; ε in units of the signals' distance. */
	public static Clustering cluster(Signals signals, double epsilon, int minPts, Workers workers) {
		return cluster(PointSet.of(signals), epsilon, minPts, workers);
	}

	private boolean isCore(int point) {
		return count[point] >= minPts;
	}

	private void meet(int a, int b, double distance) {
		countIn(a, points.weight(b));
		countIn(b, points.weight(a));
		if (isCore(a) && isCore(b)) {
			sets.join(a, b);
			return;
		}
		if (!isCore(a)) {
			keep(a, b, distance);
		}
		if (!isCore(b)) {
			keep(b, a, distance);
		}
	}

	/** A point that becomes core joins the cores that it has met; those that become core later will remember it. */
	private void countIn(int point, int weight) {
		if (isCore(point)) {
			return;
		}
		count[point] += weight;
		if (isCore(point)) {
			for (int i = 0; i < waiting[point]; i++) {
				if (isCore(neighbours[point][i])) {
					sets.join(point, neighbours[point][i]);
				}
			}
			neighbours[point] = null;
			distances[point] = null;
		}
	}

	private void keep(int point, int other, double distance) {
		int at = waiting[point]++;
		if (at == 0) {
			neighbours[point] = new int[Math.min(4, minPts)];
			distances[point] = new double[Math.min(4, minPts)];
		} else if (at == neighbours[point].length) {
			neighbours[point] = Arrays.copyOf(neighbours[point], 2 * at);
			distances[point] = Arrays.copyOf(distances[point], 2 * at);
		}
		neighbours[point][at] = other;
		distances[point][at] = distance;
	}

	private Clustering result() {
		int n = points.size();
		boolean[] core = new boolean[n];
		int[] nearestCore = new int[n];
		for (int p = 0; p < n; p++) {
			core[p] = isCore(p);
			nearestCore[p] = core[p] ? -1 : nearestCore(p);
		}
		return label(points, core, sets, nearestCore);
	}

	private int nearestCore(int point) {
		int best = -1;
		double least = Double.POSITIVE_INFINITY;
		for (int i = 0; i < waiting[point]; i++) {
			int other = neighbours[point][i];
			double d = distances[point][i];
			if (isCore(other) && (best < 0 || nearer(points, d, other, least, best))) {
				best = other;
				least = d;
			}
		}
		return best;
	}

	/** Nearer, or as near and earlier in the map. */
	static boolean nearer(PointSet points, double d, int point, double than, int other) {
		return d < than || d == than && points.sample(point, 0) < points.sample(other, 0);
	}

	/**
	 * Labels samples by what is known of their points; numbers clusters by their first core sample.
	 *
	 * @param nearestCore for points that are not core: the core point whose cluster they join, or −1
	 */
	static Clustering label(PointSet points, boolean[] core, DisjointSets sets, int[] nearestCore) {
		int[] clusterOf = new int[core.length];
		Arrays.fill(clusterOf, -1);
		int next = 0;
		int n = points.samples();
		int[] label = new int[n];
		Role[] role = new Role[n];
		for (int s = 0; s < n; s++) {
			int p = points.pointOf(s);
			if (core[p]) {
				int root = sets.find(p);
				if (clusterOf[root] < 0) {
					clusterOf[root] = next++;
				}
				label[s] = clusterOf[root];
				role[s] = Role.CORE;
			}
		}
		for (int s = 0; s < n; s++) {
			int p = points.pointOf(s);
			if (!core[p]) {
				label[s] = nearestCore[p] < 0 ? Clustering.NOISE : clusterOf[sets.find(nearestCore[p])];
				role[s] = nearestCore[p] < 0 ? Role.NOISE : Role.BORDER;
			}
		}
		return new Clustering(label, role);
	}
}
