package org.cairnfield.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.core.measure.Positions;
import org.cairnfield.core.stats.Bootstrap;
import org.cairnfield.core.stats.Interval;

/**
 * What each way of matching does on the test samples, in all and by their site.
 *
 * @param site        null for all
 * @param way         in {@link Matching#WAYS}
 * @param mean        95 % bootstrap interval of the mean error, metres
 * @param comparisons fingerprints compared a query, mean
 */
record Figures(String site, String way, int tests, PositionErrors errors, Interval mean, double comparisons) {

	/** Column names of {@link #row}, as the files of results have them. */
	static final List<String> COLUMNS = List.of("name", "meanErrorM", "meanLowM", "meanHighM", "medianErrorM", "rmseM",
			"p75M", "p90M", "p95M",
			"ce50M", "ce95M", "floorHitRate", "siteHitRate", "comparisonsPerQuery");
	/** Of all that is drawn, as in every measurement. */
	private static final long SEED = 1;

	/** A test sample: its true place. */
	private record Truth(int id, int site, int floor, double x, double y) implements Serializable {
	}

	/**
	 * Matches every test sample in every way; the tests are dealt out, each machine has the whole map.
	 *
	 * @param map   that is searched
	 * @param tests with sites and access points by their own numbers
	 * @return in all, then by site
	 */
	static List<Figures> of(JavaSparkContext spark, Matching matching, RadioMap map, SpreadMap tests) {
		if (tests.size() == 0 || map.size() == 0) {
			return List.of();
		}
		Broadcast<Matching> ready = spark.broadcast(matching);
		Broadcast<List<List<String>>> names = spark
				.broadcast(List.of(new ArrayList<>(tests.sites()), new ArrayList<>(tests.accessPoints())));
		JavaRDD<Fingerprint> asked = tests.samples().repartition(spark.defaultParallelism());
		List<Matching.Estimate> found = asked.mapPartitions(part -> {
			List<Fingerprint> queries = new ArrayList<>();
			part.forEachRemaining(queries::add);
			RadioMap own = Fingerprint.map(queries, names.value().get(0)::get, names.value().get(1)::get);
			return queries.isEmpty() ? List.<Matching.Estimate>of().iterator()
					: ready.value().estimates(own, queries.stream().mapToInt(Fingerprint::id).toArray()).iterator();
		}).collect();
		Matching.Estimate[][] byWay = new Matching.Estimate[Matching.WAYS.size()][tests.size()];
		found.forEach(e -> byWay[e.way()][e.query()] = e);
		List<Truth> truth = new ArrayList<>(
				tests.samples().map(f -> new Truth(f.id(), f.site(), f.floor(), f.x(), f.y())).collect());
		truth.sort(Comparator.comparingInt(Truth::id));
		int[] siteInMap = tests.sites().stream().mapToInt(map.sites()::indexOf).toArray();
		List<Figures> figures = new ArrayList<>();
		measure(null, truth, siteInMap, byWay, figures);
		for (int site : new TreeSet<>(truth.stream().map(Truth::site).toList())) {
			measure(tests.sites().get(site), truth.stream().filter(t -> t.site == site).toList(), siteInMap, byWay,
					figures);
		}
		return figures;
	}

	private static void measure(String site, List<Truth> truth, int[] siteInMap, Matching.Estimate[][] byWay,
			List<Figures> figures) {
		int[] wanted = truth.stream().mapToInt(Truth::id).toArray();
		Positions places = new Positions(truth.stream().mapToDouble(Truth::x).toArray(),
				truth.stream().mapToDouble(Truth::y).toArray(),
				truth.stream().mapToInt(Truth::floor).toArray(),
				truth.stream().mapToInt(t -> siteInMap[t.site]).toArray());
		for (int way = 0; way < byWay.length; way++) {
			Matching.Estimate[] own = byWay[way];
			List<Matching.Estimate> e = IntStream.of(wanted).mapToObj(q -> own[q]).toList();
			PositionErrors errors = PositionErrors
					.of(new Positions(e.stream().mapToDouble(Matching.Estimate::x).toArray(),
							e.stream().mapToDouble(Matching.Estimate::y).toArray(),
							e.stream().mapToInt(Matching.Estimate::floor).toArray(),
							e.stream().mapToInt(Matching.Estimate::site).toArray()), places);
			figures.add(new Figures(site, Matching.WAYS.get(way), wanted.length, errors,
					Bootstrap.seeded(SEED).mean(errors.errorsMetres()),
					e.stream().mapToInt(Matching.Estimate::comparisons).average().orElse(0)));
		}
	}

	/** In the order of {@link #COLUMNS}. */
	List<Object> row() {
		return Arrays.asList(way, errors.meanMetres(), mean.low(), mean.high(), errors.medianMetres(),
				errors.rmseMetres(), errors.p75Metres(),
				errors.p90Metres(), errors.p95Metres(), errors.ce50Metres(), errors.ce95Metres(), errors.floorHitRate(),
				errors.siteHitRate(),
				comparisons);
	}
}
