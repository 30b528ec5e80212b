package org.cairnfield.curation.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cairnfield.core.choose.TrialScore;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.DensePoints;
import org.cairnfield.core.cluster.KMeans;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.match.RegressedPositions;
import org.cairnfield.core.reduce.GaussianProcess;
import org.cairnfield.core.reduce.KernelReduction;
import org.cairnfield.core.reduce.PlaceOutputs;
import org.cairnfield.core.reduce.SignalMatrix;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.curation.study.DbscanContender.Noise;
import org.cairnfield.curation.study.DbscanContender.Place;

/**
 * A few directions that carry the place, by supervised kernel dimension reduction; then a split along them, or a Gaussian process
 * that gives positions without one.
 *
 * @param directions how many
 * @param then       what is done with them
 */
record KernelContender(int directions, Then then, long seed) implements Contender {

	private static final int[] DIRECTIONS = { 4, 12 };
	/** Of the reduction: its time grows with their cube. */
	private static final int LANDMARKS = 1000;

	/** What is done with directions. */
	interface Then {

		/** For a person. */
		String words();
	}

	private record Means(KMeansContender k) implements Then {
		@Override
		public String words() {
			return "k-means, " + k.setting();
		}
	}

	private record Dense(Place place) implements Then {
		@Override
		public String words() {
			return "DBSCAN, " + place;
		}
	}

	private record Process() implements Then {
		@Override
		public String words() {
			return "a Gaussian process, no split";
		}
	}

	/** Whether it splits the map, and does not only give positions. */
	boolean isSplit() {
		return !(then instanceof Process);
	}

	static List<Contender> all(long seed) {
		List<Contender> all = new ArrayList<>();
		for (int directions : DIRECTIONS) {
			List<Then> thens = new ArrayList<>(List.of(new Means(new KMeansContender(1, seed)), new Means(new KMeansContender(2, seed)), new Process()));
			Place.FEW.forEach(place -> thens.add(new Dense(place)));
			thens.forEach(then -> all.add(new KernelContender(directions, then, seed)));
		}
		return all;
	}

	@Override
	public String setting() {
		return directions + " directions, " + then.words();
	}

	@Override
	public Optional<Searchable> build(Signals map, Shared shared, Workers workers) {
		KernelReduction reduction = shared.answer(map, List.of("kernel reduction"), () -> reduction(map, workers));
		int components = Math.min(directions, reduction.columns());
		if (then instanceof Process) {
			int landmarks = (int) Math.max(2, Math.min(GaussianProcess.MOST_INPUTS, TrialScore.allowedShare(map.size()) * map.size()));
			return Optional.of(new RegressedSearchable(map, RegressedPositions.of(map, reduction, components, landmarks, seed, workers), components));
		}
		double[][] scores = shared.answer(map, List.of("kernel scores", components), () -> reduction.scores(new SignalMatrix(map), components));
		if (then instanceof Means means) {
			Clustering cells = KMeans.cluster(KMeans.points(scores, Distance.EUCLIDEAN), means.k.number(map.size()), KMeans.Start.SPREAD, seed, workers);
			return Optional.of(new SplitSearchable(map, cells, cells));
		}
		Place place = ((Dense) then).place;
		Map<Place, Clustering> found = shared.answer(map, List.of("kernel dbscan", components),
				() -> Place.clusters(new DensePoints(scores, Distance.EUCLIDEAN), shared.isKept() ? Place.FEW : List.of(place), workers));
		return Optional.ofNullable(found.get(place)).map(clusters -> new SplitSearchable(map, Noise.CORRELATED.treated(map, clusters, workers), clusters));
	}

	private KernelReduction reduction(Signals map, Workers workers) {
		KernelReduction.Settings usual = KernelReduction.Settings.usual(seed);
		try {
			return KernelReduction.of(new SignalMatrix(map), PlaceOutputs.of(map.map()), new KernelReduction.Settings(usual.inputScale(), usual.outputScale(),
					usual.ridge(), LANDMARKS, seed), workers);
		} catch (IllegalArgumentException e) {
			throw new UnfitSurveyException("too large: " + e.getMessage());
		}
	}
}
