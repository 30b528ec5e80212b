package org.cairnfield.core.match;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.cairnfield.core.distance.DenseForm;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class NeighboursTest {

	private static final int SAMPLES = 50;

	@ParameterizedTest
	@EnumSource(Distance.class)
	void equalSortingAllSamples(Distance kind) {
		for (long seed = 1; seed <= 30; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, SAMPLES), Representation.positive(), kind);
			double[][] distance = DenseForm.of(signals).matrix();
			int[] rank = Neighbours.rankByPlace(signals.map());
			Neighbours.Search search = new Neighbours(signals).search();
			for (int k : new int[] { 1, 3, 60, 2 }) {
				for (int s = 0; s < SAMPLES; s++) {
					int sample = s;
					int[] sorted = IntStream.range(0, SAMPLES).boxed().sorted((a, b) -> {
						int by = Double.compare(distance[sample][a], distance[sample][b]);
						return by != 0 ? by : Integer.compare(rank[a], rank[b]);
					}).mapToInt(Integer::intValue).toArray();
					assertFound(Arrays.copyOf(sorted, Math.min(k, SAMPLES)), distance[s],
							search.of(signals.rows(), s, k));
					int[] others = Arrays.stream(sorted).filter(o -> o != sample).limit(k).toArray();
					assertFound(others, distance[s], search.ofSample(s, k));
				}
			}
		}
	}

	private static void assertFound(int[] expected, double[] distance, Nearest found) {
		assertArrayEquals(expected, IntStream.range(0, found.size()).map(found::sample).toArray());
		for (int i = 0; i < expected.length; i++) {
			assertEquals(distance[expected[i]], found.distance(i));
		}
	}

	@Test
	void ranksByPlaceThenByOrderInTheMap() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 0, 0); // 4
		b.sample("Lantern Store", 1, 0, 0); // 3
		b.sample("Lantern Store", 0, 2, 0); // 2
		b.sample("Lantern Store", 0, 1, 9); // 1
		b.sample("Lantern Store", 0, 1, -9); // 0
		b.sample("Tide House", 0, 0, 0); // 5, the place of the first
		b.sample("Tide House", 1, -5, 0); // 6
		assertArrayEquals(new int[] { 4, 3, 2, 1, 0, 5, 6 }, Neighbours.rankByPlace(b.build()));
	}

	@Test
	void prefersTheSmallerPlaceOfEquallyNearSamplesWhateverTheirOrder() {
		for (int[] order : new int[][] { { 0, 1, 2 }, { 2, 1, 0 }, { 1, 0, 2 } }) {
			RadioMapBuilder b = new RadioMapBuilder();
			for (int i : order) {
				b.sample("Tide House", 0, i, 0).reading("a", i == 1 ? -52 : -48);
			}
			RadioMap map = b.build();
			RadioMap asked = new RadioMapBuilder().sample("Tide House", 0, 9, 9).reading("a", -50).build();
			Signals signals = Signals.of(map);
			Nearest found = new Neighbours(signals).search().of(signals.align(asked), 0, 2);
			assertEquals(0, map.x(found.sample(0)));
			assertEquals(1, map.x(found.sample(1)));
		}
	}
}
