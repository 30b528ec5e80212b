package org.cairnfield.curation.study;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.KMeans;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * k-means++ with k a multiple of √n: below it cells are large, above it there are many centroids to compare.
 *
 * @param factor times √n
 */
record KMeansContender(double factor, long seed) implements Contender {

	private static final double[] FACTORS = { 0.5, 1, 2 };
	/** Cells of so many samples, for a search in two levels. */
	private static final double SMALL_CELL = 16;

	/** @param samples of the map */
	static List<Contender> all(int samples, long seed) {
		return DoubleStream
				.concat(Arrays.stream(FACTORS),
						DoubleStream.of(Math.sqrt(samples) / SMALL_CELL).filter(f -> f > FACTORS[FACTORS.length - 1]))
				.<Contender>mapToObj(factor -> new KMeansContender(factor, seed)).toList();
	}

	@Override
	public String setting() {
		return String.format(Locale.ROOT, "k = %.3g·√n", factor);
	}

	@Override
	public Optional<Searchable> build(Signals map, Shared shared, Workers workers) {
		Clustering cells = cells(map, shared, workers);
		return Optional.of(new SplitSearchable(map, cells, cells));
	}

	Clustering cells(Signals map, Shared shared, Workers workers) {
		return shared.answer(map, List.of("k-means", factor),
				() -> KMeans.cluster(points(map), number(map.size()), KMeans.Start.SPREAD, seed, workers));
	}

	/** Of a map of so many samples. */
	int number(int samples) {
		return (int) Math.max(1, Math.round(factor * Math.sqrt(samples)));
	}

	static KMeans.Points points(Signals map) {
		return KMeans.points(map, IntStream.range(0, map.size()).toArray());
	}
}
