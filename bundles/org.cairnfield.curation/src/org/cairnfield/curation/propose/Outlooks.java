package org.cairnfield.curation.propose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.match.HomeEffects;
import org.cairnfield.core.match.HomeEffects.Home;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SplitOnMap;

/** The outlook of all noise samples of a split, on blocks of training positions held out in turn and searched as devices search. */
final class Outlooks {

	private static final int FOLDS = 5;
	private static final int MOST_QUESTIONS = 4000;

	private final Map<Integer, Outlook> bySample = new HashMap<>();
	private String basis = "";
	private int departures;
	private int better;
	private int worse;
	private double changeMetres;

	private Outlooks() {
	}

	/** What advice not to approve, given on one half of the training positions, did on the other half. */
	String adviceRecord() {
		return departures == 0 ? "on either half of the training positions it advised to approve all"
				: String.format(Locale.ROOT, "advice not to approve, given %d times on one half of the training positions, was right %d times and wrong %d "
						+ "times on the other half, and changed the mean error there by %+.3f m", departures, better, worse, changeMetres / 2);
	}

	/** What they are computed from, for a person. */
	String basis() {
		return basis;
	}

	/** Of a noise sample. */
	Outlook of(int noise) {
		return bySample.getOrDefault(noise, Outlook.UNKNOWN);
	}

	/**
	 * @param proposed cluster by noise sample; those without a proposal are absent
	 * @param nearest  of every noise sample
	 */
	static Outlooks of(SplitOnMap split, Map<Integer, Integer> proposed, NearestSamples nearest, Workers workers) {
		Clustering clustering = split.clustering();
		Map<Home, Integer> place = new HashMap<>();
		List<Home> homes = new ArrayList<>();
		for (int s = 0; s < clustering.size(); s++) {
			if (clustering.isNoise(s) && nearest.sample(s) >= 0) {
				add(new Home(s, HomeEffects.POOL), place, homes);
				add(new Home(s, clustering.label(nearest.sample(s))), place, homes);
				if (proposed.containsKey(s)) {
					add(new Home(s, proposed.get(s)), place, homes);
				}
			}
		}
		int[] fold = PositionBlocks.of(split.map()).folds(FOLDS, split.seed());
		List<List<HomeEffects.Effect>> halves = new ArrayList<>();
		for (int half = 0; half < 2; half++) {
			halves.add(HomeEffects.of(Signals.of(split.map()), clustering, split.search(), homes, fold, questions(fold, half), split.seed(), workers));
		}
		Outlooks outlooks = new Outlooks();
		for (int s = 0; s < clustering.size(); s++) {
			if (place.containsKey(new Home(s, HomeEffects.POOL))) {
				Integer own = proposed.containsKey(s) ? place.get(new Home(s, proposed.get(s))) : null;
				int other = place.get(new Home(s, clustering.label(nearest.sample(s))));
				int pool = place.get(new Home(s, HomeEffects.POOL));
				outlooks.add(s, outlook(h -> halves.get(0).get(h).and(halves.get(1).get(h)), own, other, pool));
				if (own != null) {
					outlooks.tryAdvice(outlook(halves.get(0)::get, own, other, pool), outlook(halves.get(1)::get, own, other, pool), own == other);
				}
			}
		}
		int asked = halves.stream().flatMap(List::stream).mapToInt(HomeEffects.Effect::asked).max().orElse(0) == 0 ? 0
				: outlooks.bySample.values().stream().mapToInt(o -> o.pool().queries()).max().orElse(0);
		outlooks.basis = String.format(Locale.ROOT,
				"from %d training positions, blocks of them held out in turn; each sample alone, compared with leaving it out", asked);
		return outlooks;
	}

	/** Those of every second fold, in equal steps. */
	private static int[] questions(int[] fold, int half) {
		int step = Math.max(1, (fold.length + MOST_QUESTIONS - 1) / MOST_QUESTIONS);
		return IntStream.range(0, fold.length).filter(s -> s % step == 0 && fold[s] % 2 == half).toArray();
	}

	private static Outlook outlook(IntFunction<HomeEffects.Effect> effects, Integer own, int nearest, int pool) {
		return new Outlook(own == null ? Effect.UNKNOWN : Effect.of(effects.apply(own)), Effect.of(effects.apply(nearest)),
				Effect.of(effects.apply(pool)));
	}

	private void add(int sample, Outlook outlook) {
		bySample.put(sample, outlook);
	}

	/** Advice to depart from approving, made on one half of the positions, is judged on the other. */
	private void tryAdvice(Outlook one, Outlook other, boolean agrees) {
		for (Outlook[] pair : new Outlook[][] { { one, other }, { other, one } }) {
			Advice advice = Advice.of(pair[0], true, agrees);
			if (advice != Advice.APPROVE) {
				departures++;
				double change = advice.changeMetres(pair[1]);
				changeMetres += change;
				better += change < 0 ? 1 : 0;
				worse += change > 0 ? 1 : 0;
			}
		}
	}

	private static void add(Home home, Map<Home, Integer> place, List<Home> homes) {
		if (place.putIfAbsent(home, homes.size()) == null) {
			homes.add(home);
		}
	}
}
