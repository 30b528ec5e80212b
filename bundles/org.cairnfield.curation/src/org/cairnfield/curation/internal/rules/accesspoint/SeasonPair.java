package org.cairnfield.curation.internal.rules.accesspoint;

import static org.cairnfield.curation.rules.Reason.judged;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.internal.rules.evidence.Doubles;
import org.cairnfield.curation.internal.rules.evidence.Epochs;
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.curation.internal.rules.evidence.PlacePairs;
import org.cairnfield.curation.internal.rules.evidence.Spots;

/**
 * Places that were surveyed in both of two epochs, and what was heard there then and now. What one device reads above
 * another is taken out, by the middle difference over all access points at those places.
 */
final class SeasonPair {

	static final Threshold UNHEARD_DBM = new Threshold("level that stands for not heard", -92, "dBm",
			judged("about the weakest that handsets report"));
	static final Threshold WELL_DBM = new Threshold("level from which a change counts", -75, "dBm",
			judged("well above what is cut off, so that what is no longer heard hides little"));
	private static final Threshold METRES = new Threshold("taken for the same place", 2.5, "m",
			judged("about the distance between places of a survey"));
	private static final Threshold FEWEST_DIFFERENCES = new Threshold("readings from which devices are levelled", 30,
			judged("a middle of fewer moves too much"));

	/** The numbers that it goes by. */
	static final List<Threshold> THRESHOLDS = Threshold.all(List.of(WELL_DBM, UNHEARD_DBM, METRES, FEWEST_DIFFERENCES),
			PlacePairs.THRESHOLDS, Epochs.THRESHOLDS);

	private final Spots spots;
	private final Epochs epochs;
	private final int before;
	private final int[] then;
	private final int[] now;
	private final Map<Integer, Double> shiftDb = new HashMap<>();
	/** Spots of either epoch that heard an access point. */
	private final int[][] heard;
	private final int[][] heardWell;

	/** @param later index of the later epoch; compared with the one before it */
	static SeasonPair of(RuleInput input, int later) {
		return input.shared(Known.class, Known::new).pairs.computeIfAbsent(later, l -> new SeasonPair(input, l));
	}

	/** Those made so far, for all rules that compare seasons. */
	private static final class Known {
		private final Map<Integer, SeasonPair> pairs = new ConcurrentHashMap<>();
	}

	private SeasonPair(RuleInput input, int later) {
		spots = Spots.of(input);
		epochs = Epochs.of(input);
		before = later - 1;
		PlacePairs pairs = new PlacePairs(input, METRES.value());
		Ints first = new Ints();
		Ints second = new Ints();
		for (int s = 0; s < spots.size(); s++) {
			if (epoch(s) == later && spots.map().heard(s) > 0) {
				int other = pairs.nearest(s, o -> epoch(o) == before && spots.map().heard(o) > 0);
				if (other >= 0) {
					first.add(other);
					second.add(s);
				}
			}
		}
		then = first.toArray();
		now = second.toArray();
		shift();
		int n = spots.map().accessPointCount();
		heard = new int[2][n];
		heardWell = new int[2][n];
		for (int s = 0; s < spots.size(); s++) {
			int season = epoch(s) - before;
			for (int k = spots.map().firstReading(s); k < spots.map().endReading(s) && (season == 0 || season == 1); k++) {
				heard[season][spots.map().accessPoint(k)]++;
				heardWell[season][spots.map().accessPoint(k)] += spots.map().rssiDbm(k) >= WELL_DBM.value() ? 1 : 0;
			}
		}
	}

	private int epoch(int spot) {
		return epochs.ofSurvey(spots.surveyOf(spot));
	}

	private int devices(int pair) {
		return (spots.deviceOf(then[pair]) + 1) * 65_536 + spots.deviceOf(now[pair]) + 1;
	}

	/** Of levels whose mean is strong: cutting off what is weak on one side only would shift the middle. */
	private void shift() {
		Map<Integer, Doubles> differences = new HashMap<>();
		RadioMap map = spots.map();
		for (int p = 0; p < then.length; p++) {
			Doubles all = differences.computeIfAbsent(devices(p), d -> new Doubles());
			for (int k = map.firstReading(then[p]); k < map.endReading(then[p]); k++) {
				int level = map.rssiDbm(now[p], map.accessPoint(k), 1);
				if (level != 1 && (level + map.rssiDbm(k)) / 2.0 >= WELL_DBM.value()) {
					all.add(level - map.rssiDbm(k));
				}
			}
		}
		differences.forEach((d, all) -> shiftDb.put(d,
				all.size() < FEWEST_DIFFERENCES.count() ? 0 : Median.of(all.toArray())));
	}

	/** How many places were surveyed both times. */
	int size() {
		return then.length;
	}

	/** The spot of the earlier epoch at a place. */
	int spotThen(int pair) {
		return then[pair];
	}

	int spotNow(int pair) {
		return now[pair];
	}

	/** The level then, in dBm, or {@link #UNHEARD_DBM}. */
	double levelThen(int pair, int accessPoint) {
		return Math.max(UNHEARD_DBM.value(), spots.map().rssiDbm(then[pair], accessPoint, (int) UNHEARD_DBM.value()));
	}

	/** The level now as the device of then would have read it, in dBm, or {@link #UNHEARD_DBM}. */
	double levelNow(int pair, int accessPoint) {
		int level = spots.map().rssiDbm(now[pair], accessPoint, 1);
		return level == 1 ? UNHEARD_DBM.value() : Math.max(UNHEARD_DBM.value(), level - shiftDb.get(devices(pair)));
	}

	/** Whether it read the same at all these places then, or at all of them now: no wonder that they differ. */
	boolean isStuck(int accessPoint) {
		return isOneLevel(then, accessPoint) || isOneLevel(now, accessPoint);
	}

	private boolean isOneLevel(int[] at, int accessPoint) {
		return Arrays.stream(at).map(spot -> spots.map().rssiDbm(spot, accessPoint, 1)).filter(level -> level != 1)
				.distinct().count() == 1;
	}

	/** Whether at least so many spots of both epochs heard an access point well. */
	boolean isHeardWellInBoth(int accessPoint, int spotCount) {
		return heardWell[0][accessPoint] >= spotCount && heardWell[1][accessPoint] >= spotCount;
	}

	/** Whether any spot of the earlier epoch heard it. */
	boolean wasHeardThen(int accessPoint) {
		return heard[0][accessPoint] > 0;
	}

	boolean isHeardNow(int accessPoint) {
		return heard[1][accessPoint] > 0;
	}

	/**
	 * Absolute changes of level, by access point, at places where it was strong at one of the two times.
	 */
	double[][] changes() {
		Doubles[] changes = new Doubles[spots.map().accessPointCount()];
		Arrays.setAll(changes, a -> new Doubles());
		for (int p = 0; p < then.length; p++) {
			int pair = p;
			heardAt(p).forEach(a -> {
				double before = levelThen(pair, a);
				double after = levelNow(pair, a);
				if (Math.max(before, after) >= WELL_DBM.value()) {
					changes[a].add(Math.abs(before - after));
				}
			});
		}
		return Arrays.stream(changes).map(Doubles::toArray).toArray(double[][]::new);
	}

	/** At how many places an access point reached a level then, or now. */
	int[] places(boolean wasThen, double leastDbm) {
		int[] places = new int[spots.map().accessPointCount()];
		for (int p = 0; p < then.length; p++) {
			int pair = p;
			heardAt(p).filter(a -> (wasThen ? levelThen(pair, a) : levelNow(pair, a)) >= leastDbm).forEach(a -> places[a]++);
		}
		return places;
	}

	/** Access points heard at a place at one of the two times. */
	private IntStream heardAt(int pair) {
		RadioMap map = spots.map();
		return IntStream.of(then[pair], now[pair])
				.flatMap(s -> IntStream.range(map.firstReading(s), map.endReading(s)).map(map::accessPoint)).distinct();
	}
}
