package org.cairnfield.core.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JointSearchTest {

	private static final Workers HERE = Workers.inline();
	private static final int SAMPLES = 120;
	private static final Voting WIDEST = new Voting(5, true);
	private static final List<Voting> VOTINGS = List.of(Voting.NEAREST, Voting.THREE_WEIGHTED, WIDEST);
	private static final int[][] PROBES = { { 0, 1 }, { 0, 3 }, { 0, 2 }, { 2, 3 }, { 1, 1 }, { 3, 40 }, { 99, 8 } };

	/** Cells of all sizes, one cell, and none; with and without a pool. */
	@ParameterizedTest
	@CsvSource({ "positive, CITY_BLOCK, true", "positive, EUCLIDEAN, false", "exponential, CITY_BLOCK, false",
			"exponential, EUCLIDEAN, true" })
	void eachSearchFindsAndComparesWhatItDoesAlone(String representation, Distance kind, boolean relative) {
		int compared = 0;
		for (int seed = 1; seed <= 40; seed++) {
			RadioMap whole = ScatteredMap.of(seed, SAMPLES + 40);
			RadioMap asked = ScatteredMap.rebuilt(whole, IntStream.range(SAMPLES - 20, SAMPLES + 40).toArray());
			Signals signals = Signals.of(whole.where(s -> s < SAMPLES), Representation.named(representation), kind);
			Clustering clustering = new Clustering(new SplittableRandom(seed).ints(SAMPLES, -1, seed % 20).toArray(),
					null);
			SplitMap oneLevel = SplitMap.of(signals, clustering, Centroids.Kind.MEAN, seed % 2 == 0);
			SplitMap twoLevels = oneLevel.inTwoLevels(seed, HERE);
			List<Search> searches = IntStream.range(0, PROBES.length)
					.mapToObj(i -> new Search(i % 2 == 0, PROBES[i][0], PROBES[i][1], relative, WIDEST)).toList();
			SignalRows queries = signals.align(asked);
			List<List<Estimates>> together = new JointSearch(twoLevels, searches, WIDEST.k()).estimates(VOTINGS,
					queries, HERE);
			for (int s = 0; s < searches.size(); s++) {
				Search search = searches.get(s);
				List<Estimates> alone = Estimates.of(search.matcher(search.twoLevels() ? twoLevels : oneLevel), VOTINGS,
						queries, HERE);
				for (int v = 0; v < VOTINGS.size(); v++) {
					EstimatesTest.assertSame(signals.map(), alone.get(v), signals.map(), together.get(s).get(v));
					for (int q = 0; q < asked.size(); q++) {
						assertEquals(alone.get(v).comparisons(q), together.get(s).get(v).comparisons(q),
								search + ", query " + q);
						compared += alone.get(v).comparisons(q);
					}
				}
			}
		}
		assertTrue(compared > 10_000);
	}

	@ParameterizedTest
	@CsvSource({ "true, false", "false, true" })
	void goesByOneKindOfDistances(boolean first, boolean second) {
		Signals signals = Signals.of(ScatteredMap.of(1, 10));
		SplitMap split = SplitMap.of(signals, new Clustering(new int[10], null), Centroids.Kind.MEAN, false);
		List<Search> both = List.of(new Search(false, 0, 1, first, WIDEST), new Search(false, 0, 1, second, WIDEST));
		assertThrows(IllegalArgumentException.class, () -> new JointSearch(split, both, 5));
	}
}
