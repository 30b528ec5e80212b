package org.cairnfield.core.cluster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/** Comparisons of clusterings. */
final class ClusteringAssert {

	private ClusteringAssert() {
	}

	/** Labels, numbers included, and roles. */
	static void assertSame(Clustering expected, Clustering found, String what) {
		assertArrayEquals(expected.labels(), found.labels(), what);
		assertArrayEquals(roles(expected), roles(found), what);
	}

	/** The same groups whatever their numbers. */
	static void assertSamePartition(int[] expected, int[] found, String what) {
		assertArrayEquals(numberedByFirst(expected), numberedByFirst(found), what);
	}

	static Role[] roles(Clustering c) {
		return IntStream.range(0, c.size()).mapToObj(c::role).toArray(Role[]::new);
	}

	/** Labels of the core samples, {@link Clustering#NOISE} for all others. */
	static int[] coreLabels(Clustering c) {
		return IntStream.range(0, c.size()).map(s -> c.role(s) == Role.CORE ? c.label(s) : Clustering.NOISE).toArray();
	}

	static int[] numberedByFirst(int[] label) {
		Map<Integer, Integer> number = new HashMap<>();
		return Arrays.stream(label).map(l -> {
			if (l == Clustering.NOISE) {
				return l;
			}
			number.putIfAbsent(l, number.size());
			return number.get(l);
		}).toArray();
	}

	static void assertLabels(Clustering found, int... expected) {
		assertArrayEquals(expected, found.labels());
		assertEquals(Arrays.stream(expected).max().orElse(-1) + 1, found.clusters());
	}
}
