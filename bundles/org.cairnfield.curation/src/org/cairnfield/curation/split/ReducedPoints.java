package org.cairnfield.curation.split;

import java.util.stream.IntStream;
import org.cairnfield.core.cluster.DensePoints;
import org.cairnfield.core.cluster.PointSet;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.reduce.Pca;
import org.cairnfield.core.reduce.SignalMatrix;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;

/** The samples of a map by their principal components: those that explain a share of the variance. */
record ReducedPoints(PointSet points, int components) {

	/** @throws UnfitSurveyException where principal components cannot be had of the map */
	static ReducedPoints of(Signals signals, double share, Workers workers) {
		SignalMatrix matrix = new SignalMatrix(signals);
		Pca pca = pca(matrix, workers);
		int components = pca.componentsFor(share);
		double[][] scores = IntStream.range(0, matrix.size()).mapToObj(s -> pca.scores(matrix, s, components))
				.toArray(double[][]::new);
		return new ReducedPoints(new DensePoints(scores, signals.distance()), components);
	}

	private static Pca pca(SignalMatrix matrix, Workers workers) {
		try {
			return Pca.of(matrix, Pca.Scaling.CENTRED, workers);
		} catch (IllegalArgumentException e) {
			throw new UnfitSurveyException(
					Words.bind(Messages.ReducedPoints_theSurveyCannotBeReduced, e.getMessage()));
		}
	}
}
