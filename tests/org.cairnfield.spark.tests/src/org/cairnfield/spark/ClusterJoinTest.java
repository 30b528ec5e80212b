package org.cairnfield.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Role;
import org.junit.jupiter.api.Test;

class ClusterJoinTest {

	private static final double EPSILON = 6;
	private static final byte CORE = (byte) Role.CORE.ordinal();
	private static final byte NOISE = (byte) Role.NOISE.ordinal();

	/** Cores 0 (or 2) and 1 in two tasks, out of earshot of each other; sample 3, in the first task, has both at distance 6. */
	private static Clustering between(int firstCore) {
		ClusterTask.Summary first = new ClusterTask.Summary(0, new int[] { firstCore }, List.of(), List.of(),
				List.of(new ClusterTask.Other(3, 10, 2, EPSILON, firstCore, 0)));
		ClusterTask.Summary second = new ClusterTask.Summary(1, new int[] { 1 }, List.of(),
				List.of(new ClusterTask.Core(1, 20, 4, 0)), List.of());
		int spare = 2 - firstCore;
		return ClusterJoin.join(List.of(first, second),
				List.of(new ClusterTask.Labelled(0, new int[] { firstCore, 3, spare },
						new int[] { 0, Clustering.NOISE, Clustering.NOISE },
						new byte[] { CORE, NOISE, NOISE }),
						new ClusterTask.Labelled(1, new int[] { 1 }, new int[] { 0 }, new byte[] { CORE })),
				4, EPSILON);
	}

	@Test
	void ofTwoEquallyNearCoresTheFirstInTheMapTakesABorderSample() {
		Clustering here = between(0);
		assertEquals(here.label(0), here.label(3));
		assertEquals(Role.BORDER, here.role(3));
		Clustering beyond = between(2);
		assertEquals(beyond.label(1), beyond.label(3));
	}

	@Test
	void aSampleThatNoTaskAnswersForIsAFault() {
		assertThrows(IllegalStateException.class, () -> ClusterJoin.join(List.of(), List.of(), 1, EPSILON));
	}
}
