package org.cairnfield.curation.release;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.stats.Bootstrap;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.values.SampleKey;

/**
 * Ways of matching on the same test samples, each with what it comes to, to plain matching, and by floor and sample.
 *
 * @param test    what all were asked
 * @param keys    names of the test samples
 * @param columns plain first; none where nothing could be measured
 */
public record SideBySide(RadioMap test, List<SampleKey> keys, List<Column> columns) {

	private static final double CONFIDENCE = 0.95;

	/**
	 * One way, to plain matching.
	 *
	 * @param errorRatio      mean error to that of plain
	 * @param errorInterval   95 % bootstrap interval of that, both drawn on the same test samples; NaN where a sample got no place
	 * @param comparisonRatio fingerprints compared, likewise
	 * @param byteRatio       bytes that a device reads, likewise
	 */
	public record Column(ReleaseMeasures.Way way, double errorRatio, Interval errorInterval, double comparisonRatio, double byteRatio) {
	}

	/**
	 * The test samples of one floor.
	 *
	 * @param site       name
	 * @param meanMetres by column: mean error; NaN where no sample got a place
	 * @param rightShare by column: share put on the right floor of the right site
	 */
	public record OnFloor(String site, int level, int samples, List<Double> meanMetres, List<Double> rightShare) {
	}

	/**
	 * A test sample and where it was put.
	 *
	 * @param errorMetres in the plane; NaN where it got no place
	 * @param isRight     whether on the right floor of the right site
	 * @param found       site and floor that it was put on, in words
	 */
	public record Placed(SampleKey sample, String site, int level, double errorMetres, boolean isRight, String found) {
	}

	/** @param ways measured on the test samples of that map, plain first */
	static SideBySide of(ArchiveMap test, List<ReleaseMeasures.Way> ways) {
		List<SampleKey> keys = IntStream.range(0, test.map().size()).mapToObj(test::key).toList();
		List<Column> columns = new ArrayList<>();
		for (ReleaseMeasures.Way way : ways) {
			ReleaseMeasures.Way plain = ways.get(0);
			double[] errors = way.errors().errorsMetres();
			double[] plainErrors = plain.errors().errorsMetres();
			columns.add(new Column(way, way.errors().meanMetres() / plain.errors().meanMetres(),
					errors.length == plainErrors.length && errors.length > 0
							? Bootstrap.seeded(ReleaseMeasures.SEED).ratioOfMeans(errors, plainErrors) : new Interval(Double.NaN, Double.NaN, CONFIDENCE),
					way.comparisons() / plain.comparisons(), way.bytes() / plain.bytes()));
		}
		return new SideBySide(test.map(), keys, List.copyOf(columns));
	}

	/** By site and level. */
	public List<OnFloor> floors() {
		Map<String, Map<Integer, List<Integer>>> rows = new TreeMap<>();
		for (int s = 0; s < test.size(); s++) {
			rows.computeIfAbsent(test.sites().get(test.site(s)), site -> new TreeMap<>()).computeIfAbsent(test.floor(s),
					level -> new ArrayList<>()).add(s);
		}
		List<OnFloor> floors = new ArrayList<>();
		rows.forEach((site, levels) -> levels.forEach((level, samples) -> {
			List<List<Placed>> placed = columns.stream().map(column -> samples.stream().map(s -> placed(column.way(), s)).toList()).toList();
			floors.add(new OnFloor(site, level, samples.size(),
					placed.stream().map(column -> column.stream().mapToDouble(Placed::errorMetres).filter(e -> !Double.isNaN(e)).average()
							.orElse(Double.NaN)).toList(),
					placed.stream().map(column -> (double) column.stream().filter(Placed::isRight).count() / samples.size()).toList()));
		}));
		return floors;
	}

	/** The samples that a way puts farthest from where they were taken, those without a place first. */
	public List<Placed> worst(ReleaseMeasures.Way way, int most) {
		return IntStream.range(0, test.size()).mapToObj(s -> placed(way, s))
				.sorted(Comparator.comparingDouble((Placed p) -> Double.isNaN(p.errorMetres) ? Double.NEGATIVE_INFINITY : -p.errorMetres)
						.thenComparing(Placed::sample))
				.limit(most).toList();
	}

	private Placed placed(ReleaseMeasures.Way way, int s) {
		Estimates found = way.run().estimates();
		String site = test.sites().get(test.site(s));
		if (Double.isNaN(found.x(s))) {
			return new Placed(keys.get(s), site, test.floor(s), Double.NaN, false, "nowhere");
		}
		String where = way.run().sites().get(found.site(s));
		return new Placed(keys.get(s), site, test.floor(s), Math.hypot(found.x(s) - test.x(s), found.y(s) - test.y(s)),
				where.equals(site) && found.floor(s) == test.floor(s), where + ", floor " + found.floor(s));
	}
}
