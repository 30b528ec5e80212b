package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class JaccardTest {

	@Test
	void isTheShareInCommon() {
		assertEquals(2 / 5.0, Jaccard.overlap(ids(1, 2, 3, 4), ids(3, 4, 5)), 0);
		assertEquals(2 / 5.0, Jaccard.overlap(ids(3, 4, 5), ids(1, 2, 3, 4)), 0);
		assertEquals(1, Jaccard.overlap(ids(2, 9), ids(2, 9)), 0);
		assertEquals(0, Jaccard.overlap(ids(1, 3), ids(2, 4)), 0);
	}

	@Test
	void followsAConventionForEmptySets() {
		assertEquals(1, Jaccard.overlap(ids(), ids()), 0);
		assertEquals(0, Jaccard.overlap(ids(), ids(1)), 0);
	}

	@Test
	void comparesRunsOfOneColumn() {
		int[] column = { 7, 1, 2, 3, 4, 3, 4, 5, 1 };
		assertEquals(2 / 5.0, Jaccard.overlap(i -> column[i], 1, 5, 5, 8), 0);
	}

	private static int[] ids(int... ids) {
		return ids;
	}
}
