package org.cairnfield.curation.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.stats.Percentile;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.values.SampleKey;

/**
 * Ways of matching on the same test samples, each with what it comes to, to plain matching, and by floor and sample.
 *
 * @param test    what all were asked
 * @param keys    names of the test samples
 * @param ways    plain first; none where nothing could be measured
 */
public record SideBySide(RadioMap test, List<SampleKey> keys, List<Way> ways) {

	/**
	 * The test samples of one floor.
	 *
	 * @param site       name
	 * @param ways by way
	 */
	public record OnFloor(String site, int level, int samples, List<Figures> ways) {
	}

	/** Likewise of one site. */
	public record OnSite(String site, int samples, List<Figures> ways) {
	}

	/**
	 * What a way comes to on some of the test samples.
	 *
	 * @param meanMetres mean error; NaN where no sample got a place
	 * @param p95Metres  95 % of the errors; NaN likewise
	 * @param rightShare share put on the right floor of the right site
	 */
	public record Figures(double meanMetres, double p95Metres, double rightShare) {
	}

	/**
	 * A test sample and where it was put.
	 *
	 * @param site       where it was taken, as are level, x and y
	 * @param putXMetres where it was put; NaN where it got no place, as is y
	 * @param found      site and floor that it was put on, in words
	 */
	public record Placed(SampleKey sample, String site, int level, double xMetres, double yMetres, double putXMetres,
			double putYMetres,
			Landing landing, String found) {

		/** In the plane; NaN where it got no place. */
		public double errorMetres() {
			return Math.hypot(putXMetres - xMetres, putYMetres - yMetres);
		}

		/** Whether on the right floor of the right site. */
		public boolean isRight() {
			return landing == Landing.RIGHT_FLOOR;
		}
	}

	/** @param ways measured on the test samples of that map, plain first */
	public static SideBySide of(ArchiveMap test, List<Way> ways) {
		List<SampleKey> keys = IntStream.range(0, test.map().size()).mapToObj(test::key).toList();
		return new SideBySide(test.map(), keys, List.copyOf(ways));
	}

	/** By site and level. */
	public List<OnFloor> floors() {
		Map<String, Map<Integer, List<Integer>>> rows = new TreeMap<>();
		for (int s = 0; s < test.size(); s++) {
			rows.computeIfAbsent(test.sites().get(test.site(s)), site -> new TreeMap<>()).computeIfAbsent(test.floor(s),
					level -> new ArrayList<>()).add(s);
		}
		List<OnFloor> floors = new ArrayList<>();
		rows.forEach((site, levels) -> levels.forEach(
				(level, samples) -> floors.add(new OnFloor(site, level, samples.size(), figures(samples)))));
		return floors;
	}

	/** By name. */
	public List<OnSite> sites() {
		Map<String, List<Integer>> rows = new TreeMap<>();
		for (int s = 0; s < test.size(); s++) {
			rows.computeIfAbsent(test.sites().get(test.site(s)), site -> new ArrayList<>()).add(s);
		}
		return rows.entrySet().stream()
				.map(row -> new OnSite(row.getKey(), row.getValue().size(), figures(row.getValue()))).toList();
	}

	private List<Figures> figures(List<Integer> samples) {
		return ways.stream().map(way -> {
			List<Placed> placed = samples.stream().map(s -> placed(way, s)).toList();
			double[] errors = placed.stream().mapToDouble(Placed::errorMetres).filter(e -> !Double.isNaN(e)).toArray();
			return new Figures(Arrays.stream(errors).average().orElse(Double.NaN),
					errors.length == 0 ? Double.NaN : Percentile.of(errors, 95),
					(double) placed.stream().filter(Placed::isRight).count() / samples.size());
		}).toList();
	}

	/** The samples that a way puts farthest from where they were taken, those without a place first. */
	public List<Placed> worst(Way way, int most) {
		return IntStream.range(0, test.size()).mapToObj(s -> placed(way, s))
				.sorted(Comparator.comparingDouble(
						(Placed p) -> Double.isNaN(p.errorMetres()) ? Double.NEGATIVE_INFINITY : -p.errorMetres())
						.thenComparing(Placed::sample))
				.limit(most).toList();
	}

	/** @param s number of the test sample */
	Placed placed(Way way, int s) {
		Estimates found = way.run().estimates();
		String site = test.sites().get(test.site(s));
		boolean nowhere = Double.isNaN(found.x(s));
		String where = nowhere ? "" : way.run().sites().get(found.site(s));
		Landing landing = nowhere ? Landing.NOWHERE
				: !where.equals(site) ? Landing.OTHER_SITE
						: found.floor(s) == test.floor(s) ? Landing.RIGHT_FLOOR : Landing.OTHER_FLOOR;
		return new Placed(keys.get(s), site, test.floor(s), test.x(s), test.y(s), found.x(s), found.y(s), landing,
				nowhere ? "nowhere" : Words.bind(Messages.SideBySide_floor, where, found.floor(s)));
	}
}
