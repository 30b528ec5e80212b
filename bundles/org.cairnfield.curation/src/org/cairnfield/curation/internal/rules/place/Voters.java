package org.cairnfield.curation.internal.rules.place;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.internal.rules.evidence.Sequence;
import org.cairnfield.curation.internal.rules.evidence.SignalNeighbours;
import org.cairnfield.curation.internal.rules.evidence.Spots;

/**
 * The spots that have a say on where a sample is: those nearest in signal space, without spots that are themselves
 * under suspicion.
 */
final class Voters {

	private final RuleInput input;
	private final Spots spots;
	private final Sequence sequence;
	private final SignalNeighbours neighbours;
	private boolean[] suspectSpot;

	Voters(RuleInput input, Workers workers) {
		this.input = input;
		spots = Spots.of(input);
		sequence = Sequence.of(input);
		neighbours = SignalNeighbours.of(input, workers);
		suspectSpot = new boolean[spots.size()];
	}

	/** From now on spots with a marked sample have no say. */
	void suspect(boolean[] samples) {
		suspectSpot = new boolean[spots.size()];
		for (int s = 0; s < samples.length; s++) {
			suspectSpot[spots.spotOf(s)] |= samples[s];
		}
	}

	boolean isSuspect(int spot) {
		return suspectSpot[spot];
	}

	RadioMap spotMap() {
		return spots.map();
	}

	Sequence sequence() {
		return sequence;
	}

	/** The nearest voters of a sample, nearest first; as many as there are, at most {@code out.length}. */
	int of(int sample, int[] out) {
		return collect(sample, out, false);
	}

	/** Those of other surveys alone where there are enough, for a whole survey may be wrong in the same way. */
	int ofOthersFirst(int sample, int[] out, int enough) {
		int count = collect(sample, out, true);
		return count >= enough ? count : collect(sample, out, false);
	}

	private int collect(int sample, int[] out, boolean othersOnly) {
		int own = input.map().survey(sample);
		int count = 0;
		for (int i = 0; i < SignalNeighbours.KEPT && count < out.length; i++) {
			int spot = neighbours.spot(sample, i);
			if (spot >= 0 && !suspectSpot[spot] && !(othersOnly && spots.surveyOf(spot) == own)) {
				out[count++] = spot;
			}
		}
		return count;
	}

	/** How near to its own noted place the nearest of all its neighbours in signal space is, in metres. */
	double nearestMetres(int sample) {
		double nearest = Double.POSITIVE_INFINITY;
		for (int i = 0; i < SignalNeighbours.KEPT; i++) {
			int spot = neighbours.spot(sample, i);
			if (spot >= 0 && !suspectSpot[spot]) {
				nearest = Math.min(nearest, spots.map().metresApart(spots.spotOf(sample), spot));
			}
		}
		return nearest;
	}

	/** The median over voters of how far they are from a place, in metres; whatever their floor. */
	double medianMetres(double x, double y, int[] voters, int count, double[] scratch) {
		for (int i = 0; i < count; i++) {
			scratch[i] = Math.hypot(spots.map().x(voters[i]) - x, spots.map().y(voters[i]) - y);
		}
		return Median.ofFirst(scratch, count);
	}
}
