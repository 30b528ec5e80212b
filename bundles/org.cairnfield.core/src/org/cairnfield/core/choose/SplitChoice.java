package org.cairnfield.core.choose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.cluster.NearestLabelled;
import org.cairnfield.core.cluster.Sweep;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.SplitMatcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;

/**
 * ε and minPts for DBSCAN, chosen on held-out blocks of the training positions: the pair with the smallest
 * mean error among those that cost at most a fifth of plain matching. ε is tried at shares of the
 * k-distance curve; the elbow alone is usually too large on real maps.
 */
public final class SplitChoice {

	/** Comparisons allowed, as a share of plain matching. */
	public static final double BUDGET_SHARE = 0.20;
	/** Shares of the k-distance curve at which ε is tried. */
	private static final double[] SHARES = { 0.3, 0.4, 0.5, 0.6, 0.7, 0.8 };
	private static final int[] MIN_PTS = { 3, 5, 8 };

	/**
	 * One pair that was tried.
	 *
	 * @param curveShare      the share of the k-distance curve at which ε stands
	 * @param epsilon         on the held-out map
	 * @param minPts          itself counted
	 * @param clusters        found
	 * @param noiseShare      0 … 1
	 * @param meanErrorMetres of the held-out samples, noise in the cluster of the nearest labelled sample
	 * @param comparisonShare of plain matching
	 */
	public record Tried(double curveShare, double epsilon, int minPts, int clusters, double noiseShare,
			double meanErrorMetres, double comparisonShare) {
	}

	/**
	 * What was chosen, for the whole map.
	 *
	 * @param tried every pair, in the order tried
	 */
	public record Choice(double epsilon, int minPts, List<Tried> tried) {
	}

	private SplitChoice() {
	}

	/** Looks at the samples of {@code signals} only. */
	public static Choice choose(Signals signals, long seed, Workers workers) {
		workers.progress().begin("choosing ε and minPts", MIN_PTS.length + 1L);
		Choice choice = choose(signals, seed, workers.quietly(), workers.progress());
		workers.progress().advance(1);
		return choice;
	}

	private static Choice choose(Signals signals, long seed, Workers workers, Progress progress) {
		HeldOut heldOut = HeldOut.of(signals, 1, seed).get(0);
		List<Tried> tried = new ArrayList<>();
		for (int minPts : MIN_PTS) {
			double[] epsilons = epsilons(heldOut.signals, minPts, workers);
			List<Sweep.Cell> cells = Sweep.run(heldOut.signals, epsilons, new int[] { minPts }, workers);
			List<int[]> labels = NearestLabelled.labels(heldOut.signals,
					cells.stream().map(Sweep.Cell::clustering).toList(), workers);
			for (int e = 0; e < cells.size(); e++) {
				Sweep.Cell cell = cells.get(e);
				Clustering placed = cell.clustering().relabelled(labels.get(e));
				if (placed.clusters() > 0) {
					HeldOut.Score score = score(heldOut, placed, workers);
					tried.add(new Tried(SHARES[e], cell.epsilon(), minPts, cell.clustering().clusters(),
							cell.clustering().noiseShare(), score.meanErrorMetres(), score.comparisonShare()));
				}
			}
			progress.advance(1);
		}
		Tried best = tried.stream().min(preference()).orElse(null);
		int minPts = best == null ? MIN_PTS[0] : best.minPts();
		double share = best == null ? SHARES[0] : best.curveShare();
		return new Choice(epsilonAt(signals, minPts, share, workers), minPts, tried);
	}

	private static Comparator<Tried> preference() {
		return Comparator.comparing((Tried t) -> t.comparisonShare() <= BUDGET_SHARE ? 0 : t.comparisonShare())
				.thenComparing(Tried::meanErrorMetres).thenComparing(Tried::comparisonShare);
	}

	private static HeldOut.Score score(HeldOut heldOut, Clustering placed, Workers workers) {
		SplitMap split = SplitMap.of(heldOut.signals, placed, Centroids.Kind.MEAN, false);
		return heldOut.scores(new SplitMatcher(split, 1, 1, false, Voting.NEAREST), List.of(Voting.NEAREST), workers).get(0);
	}

	private static double[] epsilons(Signals signals, int minPts, Workers workers) {
		double[] curve = KDistances.of(signals, workers, minPts).sorted(minPts);
		return Arrays.stream(SHARES).map(share -> at(curve, share)).toArray();
	}

	/** The k-distance (k = minPts) below which a share of the samples lies. */
	static double epsilonAt(Signals signals, int minPts, double share, Workers workers) {
		return at(KDistances.of(signals, workers, minPts).sorted(minPts), share);
	}

	/** Repeated scans make k-distances of 0; the first above 0 is the least that says anything. */
	private static double at(double[] curve, double share) {
		int i = Math.min(curve.length - 1, (int) (share * curve.length));
		while (i >= 0 && i < curve.length - 1 && curve[i] == 0) {
			i++;
		}
		return i < 0 || Double.isInfinite(curve[i]) ? 0 : curve[i];
	}
}
