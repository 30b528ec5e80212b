package org.cairnfield.curation.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.NearestLabelled;
import org.cairnfield.core.cluster.Sweep;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.SplitMatcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Workers;

/**
 * What the pairs of a sweep would cost in position error: a fifth of the training positions, in whole blocks, is
 * held out and matched against splits of the rest, made with the same ε and minPts. Test surveys play no part,
 * for a choice made on them would flatter itself.
 */
final class HeldOutErrors {

	private static final double SHARE = 0.2;
	private static final int MOST_QUERIES = 2000;

	private final Signals kept;
	private final RadioMap asked;
	private final SignalRows queries;

	HeldOutErrors(Signals whole, long seed) {
		RadioMap map = whole.map();
		boolean[] out = PositionBlocks.of(map).holdOut(SHARE, seed);
		int[] held = IntStream.range(0, out.length).filter(s -> out[s]).toArray();
		int step = Math.max(1, (held.length + MOST_QUERIES - 1) / MOST_QUERIES);
		asked = map.view(IntStream.range(0, held.length).filter(i -> i % step == 0).map(i -> held[i]).toArray());
		RadioMap rest = map.where(s -> !out[s]);
		kept = Signals.of(rest.size() == 0 ? map : rest, whole.representation(), whole.distance());
		queries = kept.align(asked);
	}

	/** What the errors are of. */
	String basis() {
		return String.format(Locale.ROOT,
				Messages.HeldOutErrors_trainingSamplesHeldOutBy,
				asked.size(), kept.size());
	}

	/** The cells with their errors; the clusterings of the whole map are the caller's. */
	List<SweepCell> fill(List<SweepCell> cells, double[] epsilons, int[] minPts, Workers workers) {
		List<Sweep.Cell> held = Sweep.run(kept, epsilons, minPts, workers);
		List<int[]> labels = NearestLabelled.labels(kept, held.stream().map(Sweep.Cell::clustering).toList(), workers);
		List<SweepCell> filled = new ArrayList<>();
		for (int i = 0; i < cells.size(); i++) {
			filled.add(fill(cells.get(i), held.get(i).clustering().relabelled(labels.get(i)), workers));
		}
		return filled;
	}

	private SweepCell fill(SweepCell cell, Clustering placed, Workers workers) {
		workers.checkCancelled();
		if (placed.clusters() == 0 || asked.size() == 0) {
			return cell;
		}
		Estimates estimates = Estimates.of(new SplitMatcher(SplitMap.of(kept, placed, Centroids.Kind.MEAN, false), 1, 1,
				false, Voting.NEAREST), queries, workers);
		double sum = 0;
		for (int q = 0; q < estimates.size(); q++) {
			sum += Math.hypot(estimates.x(q) - asked.x(q), estimates.y(q) - asked.y(q));
		}
		return new SweepCell(cell.epsilon(), cell.minPts(), cell.clusters(), cell.noiseShare(), cell.largestShare(),
				sum / estimates.size(), estimates.meanComparisons() / kept.size());
	}
}
