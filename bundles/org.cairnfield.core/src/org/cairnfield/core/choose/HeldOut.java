package org.cairnfield.core.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.JointSearch;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Workers;

/** Part of the training samples as a map, blocks of the rest as questions with known answers. */
public final class HeldOut {

	private static final double SHARE = 0.2;
	private static final int MOST_QUESTIONS = 2000;
	/** Small maps are judged on several hold-outs, for they vary more and cost less. */
	private static final int MOST_HOLD_OUTS = 4;
	private static final int SAMPLES_IN_ALL = 12_000;

	final Signals signals;
	private final RadioMap questions;
	private final SignalRows queries;
	private double[] curve;

	private HeldOut(Signals signals, RadioMap questions) {
		this.signals = signals;
		this.questions = questions;
		queries = signals.align(questions);
	}

	/** How many hold-outs a map of so many samples is judged on. */
	static int number(int samples) {
		return Math.max(1, Math.min(MOST_HOLD_OUTS, SAMPLES_IN_ALL / Math.max(1, samples)));
	}

	/**
	 * As many hold-outs as the size of a map asks for, each with other blocks of positions.
	 *
	 * @param whole the training samples, in the representation and distance to be used
	 */
	public static List<HeldOut> several(Signals whole, long seed) {
		PositionBlocks blocks = PositionBlocks.of(whole.map());
		return IntStream.range(0, number(whole.size())).mapToObj(i -> of(whole, blocks, i, seed)).toList();
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
		return new HeldOut(Signals.ofPart(kept, whole.representation(), whole.distance(), whole.lowestRssiDbm()),
				thinned(asked, seed));
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

	/** The samples that are left, as a map. */
	public Signals signals() {
		return signals;
	}

	/** How many samples are asked about. */
	public int questions() {
		return questions.size();
	}

	/** The samples asked about. */
	public RadioMap asked() {
		return questions;
	}

	/** The same questions, or what of them is looked at, asked of other signals of the samples that are left. */
	public HeldOut with(Signals others, RadioMap asked) {
		return new HeldOut(others, asked);
	}

	/**
	 * Mean plane error in metres and mean comparisons as a share of the map, of one matcher.
	 *
	 * @param matcher of {@link #signals}, or of others made of the same samples
	 * @param cells   centroids that it compares, which are no samples
	 */
	public TrialScore score(Matcher matcher, double cells, Workers workers) {
		return score(Estimates.of(matcher, aligned(matcher.signals()), workers), cells);
	}

	/** Likewise of estimates of the samples asked about. */
	public TrialScore score(Estimates estimates, double cells) {
		Score score = scored(estimates);
		return new TrialScore(score.meanErrorMetres, score.comparisonShare,
				score.comparisonShare - cells / Math.max(1, signals.size()));
	}

	private SignalRows aligned(Signals searched) {
		return searched == signals ? queries : searched.align(questions);
	}

	/** Mean plane error in metres and mean comparisons as a share of the map, by search, then by voting. */
	List<List<Score>> scores(JointSearch searches, List<Voting> votings, Workers workers) {
		return searches.estimates(votings, aligned(searches.signals()), workers).stream()
				.map(each -> each.stream().map(this::scored).toList()).toList();
	}

	private Score scored(Estimates e) {
		double sum = 0;
		for (int q = 0; q < e.size(); q++) {
			sum += Math.hypot(e.x(q) - questions.x(q), e.y(q) - questions.y(q));
		}
		return new Score(e.size() == 0 ? 0 : sum / e.size(), e.meanComparisons() / Math.max(1, signals.size()));
	}

	record Score(double meanErrorMetres, double comparisonShare) {
	}
}
