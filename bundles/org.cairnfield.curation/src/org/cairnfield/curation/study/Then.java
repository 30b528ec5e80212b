package org.cairnfield.curation.study;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.KMeans;
import org.cairnfield.core.cluster.PointSet;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.study.DbscanContender.Noise;
import org.cairnfield.curation.study.DbscanContender.Place;

/** How a map is split after something else was done with it. */
interface Then {

	/**
	 * What is split.
	 *
	 * @param name    that tells it from others of the same signals
	 * @param signals by which noise is given back
	 * @param points  for DBSCAN
	 * @param means   the same for k-means
	 */
	record Basis(String name, Signals signals, PointSet points, KMeans.Points means) {
	}

	/**
	 * What it is split into.
	 *
	 * @param all   clusters of the samples, noise given back
	 * @param found the same before
	 */
	record Cells(Clustering all, Clustering found) {
	}

	/** For a person. */
	String words();

	/** Clusters; empty where nothing is dense enough to be one. */
	Optional<Cells> cells(Basis basis, Shared shared, Workers workers);

	/** k-means with √n and 2·√n clusters, and DBSCAN at two places. */
	static List<Then> splits(long seed) {
		return Stream.concat(Stream.of(1.0, 2.0).<Then>map(factor -> new Means(new KMeansContender(factor, seed))),
				Place.FEW.stream().<Then>map(Dense::new)).toList();
	}

	/** k-means. */
	record Means(KMeansContender k) implements Then {

		@Override
		public String words() {
			return "k-means, " + k.setting();
		}

		@Override
		public Optional<Cells> cells(Basis basis, Shared shared, Workers workers) {
			Clustering cells = KMeans.cluster(basis.means, k.number(basis.means.size()), KMeans.Start.SPREAD, k.seed(),
					workers);
			return Optional.of(new Cells(cells, cells));
		}
	}

	/** DBSCAN, correlated noise given back. */
	record Dense(Place place) implements Then {

		@Override
		public String words() {
			return "DBSCAN, " + place;
		}

		@Override
		public Optional<Cells> cells(Basis basis, Shared shared, Workers workers) {
			Map<Place, Clustering> found = shared.answer(basis.signals, List.of("then dbscan", basis.name),
					() -> Place.clusters(basis.points, shared.isKept() ? Place.FEW : List.of(place), workers));
			return Optional.ofNullable(found.get(place))
					.map(clusters -> new Cells(Noise.CORRELATED.treated(basis.signals, clusters, workers), clusters));
		}
	}
}
