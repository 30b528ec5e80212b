package org.cairnfield.core.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.HomeEffects.Effect;
import org.cairnfield.core.match.HomeEffects.Home;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class HomeEffectsTest {

	private static final RadioMap MAP = clamped(RandomMap.of(7, CampusSize.of(1, 2, 24), 160, Workers.inline()));
	private static final Signals SIGNALS = Signals.of(MAP);
	private static final int[] FOLD = PositionBlocks.of(MAP).folds(5, 3);
	/** Four parts of the building; every fourth sample is noise. */
	private static final Clustering CLUSTERS = new Clustering(IntStream.range(0, MAP.size())
			.map(s -> s % 4 == 0 ? Clustering.NOISE : MAP.floor(s) * 2 + (MAP.x(s) > MAP.x(0) ? 1 : 0)).toArray(),
			null);

	/** With the lowest level in many samples: distances count from it, and parts of the map should have the same. */
	private static RadioMap clamped(RadioMap map) {
		RadioMapBuilder builder = new RadioMapBuilder();
		map.accessPoints().forEach(builder::accessPoint);
		for (int s = 0; s < map.size(); s++) {
			builder.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s));
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				builder.reading(map.accessPoint(k), Math.max(-85, map.rssiDbm(k)));
			}
		}
		return builder.build();
	}

	private static List<Home> homes() {
		List<Home> homes = new ArrayList<>();
		for (int s = 0; s < MAP.size(); s++) {
			if (CLUSTERS.isNoise(s)) {
				homes.add(new Home(s, HomeEffects.POOL));
				homes.add(new Home(s, s / 4 % CLUSTERS.clusters()));
			}
		}
		return homes;
	}

	private static List<Effect> effects(Search search, List<Home> homes) {
		return HomeEffects.of(SIGNALS, CLUSTERS, search, homes, FOLD, IntStream.range(0, MAP.size()).toArray(), 1,
				Workers.inline()).all();
	}

	/** Error of each question against the labelled samples of other folds, and one more sample; by plain matching. */
	private static double[] errors(int more, Voting voting) {
		double[] errors = new double[MAP.size()];
		for (int f = 0; f < 5; f++) {
			int fold = f;
			int[] asked = IntStream.range(0, MAP.size()).filter(s -> FOLD[s] == fold).toArray();
			RadioMap kept = MAP.where(s -> FOLD[s] != fold && (!CLUSTERS.isNoise(s) || s == more));
			// ties go by place, which is the same order in a part of the map
			Signals signals = Signals.of(kept, SIGNALS.representation(), SIGNALS.distance());
			assertEquals(SIGNALS.lowestRssiDbm(), signals.lowestRssiDbm(), "or distances were others");
			Estimates estimates = Estimates.of(new PlainMatcher(new Neighbours(signals), voting),
					signals.align(MAP.view(asked)), Workers.inline());
			for (int i = 0; i < asked.length; i++) {
				errors[asked[i]] = Math.hypot(estimates.x(i) - MAP.x(asked[i]), estimates.y(i) - MAP.y(asked[i]));
			}
		}
		return errors;
	}

	@Test
	void whereAllCellsAreSearchedEveryHomeDoesWhatOneMoreSampleDoesToPlainMatching() {
		assertEquals(4, CLUSTERS.clusters());
		for (Voting voting : List.of(Voting.NEAREST, Voting.THREE_WEIGHTED)) {
			List<Home> homes = homes();
			List<Effect> effects = effects(new Search(false, 0, Search.MOST, false, voting), homes);
			double[] without = errors(-1, voting);
			for (int h = 0; h < homes.size(); h += 2) {
				int sample = homes.get(h).sample();
				double[] with = errors(sample, voting);
				double sum = 0;
				int affected = 0;
				int asked = 0;
				for (int q = 0; q < MAP.size(); q++) {
					if (FOLD[q] != FOLD[sample]) {
						asked++;
						sum += with[q] - without[q];
						affected += with[q] != without[q] ? 1 : 0;
					}
				}
				for (Effect effect : effects.subList(h, h + 2)) {
					assertEquals(asked, effect.asked());
					assertEquals(affected, effect.affected());
					assertEquals(sum / asked, effect.changeMetres(), 1e-9);
					assertEquals(1, effect.comparisonsAdded());
				}
			}
		}
	}

	@Test
	void aClusterIsFoundByFewerQuestionsThanThePool() {
		List<Home> homes = homes();
		List<Effect> effects = effects(Search.PUBLISHED, homes);
		for (int h = 0; h < homes.size(); h += 2) {
			assertEquals(1, effects.get(h).comparisonsAdded());
			assertTrue(effects.get(h + 1).comparisonsAdded() < 1);
			assertTrue(effects.get(h + 1).affected() <= effects.get(h).affected());
		}
		assertTrue(effects.stream().anyMatch(effect -> effect.affected() > 0));
	}

	@Test
	void knowsNothingWhereNothingIsSplit() {
		Clustering none = new Clustering(IntStream.generate(() -> -1).limit(MAP.size()).toArray(), null);
		Effect effect = HomeEffects.of(SIGNALS, none, Search.USUAL, List.of(new Home(0, HomeEffects.POOL)), FOLD,
				new int[] { 1, 2 }, 1, Workers.inline()).all().get(0);
		assertEquals(0, effect.asked());
		assertTrue(Double.isNaN(effect.changeMetres()));
	}

	@Test
	void refusesAClusterThatIsNotThere() {
		assertThrows(IllegalArgumentException.class,
				() -> effects(Search.USUAL, List.of(new Home(homes().get(0).sample(), 999))));
	}

	@Test
	void intervalsCountAPlaceOnce() {
		// every sample twice at the same place: sums and shares are the same, the interval does not shrink
		RadioMap doubled = MAP.view(IntStream.range(0, 2 * MAP.size()).map(s -> s / 2).toArray());
		int[] label = IntStream.range(0, 2 * MAP.size()).map(s -> CLUSTERS.label(s / 2)).toArray();
		int[] fold = IntStream.range(0, 2 * MAP.size()).map(s -> FOLD[s / 2]).toArray();
		List<Home> homes = homes();
		List<Home> twice = homes.stream().map(home -> new Home(2 * home.sample(), home.cluster())).toList();
		Search search = new Search(false, 0, Search.MOST, false, Voting.NEAREST);
		List<Effect> once = effects(search, homes);
		List<Effect> again = HomeEffects.of(Signals.of(doubled), new Clustering(label, null), search, twice, fold,
				IntStream.range(0, doubled.size()).toArray(), 1, Workers.inline()).all();
		for (int h = 0; h < homes.size(); h++) {
			assertEquals(once.get(h).changeMetres(), again.get(h).changeMetres(), 1e-9);
			assertEquals(once.get(h).halfWidthMetres(), again.get(h).halfWidthMetres(), 1e-9);
		}
	}
}
