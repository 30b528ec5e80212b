package org.cairnfield.core.choose;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KMeans;
import org.cairnfield.core.cluster.LargeClusters;
import org.cairnfield.core.cluster.NearestLabelled;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.Placement;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/** Applies recipes to one map; what several recipes share is done once. */
final class SplittingMaker {

	private final Signals signals;
	private final long seed;
	private final Workers workers;
	private final Map<Double, Double> epsilons = new HashMap<>();
	private final Map<Double, Clustering> dbscans = new HashMap<>();
	private final Map<Double, Clustering> correlated = new HashMap<>();

	SplittingMaker(Signals signals, long seed, Workers workers) {
		this.signals = signals;
		this.seed = seed;
		this.workers = workers;
	}

	Splitting make(Recipe recipe) {
		Clustering cells = switch (recipe.method()) {
		case DBSCAN_CORRELATION -> correlated.computeIfAbsent(recipe.curveShare(), this::correlated);
		case DBSCAN_NEAREST -> nearest(recipe.curveShare());
		case K_MEANS -> kMeans(recipe.samplesPerCell());
		};
		if (recipe.cut()) {
			cells = LargeClusters.cut(signals, cells, LargeClusters.usualLimit(signals.size()), seed, workers);
		}
		boolean dbscan = recipe.method() != Splitting.Method.K_MEANS;
		return new Splitting(recipe.method(), dbscan ? epsilon(recipe.curveShare()) : Double.NaN,
				dbscan ? Recipe.MIN_PTS : 0, recipe.cut(), cells);
	}

	private double epsilon(double share) {
		return epsilons.computeIfAbsent(share, s -> SplitChoice.epsilonAt(signals, Recipe.MIN_PTS, s, workers));
	}

	private Clustering dbscan(double share) {
		return dbscans.computeIfAbsent(share, s -> Dbscan.cluster(signals, epsilon(s), Recipe.MIN_PTS, workers));
	}

	private Clustering correlated(double share) {
		Clustering found = dbscan(share);
		int[] labels = found.labels();
		for (Placement p : NoiseCorrelation.place(signals, found, workers)) {
			labels[p.sample()] = p.cluster();
		}
		return found.relabelled(labels);
	}

	private Clustering nearest(double share) {
		Clustering found = dbscan(share);
		return found.relabelled(NearestLabelled.labels(signals, List.of(found), workers).get(0));
	}

	private Clustering kMeans(int samplesPerCell) {
		int n = signals.size();
		int cells = samplesPerCell == 0 ? (int) Math.round(Math.sqrt(n)) : n / samplesPerCell;
		int[] all = IntStream.range(0, n).toArray();
		return KMeans.cluster(KMeans.points(signals, all), Math.max(1, cells), seed, workers);
	}
}
