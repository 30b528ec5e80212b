package org.cairnfield.core.health;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlaceIndexTest {

	private static int[] byLooking(RadioMap map, int sample, int k) {
		return IntStream.range(0, map.size())
				.filter(o -> o != sample && Double.isFinite(map.metresApart(sample, o))).boxed()
				.sorted(Comparator.<Integer>comparingDouble(o -> map.metresApart(sample, o)).thenComparing(o -> o))
				.limit(k).mapToInt(o -> o).toArray();
	}

	private static void assertAgrees(RadioMap map, int k) {
		PlaceIndex index = new PlaceIndex(map);
		for (int s = 0; s < map.size(); s++) {
			int[] out = new int[k];
			int count = index.nearest(s, out);
			assertArrayEquals(byLooking(map, s, k), Arrays.copyOf(out, count), "around sample " + s);
		}
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3 })
	void findsWhatLookingAtAllFinds(long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int s = 0; s < 400; s++) {
			// Half on a raster, so that distances tie and places repeat; some strays far away.
			boolean raster = random.nextBoolean();
			double x = raster ? random.nextInt(8) * 3 : random.nextDouble(0, 40);
			double y = raster ? random.nextInt(5) * 3 : random.nextDouble(-9, 12);
			builder.sample("Hall " + random.nextInt(2), random.nextInt(2), s % 97 == 0 ? 1e6 * x : x, y);
		}
		RadioMap map = builder.build();
		assertAgrees(map, 1);
		assertAgrees(map, 5);
	}

	@Test
	void copesWithLinesPointsAndLonelySamples() {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int s = 0; s < 30; s++) {
			builder.sample("Line", 0, s * 2.5, 4);
			builder.sample("Point", 0, 7, 7);
		}
		builder.sample("Lonely", 0, 1, 1);
		RadioMap map = builder.build();
		assertAgrees(map, 5);
		assertEquals(0, new PlaceIndex(map).nearest(60, new int[5]));
	}
}
