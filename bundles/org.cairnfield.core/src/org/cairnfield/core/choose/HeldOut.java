package org.cairnfield.core.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
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

	private HeldOut(Signals signals, RadioMap questions) {
		this.signals = signals;
		this.questions = questions;
		queries = signals.align(questions);
	}

	/**
	 * Several hold-outs of different blocks.
	 *
	 * @param whole the training samples, in the representation and distance to be used
	 */
	static List<HeldOut> of(Signals whole, int count, long seed) {
		PositionBlocks blocks = PositionBlocks.of(whole.map());
		List<HeldOut> heldOut = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			heldOut.add(of(whole, blocks.holdOut(SHARE, seed + i), seed));
		}
		return heldOut;
	}

	private static HeldOut of(Signals whole, boolean[] out, long seed) {
		RadioMap map = whole.map();
		RadioMap kept = map.where(s -> !out[s]);
		RadioMap asked = map.where(s -> out[s]);
		if (kept.size() == 0) {
			kept = asked; // a single place: nothing can be held out
		}
		return new HeldOut(Signals.of(kept, whole.representation(), whole.distance()), thinned(asked, seed));
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
