package org.cairnfield.curation.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.DensePoints;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.cluster.NearestLabelled;
import org.cairnfield.core.cluster.PointSet;
import org.cairnfield.core.cluster.Sweep;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.reduce.Pca;
import org.cairnfield.core.reduce.SignalMatrix;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.split.KDistanceCurve;
import org.cairnfield.curation.split.UnfitSurveyException;

/**
 * DBSCAN with ε where a share of the samples has its minPts-th nearest, which is the same on a map from which samples are held out.
 *
 * @param place    of ε
 * @param pcaShare of the variance, that the principal components explain among which clusters are sought; 0 for none
 * @param noise    what becomes of it
 */
record DbscanContender(Place place, double pcaShare, Noise noise) implements Contender {

	private static final List<Place> PLACES = Place.all(new int[] { 3, 5 }, 0.2, 0.3, 0.4, 0.5);
	private static final double[] PCA_SHARES = { 0.8, 0.95 };

	/**
	 * Where ε is.
	 *
	 * @param minPts     the sample itself counted
	 * @param curveShare of the samples, on the k-distance curve
	 */
	record Place(int minPts, double curveShare) {

		/** Those usually tried where DBSCAN is part of something else. */
		static final List<Place> FEW = all(new int[] { 3 }, 0.3, 0.5);

		private static List<Place> all(int[] minPts, double... shares) {
			return Arrays.stream(minPts).boxed()
					.flatMap(m -> Arrays.stream(shares).mapToObj(share -> new Place(m, share))).toList();
		}

		/** Clusters of each place, those without any left out; neighbours are found for all places at once. */
		static Map<Place, Clustering> clusters(PointSet points, List<Place> places, Workers workers) {
			int[] minPts = places.stream().mapToInt(Place::minPts).distinct().filter(m -> m < points.samples())
					.toArray();
			Map<Place, Clustering> found = new HashMap<>();
			if (minPts.length == 0) {
				return found;
			}
			KDistances distances = KDistances.of(points, workers,
					Arrays.stream(minPts).flatMap(m -> IntStream.of(m - 1, m)).distinct().toArray());
			Map<Place, Double> epsilons = new HashMap<>();
			places.stream().filter(place -> place.minPts < points.samples()).forEach(place -> epsilons.put(place,
					KDistanceCurve.of(apart(distances.sorted(place.minPts)), place.minPts)
							.epsilonAt(place.curveShare)));
			double[] grid = epsilons.values().stream().mapToDouble(e -> e).sorted().distinct().toArray();
			for (Sweep.Cell cell : Sweep.run(points, grid, minPts, distances, workers)) {
				epsilons.forEach((place, epsilon) -> {
					if (place.minPts == cell.minPts() && epsilon == cell.epsilon()
							&& cell.clustering().clusters() > 0) {
						found.put(place, cell.clustering());
					}
				});
			}
			return found;
		}

		/** Without the zeros of repeated scans, where there are others: among scans that repeat each other ε would be 0. */
		private static double[] apart(double[] ascending) {
			double[] apart = Arrays.stream(ascending).filter(distance -> distance > 0).toArray();
			return apart.length == 0 ? ascending : apart;
		}

		@Override
		public String toString() {
			return String.format(Locale.ROOT, Messages.DbscanContender_atOfTheKDistance, 100 * curveShare,
					minPts);
		}
	}

	/** What becomes of noise. */
	enum Noise {
		/** It is left out. */
		DROPPED,
		/** It goes where it correlates. */
		CORRELATED,
		/** It goes where the nearest labelled sample is. */
		NEAREST;

		Clustering treated(Signals map, Clustering found, Workers workers) {
			return switch (this) {
			case DROPPED -> found;
			case CORRELATED -> correlated(map, found, workers);
			case NEAREST -> found.relabelled(NearestLabelled.labels(map, List.of(found), workers).get(0));
			};
		}

		private static Clustering correlated(Signals map, Clustering found, Workers workers) {
			int[] labels = found.labels();
			for (NoisePlacement placed : NoiseCorrelation.place(map, found, workers)) {
				if (ProposalRule.USUAL.proposes(placed)) {
					labels[placed.sample()] = placed.cluster();
				}
			}
			return found.relabelled(labels);
		}
	}

	/** All settings of a way to treat noise. */
	static List<Contender> all(Noise noise) {
		return PLACES.stream().<Contender>map(place -> new DbscanContender(place, 0, noise)).toList();
	}

	/** Those among principal components. */
	static List<Contender> reduced() {
		List<Contender> all = new ArrayList<>();
		for (double share : PCA_SHARES) {
			Place.FEW.forEach(place -> all.add(new DbscanContender(place, share, Noise.CORRELATED)));
		}
		return all;
	}

	@Override
	public String setting() {
		return place + (pcaShare == 0 ? ""
				: String.format(Locale.ROOT, Messages.DbscanContender_ofTheVariance, 100 * pcaShare));
	}

	@Override
	public Optional<Searchable> build(Signals map, Shared shared, Workers workers) {
		List<Place> places = shared.isKept() ? pcaShare == 0 ? PLACES : Place.FEW : List.of(place);
		Map<Place, Clustering> found = shared.answer(map, List.of("dbscan", pcaShare),
				() -> Place.clusters(points(map, workers), places, workers));
		return Optional.ofNullable(found.get(place))
				.map(clusters -> new SplitSearchable(map, noise.treated(map, clusters, workers), clusters));
	}

	private PointSet points(Signals map, Workers workers) {
		if (pcaShare == 0) {
			return PointSet.of(map);
		}
		SignalMatrix matrix = new SignalMatrix(map);
		try {
			Pca pca = Pca.of(matrix, Pca.Scaling.CENTRED, workers);
			return new DensePoints(pca.scores(matrix, pca.componentsFor(pcaShare)), map.distance());
		} catch (IllegalArgumentException e) {
			throw new UnfitSurveyException(Words.bind(Messages.DbscanContender_tooLarge, e.getMessage()));
		}
	}
}
