package org.cairnfield.curation.timeline;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cairnfield.core.change.AccessPointFate;
import org.cairnfield.core.change.Fate;
import org.cairnfield.core.change.ChangeLimits;
import org.cairnfield.core.change.SiteChange;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.core.health.PlaceIndex;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Nearest;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.rules.FloorPlan;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Scope;

/**
 * What a new sample would tell at each place of a site: where the map is old, where access points that it rests on are gone, where
 * it contradicts its neighbours, where it has no sample at all. The weights are a judgement, not a measurement.
 */
final class PlaceWorth {

	private static final double CELL_METRES = 3;
	private static final double GAP_METRES = 6;
	/** An error or a gap of so many metres and more counts in full. */
	private static final double FULL_METRES = 15;
	private static final double GONE_WEIGHT = 2;
	private static final double LEAST_YEAR_DAYS = 365;

	private record Cell(int floor, long column, long row) {
	}

	private final SurveyedMap surveyed;
	private final RadioMap map;
	private final Set<String> gone;
	private final Optional<LocalDate> newest;
	private final Workers workers;

	PlaceWorth(Archive archive, Site site, Workers workers) {
		this.workers = workers;
		surveyed = ArchiveMap.recorded(archive, Scope.site(site.getId()), ArchiveMap::isOfTheMap).surveyed();
		map = surveyed.map();
		newest = surveyed.surveys().stream().flatMap(survey -> survey.date().stream()).max(Comparator.naturalOrder());
		gone = gone(archive);
	}

	/** What somebody has set aside, and what the newest survey no longer hears. */
	private Set<String> gone(Archive archive) {
		Set<String> addresses = new HashSet<>();
		archive.getAccessPoints().stream().filter(each -> !each.isKept() || each.getCountsAs() != null)
				.map(ModelText::address)
				.forEach(addresses::add);
		RadioMap now = map.where(s -> newest.isPresent() && date(s).equals(newest));
		RadioMap then = map.where(s -> newest.isPresent() && !date(s).equals(newest));
		if (now.size() > 0 && then.size() > 0) {
			SiteChange.between(then, now, ChangeLimits.SAME_PLACE_METRES).with(Fate.VANISHED, Fate.REPLACED).stream()
					.map(AccessPointFate::address)
					.forEach(addresses::add);
		}
		return addresses;
	}

	private Optional<LocalDate> date(int sample) {
		return surveyed.surveys().get(surveyed.survey(sample)).date();
	}

	List<NextPlace> places() {
		Map<Cell, List<Integer>> cells = new LinkedHashMap<>();
		for (int s = 0; s < map.size(); s++) {
			cells.computeIfAbsent(cell(map.floor(s), map.x(s), map.y(s)), cell -> new ArrayList<>()).add(s);
		}
		List<NextPlace> places = new ArrayList<>();
		List<List<Integer>> latest = cells.values().stream().map(this::latest).toList();
		int[] middle = latest.stream().mapToInt(samples -> samples.get(samples.size() / 2)).toArray();
		double[] errors = errors(middle);
		for (int p = 0; p < middle.length; p++) {
			places.add(sampled(latest.get(p), middle[p], errors[p]));
		}
		places.addAll(gaps(cells));
		return places;
	}

	private static Cell cell(int floor, double x, double y) {
		return new Cell(floor, (long) Math.floor(x / CELL_METRES), (long) Math.floor(y / CELL_METRES));
	}

	/** Of the samples of a place those of the last survey there; all where none has a date. */
	private List<Integer> latest(List<Integer> samples) {
		Optional<LocalDate> last = samples.stream().flatMap(s -> date(s).stream()).max(Comparator.naturalOrder());
		return samples.stream().filter(s -> date(s).equals(last)).toList();
	}

	private NextPlace sampled(List<Integer> samples, int one, double error) {
		long days = date(one).map(day -> ChronoUnit.DAYS.between(day, newest.get())).orElse(-1L);
		double goneShare = goneShare(samples);
		double worth = GONE_WEIGHT * goneShare + Math.max(0, days) / Math.max(LEAST_YEAR_DAYS, span())
				+ (Double.isNaN(error) ? 0 : Math.min(1, error / FULL_METRES));
		return new NextPlace(map.floor(one), map.x(one), map.y(one), days, goneShare, error, 0, worth);
	}

	private double span() {
		Optional<LocalDate> oldest = surveyed.surveys().stream().flatMap(survey -> survey.date().stream())
				.min(Comparator.naturalOrder());
		return oldest.map(day -> ChronoUnit.DAYS.between(day, newest.get())).orElse(0L);
	}

	private double goneShare(List<Integer> samples) {
		Map<Integer, Integer> heard = new HashMap<>();
		for (int s : samples) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				heard.merge(map.accessPoint(k), 1, Integer::sum);
			}
		}
		heard.values().removeIf(count -> 2 * count < samples.size());
		long lost = heard.keySet().stream().filter(each -> gone.contains(map.accessPoints().get(each))).count();
		return heard.isEmpty() ? 0 : (double) lost / heard.size();
	}

	/** From one sample of each place to the one of another place that it resembles most, beyond the way to the next place. */
	private double[] errors(int[] samples) {
		double[] errors = new double[samples.length];
		if (samples.length > 0) {
			RadioMap one = map.view(samples);
			Neighbours neighbours = new Neighbours(Signals.of(one));
			PlaceIndex places = new PlaceIndex(one);
			workers.forRanges(samples.length, () -> {
				Neighbours.Search search = neighbours.search();
				int[] next = new int[1];
				return (from, to) -> {
					for (int p = from; p < to; p++) {
						Nearest nearest = search.ofSample(p, 1);
						double least = places.nearest(p, next) == 0 ? 0 : one.metresApart(p, next[0]);
						errors[p] = nearest.size() == 0 ? Double.NaN
								: Math.max(0, metres(one, p, nearest.sample(0)) - least);
					}
				};
			});
		}
		return errors;
	}

	private static double metres(RadioMap map, int sample, int other) {
		double metres = Math.hypot(map.x(other) - map.x(sample), map.y(other) - map.y(sample));
		return map.floor(other) == map.floor(sample) ? metres : Math.max(metres, FULL_METRES);
	}

	/** Inside outlines, where no sample is near. */
	private List<NextPlace> gaps(Map<Cell, List<Integer>> cells) {
		List<NextPlace> gaps = new ArrayList<>();
		for (FloorPlan floor : surveyed.floors()) {
			if (map.sites().contains(floor.site()) && floor.outline().isPresent()) {
				Polygon outline = floor.outline().get();
				double[] bounds = outline.bounds();
				for (double y = bounds[1] + GAP_METRES / 2; y < bounds[3]; y += GAP_METRES) {
					for (double x = bounds[0] + GAP_METRES / 2; x < bounds[2]; x += GAP_METRES) {
						double metres = outline.contains(x, y) ? nearest(cells, floor.level(), x, y) : 0;
						if (metres > GAP_METRES) {
							gaps.add(new NextPlace(floor.level(), x, y, -1, 0, Double.NaN, metres,
									GONE_WEIGHT * Math.min(1, metres / FULL_METRES)));
						}
					}
				}
			}
		}
		return gaps;
	}

	/** To the nearest sample of a floor, up to where it counts in full. */
	private double nearest(Map<Cell, List<Integer>> cells, int floor, double x, double y) {
		double least = FULL_METRES;
		Cell middle = cell(floor, x, y);
		long reach = (long) Math.ceil(FULL_METRES / CELL_METRES);
		for (long column = -reach; column <= reach; column++) {
			for (long row = -reach; row <= reach; row++) {
				for (int s : cells.getOrDefault(new Cell(floor, middle.column + column, middle.row + row), List.of())) {
					least = Math.min(least, Math.hypot(map.x(s) - x, map.y(s) - y));
				}
			}
		}
		return least;
	}
}
