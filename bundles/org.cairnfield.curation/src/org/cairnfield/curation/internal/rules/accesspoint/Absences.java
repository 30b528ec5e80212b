package org.cairnfield.curation.internal.rules.accesspoint;

import static org.cairnfield.curation.rules.Reason.judged;

import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.health.PlaceIndex;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.internal.rules.evidence.Sequence;
import org.cairnfield.curation.internal.rules.evidence.Spots;

/**
 * Where one access point was heard well, did those next to that place, in the same survey, hear it at all? One that
 * hangs still is heard by nearly all of them whenever they come; one that is carried about is gone when they do.
 */
final class Absences {

	private static final Threshold AROUND = new Threshold(Messages.Absences_neighboursOfAPlaceThat, 12,
			judged(Messages.Absences_twoRingsOfAGrid));

	/** The numbers that it goes by. */
	static final List<Threshold> THRESHOLDS = List.of(AROUND);
	private static final int BINS = 80;

	/** Of those asked, how many heard it, by bins of how many samples before or after they were recorded. */
	private final int[][] heardAfter;
	private final int[][] missedAfter;

	/**
	 * @param wellDbm a level from which the neighbours should hear it too
	 * @param metres  how near they must be
	 */
	Absences(RuleInput input, double wellDbm, double metres) {
		Spots spots = Spots.of(input);
		RadioMap map = spots.map();
		PlaceIndex places = new PlaceIndex(map);
		heardAfter = new int[map.accessPointCount()][BINS];
		missedAfter = new int[map.accessPointCount()][BINS];
		Sequence sequence = Sequence.of(input);
		int[] around = new int[AROUND.count()];
		for (int spot = 0; spot < spots.size(); spot++) {
			int count = places.nearest(spot, around);
			for (int i = 0; i < count; i++) {
				int other = around[i];
				if (spots.surveyOf(other) == spots.surveyOf(spot) && spots.deviceOf(other) == spots.deviceOf(spot)
						&& map.heard(other) > 0 && map.metresApart(spot, other) <= metres) {
					int steps = Math.abs(sequence.placeInTrack(spots.members(spot)[0])
							- sequence.placeInTrack(spots.members(other)[0]));
					ask(map, spot, other, wellDbm, steps);
				}
			}
		}
	}

	private void ask(RadioMap map, int spot, int other, double wellDbm, int steps) {
		for (int k = map.firstReading(spot); k < map.endReading(spot); k++) {
			if (map.rssiDbm(k) >= wellDbm) {
				boolean missed = map.rssiDbm(other, map.accessPoint(k), 1) == 1;
				(missed ? missedAfter : heardAfter)[map.accessPoint(k)][bin(steps)]++;
			}
		}
	}

	/** Each to themselves up to 8 steps, then 4 to every doubling. */
	private static int bin(int steps) {
		return steps < 8 ? steps : Math.min(BINS - 1, 8 + (int) (4 * Math.log(steps / 8.0) / Math.log(2)));
	}

	/** How often a neighbour was asked. */
	int asked(int accessPoint) {
		return Arrays.stream(heardAfter[accessPoint]).sum() + missed(accessPoint);
	}

	/** How often it had not heard it. */
	int missed(int accessPoint) {
		return Arrays.stream(missedAfter[accessPoint]).sum();
	}

	/**
	 * How likely one that missed it was recorded longer before or after than one that heard it, ties counting half
	 * (Mann and Whitney's U as a share): a half for a sender that is merely heard badly, more for one that went away.
	 * NaN where none or all missed it.
	 */
	double wentAway(int accessPoint) {
		double later = 0;
		long heardSooner = 0;
		for (int bin = 0; bin < BINS; bin++) {
			int heard = heardAfter[accessPoint][bin];
			later += missedAfter[accessPoint][bin] * (heardSooner + heard / 2.0);
			heardSooner += heard;
		}
		return later / ((double) heardSooner * missed(accessPoint));
	}
}
