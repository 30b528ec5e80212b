package org.cairnfield.core.cluster;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.distance.DisjointSets;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * DBSCAN for every pair of several ε and minPts at once. The distances are computed twice in all, however
 * many pairs: once for the core distances, once to join samples at the smallest ε at which both are core
 * and within reach. Every cell equals {@link Dbscan#cluster} of its pair.
 */
public final class Sweep {

	/** One pair and what came of it. */
	public record Cell(double epsilon, int minPts, Clustering clustering) {
	}

	private final PointSet points;
	private final double[] epsilons;
	private final int[] minPts;
	/** [minPts][sample]: index of the smallest ε at which the sample is core, or epsilons.length. */
	private final int[][] coreFrom;
	/** [minPts][ε]: joins that begin at this ε; made cumulative at the end. */
	private final DisjointSets[][] sets;
	/** [minPts][ε][sample]: for samples not yet core, the nearest sample that becomes its core at this ε. */
	private final double[][][] coreDistance;
	private final int[][][] coreSample;

	private Sweep(PointSet points, double[] epsilons, int[] minPts) {
		this.points = points;
		this.epsilons = epsilons;
		this.minPts = minPts;
		int n = points.size();
		coreFrom = new int[minPts.length][n];
		sets = new DisjointSets[minPts.length][epsilons.length];
		coreDistance = new double[minPts.length][epsilons.length][n];
		coreSample = new int[minPts.length][epsilons.length][n];
		for (int m = 0; m < minPts.length; m++) {
			for (int e = 0; e < epsilons.length; e++) {
				sets[m][e] = new DisjointSets(n);
				Arrays.fill(coreDistance[m][e], Double.POSITIVE_INFINITY);
				Arrays.fill(coreSample[m][e], -1);
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
			for (int s = 0; s < n; s++) {
				coreFrom[m][s] = firstReaching(reach[s]);
			}
		}
		double widest = epsilons[epsilons.length - 1];
		workers.progress().begin("sweep", n);
		workers.forRanges(n, () -> {
			PointSet.Surroundings around = points.surroundings();
			return (from, to) -> {
				for (int s = from; s < to; s++) {
					int sample = s;
					around.visit(sample, widest, (other, d) -> {
						pair(sample, other, d);
						return widest;
					});
				}
			};
		});
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

	/** Only this thread writes what belongs to {@code sample}; the sets can be joined from any. */
	private void pair(int sample, int other, double d) {
		int near = firstReaching(d);
		for (int m = 0; m < minPts.length; m++) {
			int from = Math.max(near, coreFrom[m][other]);
			int own = coreFrom[m][sample];
			if (from >= epsilons.length) {
				continue;
			}
			if (from < own) {
				double best = coreDistance[m][from][sample];
				if (d < best || (d == best && other < coreSample[m][from][sample])) {
					coreDistance[m][from][sample] = d;
					coreSample[m][from][sample] = other;
				}
			}
			if (other < sample && own < epsilons.length) {
				sets[m][Math.max(from, own)].join(sample, other);
			}
		}
	}

	/** What held at the ε before holds at this one. */
	private void carryOver(int m, int e) {
		for (int s = 0; s < points.size(); s++) {
			sets[m][e].join(s, sets[m][e - 1].find(s));
			double before = coreDistance[m][e - 1][s];
			double now = coreDistance[m][e][s];
			int sampleBefore = coreSample[m][e - 1][s];
			if (before < now || (before == now && sampleBefore >= 0 && sampleBefore < coreSample[m][e][s])) {
				coreDistance[m][e][s] = before;
				coreSample[m][e][s] = sampleBefore;
			}
		}
	}

	private Clustering label(int m, int e) {
		boolean[] core = new boolean[points.size()];
		for (int s = 0; s < core.length; s++) {
			core[s] = coreFrom[m][s] <= e;
		}
		return Dbscan.label(core, sets[m][e], coreSample[m][e]);
	}
}
