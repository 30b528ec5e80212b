package org.cairnfield.curation.study;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.cairnfield.core.cluster.AffinityPropagation;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.stats.Draw;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;

/**
 * Affinity propagation.
 *
 * @param factor preference as a multiple of the median similarity: the larger, the fewer clusters
 */
record AffinityContender(double factor, long seed) implements Contender {

	private static final double[] FACTORS = { 1, 8 };
	/** Rows of distances by which the median is estimated. */
	private static final int ROWS = 100;

	static List<Contender> all(long seed) {
		return Arrays.stream(FACTORS).<Contender>mapToObj(factor -> new AffinityContender(factor, seed)).toList();
	}

	@Override
	public String setting() {
		return String.format(Locale.ROOT, Messages.AffinityContender_preferenceTheMedianSimilarity, factor);
	}

	@Override
	public Optional<Searchable> build(Signals map, Shared shared, Workers workers) {
		AffinityPropagation.Result found = AffinityPropagation.cluster(map,
				AffinityPropagation.Settings.usual(seed).withPreference(-factor * medianDistance(map)), workers);
		String landmarks = found.landmarks() == 0 ? ""
				: Words.bind(Messages.AffinityContender_landmarksTheOthersWithThe, found.landmarks());
		String unsteady = found.converged() ? ""
				: Words.bind(Messages.AffinityContender_notAtRestAfterRounds, found.rounds());
		String note = landmarks + (landmarks.isEmpty() || unsteady.isEmpty() ? "" : ", ") + unsteady;
		return Optional.of(new SplitSearchable(map, found.clustering(), found.clustering(), asked -> asked, note));
	}

	/** Of samples in earshot of each other. */
	private double medianDistance(Signals map) {
		DistanceKernel kernel = map.kernel();
		double[] row = new double[map.components().largest()];
		DoubleStream.Builder all = DoubleStream.builder();
		for (int s : Draw.some(ROWS, map.size(), seed)) {
			int n = kernel.row(s, row);
			Arrays.stream(row, 0, n).forEach(all);
		}
		return Median.of(all.build().toArray());
	}
}
