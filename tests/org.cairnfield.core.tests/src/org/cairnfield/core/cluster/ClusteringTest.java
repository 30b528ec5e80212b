package org.cairnfield.core.cluster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ClusteringTest {

	private static final Clustering FOUND = new Clustering(new int[] { 0, -1, 1, 0, -1, 1, 1 },
			new Role[] { Role.CORE, Role.NOISE, Role.CORE, Role.BORDER, Role.NOISE, Role.CORE, Role.CORE });

	@Test
	void countsClustersMembersAndNoise() {
		assertEquals(7, FOUND.size());
		assertEquals(2, FOUND.clusters());
		assertEquals(2, FOUND.noise());
		assertEquals(2 / 7.0, FOUND.noiseShare(), 1e-15);
		assertArrayEquals(new int[] { 2, 3 }, FOUND.sizes());
		assertArrayEquals(new int[][] { { 0, 3 }, { 2, 5, 6 } }, FOUND.members());
	}

	@Test
	void makesPlacedNoiseBorderAndKeepsOtherRoles() {
		Clustering placed = FOUND.relabelled(new int[] { 0, 1, 1, 0, -1, 1, 2 });
		assertEquals(Role.BORDER, placed.role(1));
		assertEquals(Role.CORE, placed.role(0));
		assertEquals(Role.BORDER, placed.role(3));
		assertEquals(Role.NOISE, placed.role(4));
		assertEquals(3, placed.clusters());
		assertEquals(1, placed.noise());
		assertTrue(FOUND.isNoise(1));
	}

	@Test
	void takesLabelledSamplesForCoreWhereNoRolesAreKnown() {
		Clustering noRoles = new Clustering(new int[] { 0, -1 }, null);
		assertEquals(Role.CORE, noRoles.role(0));
		assertEquals(Role.NOISE, noRoles.role(1));
	}

	@Test
	void keepsAndHandsOutCopies() {
		int[] given = { 0, -1 };
		Clustering clustering = new Clustering(given, null);
		given[0] = 5;
		clustering.labels()[1] = 5;
		assertArrayEquals(new int[] { 0, -1 }, clustering.labels());
	}
}
