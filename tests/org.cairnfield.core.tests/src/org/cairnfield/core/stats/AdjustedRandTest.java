package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.cairnfield.core.stats.AdjustedRand.Noise;
import org.junit.jupiter.api.Test;

class AdjustedRandTest {

	@Test
	void agreesWithDocumentedExamples() {
		// Examples in the documentation of scikit-learn 1.2, adjusted_rand_score.
		assertIndex(1, labels(0, 0, 1, 1), labels(0, 0, 1, 1));
		assertIndex(1, labels(0, 0, 1, 1), labels(1, 1, 0, 0));
		assertIndex(4 / 7.0, labels(0, 0, 1, 2), labels(0, 0, 1, 1));
		assertIndex(4 / 7.0, labels(0, 0, 1, 1), labels(0, 0, 1, 2));
		assertIndex(0, labels(0, 0, 0, 0), labels(0, 1, 2, 3));
		assertIndex(-0.5, labels(0, 0, 1, 1), labels(0, 1, 0, 1));
	}

	@Test
	void agreesWithTheTenObjectTable() {
		// Cells {1,1,0}, {1,2,1}, {0,0,4}: quoted as .313 in the literature (value from memory), else by formula.
		int[] rows = labels(0, 0, 1, 1, 1, 1, 2, 2, 2, 2);
		int[] columns = labels(0, 1, 0, 1, 1, 2, 2, 2, 2, 2);
		assertEquals(0.312573443, AdjustedRand.index(rows, columns), 1e-9);
		assertIndex(8 / 33.0, labels(0, 0, 0, 1, 1, 1), labels(0, 0, 1, 1, 2, 2));
	}

	@Test
	void isSymmetricAndBlindToNames() {
		Random random = new Random(11);
		int[] a = random.ints(300, -1, 6).toArray();
		int[] b = random.ints(300, -1, 4).toArray();
		int[] renamed = Arrays.stream(b).map(label -> label < 0 ? label : 100 - 7 * label).toArray();
		assertEquals(AdjustedRand.index(a, b), AdjustedRand.index(b, a), 1e-12);
		assertEquals(AdjustedRand.index(a, b), AdjustedRand.index(a, renamed), 1e-12);
		assertEquals(0, AdjustedRand.index(a, b), 0.05);
	}

	@Test
	void treatsNoiseAsOneClassOrLeavesItOut() {
		int[] a = labels(0, 0, 1, 1, -1, -1);
		int[] b = labels(0, 0, 1, 1, 0, 1);
		// Table {2,0},{0,2},{1,1}: pairs together 2, rows 3, columns 6, all 15.
		assertIndex((2 - 18 / 15.0) / (4.5 - 18 / 15.0), a, b);
		assertEquals(1, AdjustedRand.index(a, b, Noise.LEFT_OUT), 1e-12);
		// Whatever the negative number, noise is noise.
		assertIndex(1, labels(0, 0, -1, -2), labels(3, 3, -7, -1));
	}

	@Test
	void isOneForTheSameTrivialPartition() {
		assertIndex(1, labels(4, 4, 4), labels(0, 0, 0));
		assertIndex(1, labels(0, 1, 2), labels(2, 1, 0));
	}

	@Test
	void survivesCountsThatOverflowIntegers() {
		int[] a = new int[200_000];
		int[] b = new int[200_000];
		for (int i = 0; i < a.length; i++) {
			a[i] = i % 2;
			b[i] = i / 2 % 2;
		}
		assertIndex(1, a, a);
		assertEquals(0, AdjustedRand.index(a, b), 1e-4);
	}

	@Test
	void isUndefinedForFewerThanTwoAndRefusesDifferentLengths() {
		assertEquals(Double.NaN, AdjustedRand.index(labels(0), labels(0)));
		assertEquals(Double.NaN, AdjustedRand.index(labels(0, -1), labels(0, 0), Noise.LEFT_OUT));
		assertThrows(IllegalArgumentException.class, () -> AdjustedRand.index(labels(0), labels(0, 1)));
	}

	private static void assertIndex(double expected, int[] a, int[] b) {
		assertEquals(expected, AdjustedRand.index(a, b), 1e-12);
	}

	private static int[] labels(int... labels) {
		return labels;
	}
}
