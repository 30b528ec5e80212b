package org.cairnfield.core.correlate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class PartPlacementsTest {

	private final RadioMap map = RandomMap.of(41, new CampusSize(2, 1, 40, false, 110, 12), 300, Workers.inline());
	private final Signals whole = Signals.of(map);
	private final Clustering clustering = Dbscan.cluster(whole, 75, 3, Workers.inline());

	private Signals part(int[] samples) {
		return Signals.ofPart(map.view(samples), whole.representation(), whole.distance(), whole.lowestRssiDbm());
	}

	private SampleSums sums(int[] samples) {
		return new SampleSums(samples.length, IntStream.of(samples).mapToDouble(s -> whole.rows().magnitude(s)).sum(),
				IntStream.of(samples).mapToDouble(s -> whole.rows().magnitude(s) * whole.rows().magnitude(s)).sum());
	}

	@Test
	void twoPartsOutOfEarshotKnowTogetherWhatTheWholeKnows() {
		int[][] sides = { IntStream.range(0, map.size()).filter(s -> map.site(s) == 0).toArray(),
				IntStream.range(0, map.size()).filter(s -> map.site(s) == 1).toArray() };
		assertTrue(clustering.noise() > 5 && clustering.clusters() > 3,
				clustering.noise() + " noise, " + clustering.clusters() + " clusters");
		RowSums[] rows = new RowSums[map.size()];
		double[] inPart = new double[map.size()];
		Arrays.fill(inPart, Double.NaN);
		for (int side = 0; side < 2; side++) {
			int[] own = sides[side];
			NoiseCorrelation.PartPlacements placed = NoiseCorrelation.placePart(part(own),
					new Clustering(IntStream.of(own).map(clustering::label).toArray(), null), sums(sides[1 - side]),
					Workers.inline());
			IntStream.range(0, own.length).forEach(s -> rows[own[s]] = placed.rows().get(s));
			placed.placements().forEach(p -> inPart[own[p.sample()]] = p.strength());
		}
		SampleSums all = sums(IntStream.range(0, map.size()).toArray());
		List<NoisePlacement> wanted = NoiseCorrelation.place(whole, clustering, Workers.inline());
		for (NoisePlacement p : wanted) {
			double best = inPart[p.sample()];
			for (int other : sides[1 - map.site(p.sample())]) {
				if (!clustering.isNoise(other)) {
					best = Math.max(best, rows[p.sample()].correlation(rows[other], all));
				}
			}
			assertEquals(p.strength(), best, "sample " + p.sample());
		}
	}

	@Test
	void aPartHasTheDistancesOfTheWhole() {
		int loudest = IntStream.range(0, map.size()).boxed()
				.max((a, b) -> Integer.compare(map.view(new int[] { a }).lowestRssiDbm(),
						map.view(new int[] { b }).lowestRssiDbm()))
				.orElseThrow();
		assertTrue(map.view(new int[] { loudest }).lowestRssiDbm() > whole.lowestRssiDbm(),
				"no sample that misses the lowest level");
		assertEquals(whole.rows().magnitude(loudest), part(new int[] { loudest }).rows().magnitude(0));
		assertThrows(IllegalArgumentException.class,
				() -> Signals.ofPart(map, Representation.positive(), Distance.CITY_BLOCK, whole.lowestRssiDbm() + 1));
	}

	@Test
	void onlyPlainSumsHaveAClosedForm() {
		Signals euclidean = Signals.of(map, Representation.positive(), Distance.EUCLIDEAN);
		assertThrows(IllegalArgumentException.class,
				() -> NoiseCorrelation.placePart(euclidean, clustering, SampleSums.NONE, Workers.inline()));
	}
}
