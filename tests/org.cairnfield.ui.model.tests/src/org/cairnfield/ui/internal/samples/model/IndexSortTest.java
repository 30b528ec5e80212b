package org.cairnfield.ui.internal.samples.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

public class IndexSortTest {

	/** The JDK's sort of objects is stable. */
	@Test
	public void sortsAsTheJdkDoes() {
		Random random = new Random(7);
		for (int trial = 0; trial < 400; trial++) {
			int size = random.nextInt(200);
			int kinds = 1 + random.nextInt(30);
			int[] key = random.ints(size, 0, kinds).toArray();
			if (trial % 3 == 0) { // runs, up and down
				Arrays.sort(key, 0, size / 2);
				for (int i = size / 2; i < size; i++) {
					key[i] = size - i;
				}
			}
			int[] sorted = IndexSort.all(size);
			IndexSort.sort(sorted, (a, b) -> Integer.compare(key[a], key[b]), () -> {
			});
			assertArrayEquals(
					IntStream.range(0, size).boxed().sorted(Comparator.comparing(i -> key[i])).mapToInt(i -> i)
							.toArray(),
					sorted, () -> Arrays.toString(key));
		}
	}

	@Test
	public void comparesLittleWhereMuchIsSorted() {
		AtomicInteger comparisons = new AtomicInteger();
		int[] indices = IndexSort.all(100_000);
		IndexSort.sort(indices, (a, b) -> {
			comparisons.incrementAndGet();
			return Integer.compare(a, b);
		}, () -> {
		});
		assertTrue(comparisons.get() <= 100_001, comparisons::toString);
	}

	@Test
	public void endsWhenTold() {
		int[] key = new Random(1).ints(10_000).toArray();
		assertThrows(CancellationException.class, () -> IndexSort.sort(IndexSort.all(key.length),
				(a, b) -> Integer.compare(key[a], key[b]), () -> {
					throw new CancellationException();
				}));
	}
}
