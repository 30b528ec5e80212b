package org.cairnfield.curation.propose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.NearestLabelled;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.HomeEffects;
import org.cairnfield.core.match.HomeEffects.Home;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SplitOnMap;

/** The outlook of all noise samples of a split, on blocks of training positions held out in turn and searched as devices search. */
final class Outlooks {

	private static final int FOLDS = 5;
	private static final int MOST_QUESTIONS = 4000;

	private final Map<Integer, Outlook> bySample;
	private final List<Map<Integer, Outlook>> halves;
	private final String basis;

	private Outlooks(Map<Integer, Outlook> bySample, List<Map<Integer, Outlook>> halves, String basis) {
		this.bySample = bySample;
		this.halves = halves;
		this.basis = basis;
	}

	/** What they are computed from, for a person. */
	String basis() {
		return basis;
	}

	/** Of a noise sample. */
	Outlook of(int noise) {
		return bySample.getOrDefault(noise, Outlook.UNKNOWN);
	}

	/** Of a noise sample, by every other place only: 0 for these, 1 for those between them. */
	Outlook ofHalf(int half, int noise) {
		return halves.get(half).getOrDefault(noise, Outlook.UNKNOWN);
	}

	/**
	 * @param proposed cluster by noise sample; those without a proposal are absent
	 * @param nearest  of every noise sample
	 */
	static Outlooks of(SplitOnMap split, Map<Integer, Integer> proposed, NearestLabelled nearest, Workers workers) {
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
		int step = Math.max(1, (clustering.size() + MOST_QUESTIONS - 1) / MOST_QUESTIONS);
		int[] questions = IntStream.range(0, clustering.size()).filter(s -> s % step == 0).toArray();
		HomeEffects judged = HomeEffects.of(Signals.of(split.map()), clustering, split.search(), homes,
				PositionBlocks.of(split.map()).folds(FOLDS, split.seed()), questions, split.seed(), workers);
		int[] half = halves(split.map());
		List<Map<Integer, Outlook>> halves = IntStream.range(0, 2)
				.mapToObj(h -> bySample(judged.of(q -> half[q] == h), place, proposed, nearest, clustering))
				.toList();
		return new Outlooks(bySample(judged.all(), place, proposed, nearest, clustering), halves, String.format(
				Locale.ROOT,
				Messages.Outlooks_fromTrainingPositionsBlocksOf,
				questions.length));
	}

	private static Map<Integer, Outlook> bySample(List<HomeEffects.Effect> effects, Map<Home, Integer> place,
			Map<Integer, Integer> proposed,
			NearestLabelled nearest, Clustering clustering) {
		Map<Integer, Outlook> outlooks = new HashMap<>();
		for (int s = 0; s < clustering.size(); s++) {
			Integer pool = place.get(new Home(s, HomeEffects.POOL));
			if (pool != null) {
				Effect own = proposed.containsKey(s) ? Effect.of(effects.get(place.get(new Home(s, proposed.get(s)))))
						: Effect.UNKNOWN;
				Effect other = Effect.of(effects.get(place.get(new Home(s, clustering.label(nearest.sample(s))))));
				outlooks.put(s, new Outlook(own, other, Effect.of(effects.get(pool))));
			}
		}
		return outlooks;
	}

	/** Places in the order of the survey are of one half and the other in turn; samples of one place are of one half. */
	private static int[] halves(RadioMap map) {
		Map<List<Number>, Integer> places = new HashMap<>();
		int[] half = new int[map.size()];
		for (int s = 0; s < half.length; s++) {
			List<Number> place = List.of(map.site(s), map.floor(s), map.x(s), map.y(s));
			places.putIfAbsent(place, places.size());
			half[s] = places.get(place) % 2;
		}
		return half;
	}

	private static void add(Home home, Map<Home, Integer> place, List<Home> homes) {
		if (place.putIfAbsent(home, homes.size()) == null) {
			homes.add(home);
		}
	}
}
