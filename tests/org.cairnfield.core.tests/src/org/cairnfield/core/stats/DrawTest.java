package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class DrawTest {

	@Test
	void drawsEachNumberAsOften() {
		int[] drawn = new int[10];
		for (long seed = 0; seed < 20_000; seed++) {
			int[] some = Draw.some(3, 10, seed);
			assertEquals(3, Arrays.stream(some).distinct().count());
			assertArrayEquals(Arrays.stream(some).sorted().toArray(), some);
			Arrays.stream(some).forEach(i -> drawn[i]++);
		}
		for (int times : drawn) {
			assertEquals(6000, times, 5 * Math.sqrt(20_000 * 0.3 * 0.7));
		}
	}

	@Test
	void drawsAllWhereThereAreNoMore() {
		assertArrayEquals(new int[] { 0, 1, 2 }, Draw.some(3, 3, 1));
		assertArrayEquals(new int[] { 0, 1, 2 }, Draw.some(9, 3, 1));
		assertArrayEquals(new int[0], Draw.some(0, 3, 1));
	}
}
