package org.cairnfield.curation.rules.accesspoint;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.evidence.Doubles;
import org.cairnfield.curation.rules.evidence.Epochs;
import org.cairnfield.curation.rules.evidence.Ints;
import org.cairnfield.curation.rules.evidence.PlacePairs;
import org.cairnfield.curation.rules.evidence.Robust;
import org.cairnfield.curation.rules.evidence.Spots;

/**
 * Places that were surveyed in both of two epochs, and what was heard there then and now. What one device reads above
 * another is taken out, by the middle difference over all access points at those places.
 */
final class SeasonPair {

	/** What stands for a level that was too weak to be heard. */
	static final double UNHEARD_DBM = -92;
	static final double WELL_DBM = -75;
	private static final double METRES = 2.5;
	private static final int FEWEST_DIFFERENCES = 30;

	private final Spots spots;
	private final Epochs epochs;
	private final int before;
	private final int[] then;
	private final int[] now;
	private final Map<Integer, Double> shiftDb = new HashMap<>();

	/** @param later index of the later epoch; compared with the one before it */
	SeasonPair(RuleInput input, int later) {
		spots = Spots.of(input);
		epochs = Epochs.of(input);
		before = later - 1;
		PlacePairs pairs = new PlacePairs(input, METRES);
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
				if (level != 1 && (level + map.rssiDbm(k)) / 2.0 >= WELL_DBM) {
					all.add(level - map.rssiDbm(k));
				}
			}
		}
		differences.forEach((d, all) -> shiftDb.put(d,
				all.size() < FEWEST_DIFFERENCES ? 0 : Robust.median(all.toArray())));
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
		return Math.max(UNHEARD_DBM, spots.map().rssiDbm(then[pair], accessPoint, (int) UNHEARD_DBM));
	}

	/** The level now as the device of then would have read it, in dBm, or {@link #UNHEARD_DBM}. */
	double levelNow(int pair, int accessPoint) {
		int level = spots.map().rssiDbm(now[pair], accessPoint, 1);
		return level == 1 ? UNHEARD_DBM : Math.max(UNHEARD_DBM, level - shiftDb.get(devices(pair)));
	}

	/** Whether it read the same at all these places then, or at all of them now: no wonder that they differ. */
	boolean isStuck(int accessPoint) {
		return isOneLevel(then, accessPoint) || isOneLevel(now, accessPoint);
	}

	private boolean isOneLevel(int[] at, int accessPoint) {
		return Arrays.stream(at).map(spot -> spots.map().rssiDbm(spot, accessPoint, 1)).filter(level -> level != 1)
				.distinct().count() == 1;
	}

	/** How many spots of an epoch heard an access point at that level or more. */
	int heardThen(int accessPoint, double leastDbm) {
		return heard(accessPoint, leastDbm, before);
	}

	int heardNow(int accessPoint, double leastDbm) {
		return heard(accessPoint, leastDbm, before + 1);
	}

	private int heard(int accessPoint, double leastDbm, int epoch) {
		int count = 0;
		for (int s = 0; s < spots.size(); s++) {
			if (epoch(s) == epoch && spots.map().rssiDbm(s, accessPoint, Integer.MIN_VALUE) >= leastDbm) {
				count++;
			}
		}
		return count;
	}
}
