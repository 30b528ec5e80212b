package org.cairnfield.curation.internal.rules.place;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.standard;

import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.health.PlaceIndex;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.internal.rules.evidence.Spots;

/**
 * How much less a sample is like the spots around the place where it is noted than like its neighbours in signal
 * space. Another survey or device at the very place is a witness for it. Compared is what remains after taking out the middle difference of level, so that a weak device alone makes
 * nobody unlike. Spots under suspicion are left out. Not for several threads at once.
 */
final class Unlikeness {

	private static final Threshold LOOKED_AT = new Threshold(Messages.Unlikeness_spotsAroundAPlaceThat, 16,
			judged(Messages.Unlikeness_enoughToFindFiveOf));
	private static final Threshold AROUND = new Threshold(Messages.Unlikeness_spotsAroundAPlaceThat2, 5,
			judged(Messages.Unlikeness_fewEnoughToBeNear));
	private static final Threshold ALIKE = new Threshold(Messages.Unlikeness_neighboursInSignalSpaceThat, 5,
			judged(Messages.Unlikeness_asManyAsAroundThe));
	private static final Threshold FLOOR_DBM = new Threshold(Messages.Unlikeness_levelAtWhichValuesBegin, -96, "dBm",
			judged(Messages.Unlikeness_aboutTheWeakestThatHandsets));
	private static final Threshold LEAST_DB = new Threshold(Messages.Unlikeness_differenceThatCountsAsNone, 1, "dB",
			standard(Messages.Unlikeness_levelsComeInWholeDb));

	/** The numbers that it goes by. */
	static final List<Threshold> THRESHOLDS = List.of(LOOKED_AT, AROUND, ALIKE, FLOOR_DBM, LEAST_DB);

	private final RuleInput input;
	private final Spots spots;
	private final PlaceIndex places;
	private final Voters voters;
	private final int[] near = new int[LOOKED_AT.count()];
	private final int[] who = new int[ALIKE.count()];
	private double[] shared = new double[64];

	Unlikeness(RuleInput input, Voters voters) {
		this.input = input;
		this.voters = voters;
		spots = Spots.of(input);
		places = new PlaceIndex(spots.map());
	}

	/** A ratio, about 1 where the sample fits its place; 1 too where nothing is around. */
	double of(int sample) {
		int own = spots.spotOf(sample);
		int count = places.nearest(own, near);
		double[] around = new double[AROUND.count()];
		int found = 0;
		double witness = Double.POSITIVE_INFINITY;
		for (int i = 0; i < count && found < AROUND.count(); i++) {
			boolean samePlace = spots.placeOf(near[i]) == spots.placeOf(own);
			if (samePlace && isIndependent(near[i], own)) {
				witness = Math.min(witness, apartDb(sample, near[i]));
			} else if (!samePlace && !voters.isSuspect(near[i])) { // the rest of the very place may be wrong in the same way
				around[found++] = apartDb(sample, near[i]);
			}
		}
		int alike = voters.of(sample, who);
		double[] apart = Arrays.stream(who, 0, alike).mapToDouble(spot -> apartDb(sample, spot)).toArray();
		return found == 0 || alike == 0 ? 1
				: Math.min(witness, Median.ofFirst(around, found)) / Math.max(LEAST_DB.value(), Median.of(apart));
	}

	/** Whether somebody else, or the same person another time, noted the same place: not a copy, which shares scans. */
	private boolean isIndependent(int spot, int own) {
		if (spots.surveyOf(spot) == spots.surveyOf(own) && spots.deviceOf(spot) == spots.deviceOf(own)) {
			return false;
		}
		for (int a : spots.members(spot)) {
			for (int b : spots.members(own)) {
				if (input.map().readingsKey(a) == input.map().readingsKey(b)) {
					return false;
				}
			}
		}
		return true;
	}

	/** Mean over all access points that either heard of how far their levels differ, shifted to agree in the middle. */
	private double apartDb(int sample, int spot) {
		double shift = shiftDb(sample, spot);
		RadioMap a = input.map().map();
		RadioMap b = spots.map();
		int i = a.firstReading(sample);
		int j = b.firstReading(spot);
		double sum = 0;
		int either = 0;
		while (i < a.endReading(sample) || j < b.endReading(spot)) {
			int left = i < a.endReading(sample) ? a.accessPoint(i) : Integer.MAX_VALUE;
			int right = j < b.endReading(spot) ? b.accessPoint(j) : Integer.MAX_VALUE;
			double p = left <= right ? Math.max(0, input.map().levelDbm(sample, i) + shift - FLOOR_DBM.count()) : 0;
			double q = right <= left ? Math.max(0, b.rssiDbm(j) - FLOOR_DBM.count()) : 0;
			sum += Math.abs(p - q);
			either++;
			i += left <= right ? 1 : 0;
			j += right <= left ? 1 : 0;
		}
		return either == 0 ? 0 : sum / either;
	}

	private double shiftDb(int sample, int spot) {
		RadioMap a = input.map().map();
		RadioMap b = spots.map();
		int count = 0;
		for (int i = a.firstReading(sample); i < a.endReading(sample); i++) {
			int level = b.rssiDbm(spot, a.accessPoint(i), 1);
			if (level != 1) {
				shared = count == shared.length ? Arrays.copyOf(shared, 2 * count) : shared;
				shared[count++] = level - input.map().levelDbm(sample, i);
			}
		}
		return count < 3 ? 0 : Median.ofFirst(shared, count);
	}
}
