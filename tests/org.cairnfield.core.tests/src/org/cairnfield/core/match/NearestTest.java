package org.cairnfield.core.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cairnfield.core.map.ScatteredMap;
import org.junit.jupiter.api.Test;

class NearestTest {

	@Test
	void keepsTheNearestInOrderTiesByRank() {
		SplittableRandom random = new SplittableRandom(1);
		for (int run = 0; run < 300; run++) {
			int n = 1 + random.nextInt(30);
			int k = 1 + random.nextInt(12);
			double[] distance = random.doubles(n).map(d -> Math.floor(d * 8)).toArray();
			int[] rank = ScatteredMap.shuffled(n, run);
			int[] expected = IntStream.range(0, n).boxed().sorted((a, b) -> {
				int by = Double.compare(distance[a], distance[b]);
				return by != 0 ? by : Integer.compare(rank[a], rank[b]);
			}).limit(k).mapToInt(Integer::intValue).toArray();
			Nearest nearest = new Nearest(k, rank);
			for (int s : ScatteredMap.shuffled(n, run + 1000)) {
				nearest.offer(s, distance[s]);
			}
			assertEquals(expected.length, nearest.size());
			for (int i = 0; i < expected.length; i++) {
				assertEquals(expected[i], nearest.sample(i));
				assertEquals(distance[expected[i]], nearest.distance(i));
			}
			assertEquals(n < k ? Double.POSITIVE_INFINITY : distance[expected[k - 1]], nearest.reach());
			nearest.clear();
			assertEquals(0, nearest.size());
		}
	}

	@Test
	void refusesToKeepNone() {
		assertThrows(IllegalArgumentException.class, () -> new Nearest(0, new int[1]));
	}
}
