package org.cairnfield.core.cluster;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.distance.DisjointSets;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * DBSCAN for every pair of several ε and minPts at once. Neighbours are found twice in all, however
 * many pairs: once for the core distances, once to join points at the smallest ε at which both are core
 * and within reach. Every cell equals {@link Dbscan#cluster} of its pair.
 */
public final class Sweep {

	/** One pair and what came of it. */
	public record Cell(double epsilon, int minPts, Clustering clustering) {
	}

	private final PointSet points;
	private final double[] epsilons;
	private final int[] minPts;
	/** [minPts][point]: index of the smallest ε at which the point is core, or epsilons.length. */
	private final int[][] coreFrom;
	/** [minPts][ε]: joins that begin at this ε; made cumulative at the end. */
	private final DisjointSets[][] sets;
	/** [minPts][ε][point]: for points not yet core, the nearest that is core at this ε and within reach. */
	private final double[][][] coreDistance;
	private final int[][][] corePointOf;

	private Sweep(PointSet points, double[] epsilons, int[] minPts) {
		this.points = points;
		this.epsilons = epsilons;
		this.minPts = minPts;
		int n = points.size();
		coreFrom = new int[minPts.length][n];
		sets = new DisjointSets[minPts.length][epsilons.length];
		coreDistance = new double[minPts.length][epsilons.length][n];
		corePointOf = new int[minPts.length][epsilons.length][n];
		for (int m = 0; m < minPts.length; m++) {
			for (int e = 0; e < epsilons.length; e++) {
				sets[m][e] = new DisjointSets(n);
				Arrays.fill(coreDistance[m][e], Double.POSITIVE_INFINITY);
				Arrays.fill(corePointOf[m][e], -1);
			}
		}
	}

	/**
	 * @param epsilons ascending, at least one
	 * @param minPts   as in {@link Dbscan}, at least one
	 * @return a cell a pair, by minPts, then ε
	 */
	public static List<Cell> run(PointSet points, double[] epsilons, int[] minPts, Workers workers) {
		int[] ks = Arrays.stream(minPts).map(m -> m - 1).toArray();
		return run(points, epsilons, minPts, KDistances.of(points, workers, ks), workers);
	}

	/** As above, with the distances to the (minPts − 1)-th others at hand. */
	public static List<Cell> run(PointSet points, double[] epsilons, int[] minPts, KDistances kDistances,
			Workers workers) {
		if (epsilons.length == 0 || minPts.length == 0) {
			throw new IllegalArgumentException("need at least one epsilon and one minPts");
		}
		for (int e = 0; e < epsilons.length; e++) {
			if (!(epsilons[e] >= 0) || (e > 0 && epsilons[e] < epsilons[e - 1])) {
				throw new IllegalArgumentException("epsilons must ascend from 0: " + Arrays.toString(epsilons));
			}
		}
		return new Sweep(points, epsilons.clone(), minPts.clone()).run(kDistances, workers);
	}

	/** As the first, for the samples of a map. */
	public static List<Cell> run(Signals signals, double[] epsilons, int[] minPts, Workers workers) {
		return run(PointSet.of(signals), epsilons, minPts, workers);
	}

	private List<Cell> run(KDistances kDistances, Workers workers) {
		int n = points.size();
		for (int m = 0; m < minPts.length; m++) {
			double[] reach = kDistances.bySample(minPts[m] - 1);
			for (int p = 0; p < n; p++) {
				coreFrom[m][p] = firstReaching(reach[points.sample(p, 0)]);
			}
		}
		workers.progress().begin("sweep", n);
		Pairs.within(epsilons[epsilons.length - 1], points, workers, this::meet);
		List<Cell> cells = new ArrayList<>();
		for (int m = 0; m < minPts.length; m++) {
			for (int e = 0; e < epsilons.length; e++) {
				if (e > 0) {
					carryOver(m, e);
				}
				cells.add(new Cell(epsilons[e], minPts[m], label(m, e)));
			}
		}
		return cells;
	}

	private int firstReaching(double distance) {
		int e = 0;
		while (e < epsilons.length && epsilons[e] < distance) {
			e++;
		}
		return e;
	}

	private void meet(int a, int b, double d) {
		int near = firstReaching(d);
		for (int m = 0; m < minPts.length; m++) {
			int coreA = Math.max(near, coreFrom[m][a]);
			int coreB = Math.max(near, coreFrom[m][b]);
			if (Math.max(coreA, coreB) < epsilons.length) {
				sets[m][Math.max(coreA, coreB)].join(a, b);
			}
			if (coreB < coreFrom[m][a]) {
				offer(m, coreB, a, b, d);
			}
			if (coreA < coreFrom[m][b]) {
				offer(m, coreA, b, a, d);
			}
		}
	}

	/** A core point from this ε on, within reach of a point that is not yet core. */
	private void offer(int m, int e, int point, int corePoint, double d) {
		int best = corePointOf[m][e][point];
		if (best < 0 || Dbscan.nearer(points, d, corePoint, coreDistance[m][e][point], best)) {
			coreDistance[m][e][point] = d;
			corePointOf[m][e][point] = corePoint;
		}
	}

	/** What held at the ε before holds at this one. */
	private void carryOver(int m, int e) {
		for (int p = 0; p < points.size(); p++) {
			sets[m][e].join(p, sets[m][e - 1].find(p));
			if (corePointOf[m][e - 1][p] >= 0) {
				offer(m, e, p, corePointOf[m][e - 1][p], coreDistance[m][e - 1][p]);
			}
		}
	}

	private Clustering label(int m, int e) {
		boolean[] core = new boolean[points.size()];
		for (int p = 0; p < core.length; p++) {
			core[p] = coreFrom[m][p] <= e;
		}
		return Dbscan.label(points, core, sets[m][e], corePointOf[m][e]);
	}
}
