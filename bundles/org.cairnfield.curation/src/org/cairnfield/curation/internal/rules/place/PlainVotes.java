package org.cairnfield.curation.internal.rules.place;

import java.util.Arrays;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.internal.rules.evidence.Spots;

/**
 * A second opinion on the floor of a sample: the samples nearest in signal space as they were recorded, where {@link FloorVotes} asks
 * averaged spots, one a place. Where places are few, those reach over half a floor. Samples at the sample's own place, repeats of a
 * scan and spots under suspicion have no say. Not for several threads at once.
 */
final class PlainVotes {

	private final SurveyedMap map;
	private final Spots spots;
	private final Voters voters;
	private final DistanceKernel kernel;
	private final Components components;
	private final double[] row;
	private final int[] nearest = new int[FloorVotes.VOTERS.count()];
	private final double[] distance = new double[FloorVotes.VOTERS.count()];

	PlainVotes(RuleInput input, Voters voters) {
		this.voters = voters;
		map = input.map();
		spots = Spots.of(input);
		Signals signals = Signals.of(map.map());
		kernel = signals.kernel();
		components = signals.components();
		row = new double[components.largest()];
	}

	/** How many of the nearest, {@link FloorVotes#VOTERS} at most, are on a floor. */
	int forFloor(int sample, int floor) {
		RadioMap radio = map.map();
		int component = components.componentOf(sample);
		int n = kernel.row(sample, row);
		int place = spots.placeOf(spots.spotOf(sample));
		int count = 0;
		for (int i = 0; i < n; i++) {
			int other = components.member(component, i);
			int spot = spots.spotOf(other);
			if ((count < nearest.length || row[i] < distance[count - 1]) && spots.placeOf(spot) != place
					&& !voters.isSuspect(spot)
					&& !isRepeat(other, count)) {
				count = insert(other, row[i], count);
			}
		}
		return (int) Arrays.stream(nearest, 0, count).filter(s -> radio.floor(s) == floor).count();
	}

	/** Whether one that is in already was taken at the same place with the same readings. */
	private boolean isRepeat(int sample, int count) {
		for (int i = 0; i < count; i++) {
			if (map.readingsKey(nearest[i]) == map.readingsKey(sample)
					&& map.map().floor(nearest[i]) == map.map().floor(sample)) {
				return true;
			}
		}
		return false;
	}

	private int insert(int sample, double apart, int count) {
		int size = Math.min(count + 1, nearest.length);
		int at = size - 1;
		while (at > 0 && distance[at - 1] > apart) {
			distance[at] = distance[at - 1];
			nearest[at] = nearest[at - 1];
			at--;
		}
		distance[at] = apart;
		nearest[at] = sample;
		return size;
	}
}
