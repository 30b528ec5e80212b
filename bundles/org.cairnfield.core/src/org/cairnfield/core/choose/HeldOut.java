package org.cairnfield.core.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Workers;

/** Part of the training samples as a map, blocks of the rest as questions with known answers. */
final class HeldOut {

	private static final double SHARE = 0.2;
	private static final int MOST_QUESTIONS = 2000;

	final Signals signals;
	private final RadioMap questions;
	private final SignalRows queries;
	private double[] curve;

	private HeldOut(Signals signals, RadioMap questions) {
		this.signals = signals;
		this.questions = questions;
		queries = signals.align(questions);
	}

	/**
	 * Some blocks held out.
	 *
	 * @param whole  the training samples, in the representation and distance to be used
	 * @param blocks of these
	 * @param number of the hold-out, from 0; each has other blocks
	 */
	static HeldOut of(Signals whole, PositionBlocks blocks, int number, long seed) {
		boolean[] out = blocks.holdOut(SHARE, seed + number);
		RadioMap map = whole.map();
		RadioMap kept = map.where(s -> !out[s]);
		RadioMap asked = map.where(s -> out[s]);
		if (kept.size() == 0) {
			kept = asked; // a single place: nothing can be held out
		}
		return new HeldOut(Signals.ofPart(kept, whole.representation(), whole.distance(), whole.lowestRssiDbm()), thinned(asked, seed));
	}

	private static RadioMap thinned(RadioMap asked, long seed) {
		if (asked.size() <= MOST_QUESTIONS) {
			return asked;
		}
		SplittableRandom random = new SplittableRandom(seed);
		List<Integer> chosen = new ArrayList<>();
		for (int s = 0; s < asked.size(); s++) {
			int left = asked.size() - s;
			if (random.nextInt(left) < MOST_QUESTIONS - chosen.size()) {
				chosen.add(s);
			}
		}
		return asked.view(chosen.stream().mapToInt(Integer::intValue).toArray());
	}

	/** k-distances of the map, ascending; always with the same k. */
	double[] curve(int k, Workers workers) {
		if (curve == null) {
			curve = KDistances.of(signals, workers, k).sorted(k);
		}
		return curve;
	}

	/** How many samples are asked about. */
	int questions() {
		return questions.size();
	}

	/** Mean plane error in metres and mean comparisons as a share of the map, for each voting from one search. */
	List<Score> scores(Matcher matcher, List<Voting> votings, Workers workers) {
		List<Score> scores = new ArrayList<>();
		for (Estimates e : Estimates.of(matcher, votings, queries, workers)) {
			double sum = 0;
			for (int q = 0; q < e.size(); q++) {
				sum += Math.hypot(e.x(q) - questions.x(q), e.y(q) - questions.y(q));
			}
			scores.add(new Score(e.size() == 0 ? 0 : sum / e.size(),
					e.meanComparisons() / Math.max(1, signals.size())));
		}
		return scores;
	}

	record Score(double meanErrorMetres, double comparisonShare) {
	}
}
