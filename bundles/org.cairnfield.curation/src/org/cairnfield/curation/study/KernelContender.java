package org.cairnfield.curation.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cairnfield.core.choose.TrialScore;
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
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.split.UnfitSurveyException;

/**
 * A few directions that carry the place, by supervised kernel dimension reduction; then a split along them, or a Gaussian process
 * that gives positions without one.
 *
 * @param directions how many
 * @param then       how the map is split along them; null: not at all, a Gaussian process gives positions
 */
record KernelContender(int directions, Then then, long seed) implements Contender {

	private static final int[] DIRECTIONS = { 4, 12 };
	/** Of the reduction: its time grows with their cube. */
	private static final int LANDMARKS = 1000;

	static List<Contender> all(long seed) {
		List<Contender> all = new ArrayList<>();
		for (int directions : DIRECTIONS) {
			Then.splits(seed).forEach(then -> all.add(new KernelContender(directions, then, seed)));
			all.add(new KernelContender(directions, null, seed));
		}
		return all;
	}

	@Override
	public String setting() {
		return Words.bind(Messages.KernelContender_directions, directions,
				then == null ? Messages.KernelContender_aGaussianProcess : then.words());
	}

	@Override
	public Optional<Searchable> build(Signals map, Shared shared, Workers workers) {
		KernelReduction reduction = shared.answer(map, List.of(Messages.KernelContender_kernelReduction),
				() -> reduction(map, workers));
		int components = Math.min(directions, reduction.columns());
		if (then == null) {
			int landmarks = (int) Math.max(2,
					Math.min(GaussianProcess.MOST_INPUTS, TrialScore.allowedShare(map.size()) * map.size()));
			return Optional.of(new RegressedSearchable(map,
					RegressedPositions.of(map, reduction, components, landmarks, seed, workers), components));
		}
		double[][] scores = shared.answer(map, List.of(Messages.KernelContender_kernelScores, components),
				() -> reduction.scores(new SignalMatrix(map), components));
		Then.Basis along = new Then.Basis(Words.bind(Messages.KernelContender_directions2, components), map,
				new DensePoints(scores, Distance.EUCLIDEAN),
				KMeans.points(scores, Distance.EUCLIDEAN));
		return then.cells(along, shared, workers).map(cells -> new SplitSearchable(map, cells.all(), cells.found()));
	}

	private KernelReduction reduction(Signals map, Workers workers) {
		KernelReduction.Settings usual = KernelReduction.Settings.usual(seed);
		try {
			return KernelReduction.of(new SignalMatrix(map), PlaceOutputs.of(map.map()),
					new KernelReduction.Settings(usual.inputScale(), usual.outputScale(),
							usual.ridge(), LANDMARKS, seed),
					workers);
		} catch (IllegalArgumentException e) {
			throw new UnfitSurveyException(Words.bind(Messages.KernelContender_tooLarge, e.getMessage()));
		}
	}
}
