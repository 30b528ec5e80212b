package org.cairnfield.core.distance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.cairnfield.core.task.Threads;
import org.junit.jupiter.api.Test;

class DisjointSetsTest {

	@Test
	void answersTheSmallestMember() {
		DisjointSets sets = new DisjointSets(6);
		sets.join(5, 4);
		sets.join(4, 2);
		sets.join(0, 3);
		int[] expected = { 0, 1, 2, 0, 2, 2 };
		for (int i = 0; i < 6; i++) {
			assertEquals(expected[i], sets.find(i));
		}
	}

	@Test
	void isTheSameWhoeverJoins() {
		int n = 20_000;
		SplittableRandom random = new SplittableRandom(4);
		int[] a = random.ints(n, 0, n).toArray();
		int[] b = random.ints(n, 0, n).toArray();
		DisjointSets single = new DisjointSets(n);
		for (int i = 0; i < n; i++) {
			single.join(a[i], b[i]);
		}
		try (Threads threads = new Threads(3)) {
			for (int run = 0; run < 5; run++) {
				DisjointSets several = new DisjointSets(n);
				threads.workers().forRanges(n, () -> (from, to) -> {
					for (int i = from; i < to; i++) {
						several.join(a[i], b[i]);
					}
				});
				for (int i = 0; i < n; i++) {
					assertEquals(single.find(i), several.find(i));
				}
			}
		}
	}
}
