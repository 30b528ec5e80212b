package org.cairnfield.curation.timeline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.core.change.AccessPointFate;
import org.cairnfield.core.change.Fate;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.text.Words;

/**
 * All access points of a site over its surveys, those that changed first.
 *
 * @param surveys ids, in the order of the timeline
 * @param rows    grouped by course, within a group by address
 */
public record TimelineTable(List<String> surveys, List<AccessPointCourse> rows) {

	private static final double PLACE_METRES = 3;

	public TimelineTable {
		surveys = List.copyOf(surveys);
		rows = List.copyOf(rows);
	}

	/**
	 * The table that goes with a timeline; takes time by the number of readings.
	 *
	 * @param surveyed that the timeline was made of
	 */
	static TimelineTable of(SurveyMaps surveyed, Timeline timeline) {
		Map<String, RadioMap> maps = surveyed.byId();
		List<String> surveys = timeline.steps().stream().map(TimelineStep::survey).toList();
		SortedMap<String, Heard> heard = new TreeMap<>();
		List<Map<List<Long>, Integer>> visited = new ArrayList<>();
		for (int survey = 0; survey < surveys.size(); survey++) {
			visited.add(count(maps.get(surveys.get(survey)), survey, surveys.size(), heard));
		}
		List<AccessPointCourse> rows = new ArrayList<>();
		heard.forEach((address, one) -> rows.add(one.course(address, visited, timeline)));
		rows.sort(Comparator.comparing(AccessPointCourse::course).thenComparing(AccessPointCourse::address));
		return new TimelineTable(surveys, rows);
	}

	private static Map<List<Long>, Integer> count(RadioMap map, int survey, int surveys,
			SortedMap<String, Heard> heard) {
		Map<List<Long>, Integer> visited = new HashMap<>();
		for (int s = 0; s < map.size(); s++) {
			List<Long> place = List.of((long) map.floor(s), (long) Math.floor(map.x(s) / PLACE_METRES),
					(long) Math.floor(map.y(s) / PLACE_METRES));
			visited.merge(place, 1, Integer::sum);
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				heard.computeIfAbsent(map.accessPoints().get(map.accessPoint(k)), address -> new Heard(surveys))
						.add(survey, place, map.rssiDbm(k));
			}
		}
		return visited;
	}

	/** Where and how strongly one access point was heard. */
	private static final class Heard {
		/** By place: which surveys heard it there. */
		private final Map<List<Long>, boolean[]> places = new HashMap<>();
		private final List<List<Integer>> levels = new ArrayList<>();

		Heard(int surveys) {
			for (int survey = 0; survey < surveys; survey++) {
				levels.add(new ArrayList<>());
			}
		}

		void add(int survey, List<Long> place, int dbm) {
			places.computeIfAbsent(place, there -> new boolean[levels.size()])[survey] = true;
			levels.get(survey).add(dbm);
		}

		AccessPointCourse course(String address, List<Map<List<Long>, Integer>> visited, Timeline timeline) {
			List<Double> shares = new ArrayList<>();
			List<Double> medians = new ArrayList<>();
			for (int survey = 0; survey < levels.size(); survey++) {
				int there = 0;
				int here = 0;
				for (Map.Entry<List<Long>, boolean[]> place : places.entrySet()) {
					there += visited.get(survey).containsKey(place.getKey()) ? 1 : 0;
					here += place.getValue()[survey] ? 1 : 0;
				}
				shares.add(there == 0 ? Double.NaN : (double) here / there);
				medians.add(levels.get(survey).isEmpty() ? Double.NaN
						: Median.of(levels.get(survey).stream().mapToDouble(Integer::doubleValue).toArray()));
			}
			return course(address, shares, medians, timeline);
		}

		private static AccessPointCourse course(String address, List<Double> shares, List<Double> medians,
				Timeline timeline) {
			String remark = "";
			boolean moved = false;
			boolean replaced = false;
			boolean gone = false;
			for (TimelineStep step : timeline.steps()) {
				AccessPointFate fate = step.change() == null ? null : step.change().of(address);
				if (fate != null && fate.fate() == Fate.MOVED) {
					moved = true;
					remark = Words.bind(Messages.TimelineTable_movedBy, step.date());
				} else if (fate != null && (fate.fate() == Fate.REPLACED || fate.fate() == Fate.VANISHED)) {
					gone = true;
					replaced = fate.fate() == Fate.REPLACED;
					remark = replaced
							? Words.bind(Messages.TimelineTable_replacedByBy, fate.successor(), step.date())
							: Words.bind(Messages.TimelineTable_goneBy, step.date());
				} else if (fate != null && fate.fate() == Fate.APPEARED) {
					remark = Words.bind(Messages.TimelineTable_newBy, step.date());
				}
			}
			boolean[] heard = new boolean[shares.size()];
			for (int survey = 0; survey < heard.length; survey++) {
				heard[survey] = !Double.isNaN(medians.get(survey));
			}
			boolean last = heard[heard.length - 1];
			return new AccessPointCourse(address,
					replaced && !last ? Course.REPLACED
							: gone && !last ? Course.VANISHED
									: moved ? Course.MOVED
											: hasHole(heard) ? Course.FLICKERING
													: !heard[0] && last ? Course.APPEARED
															: heard[0] && last ? Course.STEADY : Course.FLICKERING,
					shares,
					medians, remark);
		}

		/** Heard, then not, then heard again. */
		private static boolean hasHole(boolean[] heard) {
			int changes = 0;
			for (int survey = 1; survey < heard.length; survey++) {
				changes += heard[survey] != heard[survey - 1] ? 1 : 0;
			}
			return changes > 1;
		}
	}

	/** Where each course begins among the rows, for headings. */
	public List<Integer> firstRows() {
		List<Integer> first = new ArrayList<>();
		for (int row = 0; row < rows.size(); row++) {
			if (row == 0 || rows.get(row).course() != rows.get(row - 1).course()) {
				first.add(row);
			}
		}
		return Collections.unmodifiableList(first);
	}
}
