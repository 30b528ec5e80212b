package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.stat.inference.WilcoxonSignedRankTest;
import org.junit.jupiter.api.Test;

class SignedRankTest {

	private static final double[] NO_CHANGE = new double[15];
	/** The differences of the example in SciPy's documentation of {@code scipy.stats.wilcoxon}; figures by SciPy 1.17.1. */
	private static final double[] PLANTS = { 6, 8, 14, 16, 23, 24, 28, 29, 41, -48, 49, 56, 60, -67, 75 };

	@Test
	void agreesWithTheDocumentedExampleOfAReferenceLibrary() {
		SignedRank test = SignedRank.of(PLANTS, NO_CHANGE);
		assertEquals(15, test.pairs());
		assertEquals(24, test.below());
		assertEquals(96, test.above());
		assertEquals(0.041259765625, test.p(), 1e-15);
	}

	/** Nine patients of Hollander &amp; Wolfe 1973, as in R's manual of wilcox.test (data from memory); figures by SciPy 1.17.1. */
	@Test
	void agreesWithATextbookExampleOfPairs() {
		double[] before = { 1.83, 0.50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30 };
		double[] after = { 0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29 };
		SignedRank test = SignedRank.of(before, after);
		assertEquals(40, test.above());
		assertEquals(5, test.below());
		assertEquals(0.0390625, test.p(), 1e-15);
		SignedRank turned = SignedRank.of(after, before);
		assertEquals(40, turned.below());
		assertEquals(test.p(), turned.p());
	}

	@Test
	void leavesPairsWithoutADifferenceOut() {
		double[] first = { 1, 7, 3, 9, 5, 5 };
		double[] second = { 0, 5, 3, 5, 5, 8 };
		assertEquals(SignedRank.of(new double[] { 1, 7, 9, 5 }, new double[] { 0, 5, 5, 8 }),
				SignedRank.of(first, second));
		assertEquals(new SignedRank(0, 0, 0, Double.NaN).toString(), SignedRank.of(second, second).toString());
	}

	@Test
	void sharesRanksAmongEqualDifferences() {
		SignedRank test = SignedRank.of(new double[] { 1, 0, 1, 3 }, new double[] { 0, 1, 0, 0 });
		assertEquals(2 + 2 + 4, test.above());
		assertEquals(2, test.below());
	}

	@Test
	void isCertainOfNothingWhereRankSumsAreEqual() {
		assertEquals(1, SignedRank.of(new double[] { 1, 2, 0 }, new double[] { 0, 0, 3 }).p());
	}

	/** Against Commons Math, above and below the number of pairs from which it is approximate. */
	@Test
	void agreesWithCommonsMath() {
		Random random = new Random(5);
		for (int n : new int[] { 3, 8, 20, 21, 60 }) {
			double[] a = random.doubles(n).toArray();
			double[] b = random.doubles(n).map(d -> d + 0.1).toArray();
			SignedRank test = SignedRank.of(a, b);
			WilcoxonSignedRankTest peer = new WilcoxonSignedRankTest();
			assertEquals(peer.wilcoxonSignedRank(a, b), Math.max(test.below(), test.above()), 1e-9);
			assertEquals(Math.min(1, peer.wilcoxonSignedRankTest(a, b, n <= SignedRank.MOST_EXACT)), test.p(), 1e-12);
			assertEquals(n * (n + 1) / 2.0, test.below() + test.above(), 1e-9);
		}
	}

	@Test
	void asksForPairs() {
		assertTrue(assertThrows(IllegalArgumentException.class, () -> SignedRank.of(new double[2], new double[3]))
				.getMessage().contains("2 and 3"));
	}
}
