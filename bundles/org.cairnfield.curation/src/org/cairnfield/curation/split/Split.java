package org.cairnfield.curation.split;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.SplitChoice;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.cluster.Kneedle;
import org.cairnfield.core.cluster.PointSet;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;

/**
 * A DBSCAN split of a map and what it was made from.
 *
 * @param signals       the map in the representation and distance of the split
 * @param epsilon       used
 * @param minPts        used, the sample itself counted
 * @param clustering    labels and roles
 * @param curve         ascending k-distances, k = minPts, infinite ones left out
 * @param elbow         of that curve by Kneedle, where it has one: a start, not an answer
 * @param tried         pairs of ε and minPts tried where they were chosen, else empty
 * @param pcaComponents principal components used before DBSCAN, 0 where not reduced
 */
public record Split(Signals signals, double epsilon, int minPts, Clustering clustering, double[] curve,
		Optional<Kneedle.Knee> elbow, List<SplitChoice.Tried> tried, int pcaComponents) {

	private static final double ELBOW_SENSITIVITY = 1;
	private static final int USUAL_MIN_PTS = 5;
	/** Where ε stands on the curve of a reduced map, unless given: half of the samples reach it. */
	private static final double REDUCED_CURVE_SHARE = 0.5;

	/**
	 * @throws UnfitSurveyException     where principal components cannot be had of the map
	 * @throws IllegalArgumentException for parameters out of range
	 */
	public static Split of(RadioMap map, SplitRequest request, Workers workers) {
		Signals signals = Signals.of(map, request.representation(), request.distance());
		if (request.pcaShare().isPresent()) {
			return reduced(signals, request, workers);
		}
		PointSet points = PointSet.of(signals);
		if (request.epsilon().isPresent() && request.minPts().isPresent()) {
			return finish(signals, points, request.epsilon().getAsDouble(), request.minPts().getAsInt(), List.of(), 0,
					workers);
		}
		SplitChoice.Choice choice = SplitChoice.choose(signals, request.seed(), workers);
		return finish(signals, points, request.epsilon().orElse(choice.epsilon()),
				request.minPts().orElse(choice.minPts()), choice.tried(), 0, workers);
	}

	private static Split reduced(Signals signals, SplitRequest request, Workers workers) {
		ReducedPoints reduced = ReducedPoints.of(signals, request.pcaShare().getAsDouble(), workers);
		PointSet points = reduced.points();
		int minPts = request.minPts().orElse(USUAL_MIN_PTS);
		double epsilon = request.epsilon().orElseGet(() -> {
			double[] curve = curve(points, minPts, workers);
			return curve.length == 0 ? 0 : curve[(int) (REDUCED_CURVE_SHARE * (curve.length - 1))];
		});
		return finish(signals, points, epsilon, minPts, List.of(), reduced.components(), workers);
	}

	private static Split finish(Signals signals, PointSet points, double epsilon, int minPts,
			List<SplitChoice.Tried> tried, int components, Workers workers) {
		Clustering clustering = Dbscan.cluster(points, epsilon, minPts, workers);
		double[] curve = curve(points, minPts, workers);
		return new Split(signals, epsilon, minPts, clustering, curve, elbow(curve), tried, components);
	}

	/** Where a k-distance curve bends, if it does. */
	static Optional<Kneedle.Knee> elbow(double[] curve) {
		double[] rank = IntStream.range(0, curve.length).asDoubleStream().toArray();
		return curve.length < 3 ? Optional.empty()
				: Kneedle.find(rank, curve, ELBOW_SENSITIVITY, Kneedle.Shape.CONVEX_INCREASING);
	}

	/** Ascending; empty where minPts samples are more than there are, and costs no memory then. */
	static double[] curve(PointSet points, int minPts, Workers workers) {
		return minPts > points.size() ? new double[0]
				: finite(KDistances.of(points, workers, minPts).sorted(minPts));
	}

	private static double[] finite(double[] ascending) {
		int n = ascending.length;
		while (n > 0 && Double.isInfinite(ascending[n - 1])) {
			n--;
		}
		return java.util.Arrays.copyOf(ascending, n);
	}

	public RadioMap map() {
		return signals.map();
	}
}
