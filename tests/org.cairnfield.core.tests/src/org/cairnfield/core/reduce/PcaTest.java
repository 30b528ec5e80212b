package org.cairnfield.core.reduce;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.cairnfield.core.reduce.Pca.Scaling;
import org.cairnfield.core.stats.Pearson;
import org.cairnfield.core.stats.Summary;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class PcaTest {

	/** NIST/SEMATECH e-Handbook, 6.5.5.2. */
	private static final double[][] HANDBOOK = { { 7, 4, 3 }, { 4, 1, 8 }, { 6, 3, 5 }, { 8, 6, 1 }, { 8, 5, 7 },
			{ 7, 2, 9 },
			{ 5, 3, 3 }, { 9, 5, 8 }, { 7, 4, 5 }, { 8, 2, 2 } };
	private final Pca standardised = Pca.of(HANDBOOK, Scaling.STANDARDISED);

	@Test
	void agreesWithTheHandbookOnVariances() {
		// Printed 1.769 .927 .304; that page's rounded correlations would give 1.7704 .9277 .3019.
		assertVariances(5e-4, standardised, 1.769, .927, .304);
		assertVariances(1e-6, standardised, 1.768774136, .927075917, .304149947);
		assertEquals(.589591, standardised.varianceShare(0), 1e-6);
		assertEquals(.898617, standardised.varianceShare(0) + standardised.varianceShare(1), 1e-6);
	}

	@Test
	void agreesWithTheHandbookOnLoadings() {
		double[][] expected = { { .642005, .686362, -.341669 }, { .384672, .097130, .917929 },
				{ -.663217, .720745, .201666 } };
		for (int c = 0; c < 3; c++) {
			assertArrayEquals(expected[c], loadings(standardised, c), 1e-6);
		}
	}

	@Test
	void agreesWithTheHandbookOnCommunalities() {
		// Printed .8662 .8420 .9876.
		double[] expected = { .866217, .842002, .987630 };
		for (int j = 0; j < 3; j++) {
			double communality = 0;
			for (int c = 0; c < 2; c++) {
				communality += standardised.variance(c) * Math.pow(standardised.loading(j, c), 2);
			}
			assertEquals(expected[j], communality, 1e-6);
		}
	}

	@Test
	void agreesWithTheHandbookOnScoresOfTheFirstRow() {
		double[] expected = { -.387091, -.655177, .060765 };
		double[] scores = standardised.scores(HANDBOOK[0], 3);
		for (int c = 0; c < 3; c++) {
			// Scaled to unit variance there, and up to sign.
			assertEquals(Math.abs(expected[c]), Math.abs(scores[c]) / Math.sqrt(standardised.variance(c)), 1e-6);
		}
	}

	@Test
	void analysesCovarianceWhereOnlyCentred() {
		assertVariances(1e-6, Pca.of(HANDBOOK, Scaling.CENTRED), 8.273943, 3.676129, .749928);
	}

	@Test
	void findsTheSameFromSparseRows() {
		double[][] rows = levels(200, 12, 5);
		for (Scaling scaling : Scaling.values()) {
			Pca dense = Pca.of(rows, scaling);
			DenseAsSparse sparseRows = new DenseAsSparse(rows);
			Pca sparse = Pca.of(sparseRows, scaling, Workers.inline());
			for (int c = 0; c < 12; c++) {
				assertEquals(dense.variance(c), sparse.variance(c), 1e-8);
				assertArrayEquals(loadings(dense, c), loadings(sparse, c), 1e-8);
			}
			for (int row = 0; row < rows.length; row++) {
				assertArrayEquals(dense.scores(rows[row], 4), sparse.scores(sparseRows, row, 4), 1e-7);
			}
		}
	}

	@Test
	void takesEntriesOfARowInAnyOrder() {
		double[][] rows = levels(60, 6, 8);
		SparseRows forward = new DenseAsSparse(rows);
		SparseRows backward = new SparseRows() {
			@Override
			public int size() {
				return forward.size();
			}

			@Override
			public int columns() {
				return forward.columns();
			}

			@Override
			public int start(int row) {
				return -forward.end(row) + 1;
			}

			@Override
			public int end(int row) {
				return -forward.start(row) + 1;
			}

			@Override
			public int column(int entry) {
				return forward.column(-entry);
			}

			@Override
			public double value(int entry) {
				return forward.value(-entry);
			}
		};
		Pca expected = Pca.of(forward, Scaling.CENTRED, Workers.inline());
		Pca found = Pca.of(backward, Scaling.CENTRED, Workers.inline());
		for (int c = 0; c < 6; c++) {
			assertEquals(expected.variance(c), found.variance(c), 1e-9);
		}
	}

	@Test
	void keepsTheTotalVarianceAndOrthonormalLoadings() {
		double[][] rows = levels(300, 20, 2);
		Pca pca = Pca.of(rows, Scaling.CENTRED);
		double trace = 0;
		double total = 0;
		double shares = 0;
		for (int c = 0; c < 20; c++) {
			int column = c;
			trace += Math.pow(Summary.of(Arrays.stream(rows).mapToDouble(row -> row[column]).toArray()).sd(), 2);
			total += pca.variance(c);
			shares += pca.varianceShare(c);
			assertTrue(c == 0 || pca.variance(c) <= pca.variance(c - 1));
			for (int d = 0; d <= c; d++) {
				double product = 0;
				for (int j = 0; j < 20; j++) {
					product += pca.loading(j, c) * pca.loading(j, d);
				}
				assertEquals(c == d ? 1 : 0, product, 1e-12);
			}
		}
		assertEquals(trace, total, trace * 1e-12);
		assertEquals(1, shares, 1e-12);
	}

	@Test
	void givesUncorrelatedScoresWithTheVariancesItSays() {
		double[][] rows = levels(300, 10, 3);
		Pca pca = Pca.of(rows, Scaling.STANDARDISED);
		double[][] scores = new double[3][300];
		for (int i = 0; i < 300; i++) {
			double[] score = pca.scores(rows[i], 3);
			for (int c = 0; c < 3; c++) {
				scores[c][i] = score[c];
			}
		}
		for (int c = 0; c < 3; c++) {
			assertEquals(0, Summary.of(scores[c]).mean(), 1e-9);
			assertEquals(pca.variance(c), Math.pow(Summary.of(scores[c]).sd(), 2), 1e-9);
		}
		assertEquals(0, Pearson.r(scores[0], scores[1]), 1e-9);
		assertEquals(0, Pearson.r(scores[1], scores[2]), 1e-9);
	}

	@Test
	void makesTheLargestLoadingPositive() {
		Pca pca = Pca.of(levels(100, 9, 4), Scaling.CENTRED);
		for (int c = 0; c < 9; c++) {
			double largest = Arrays.stream(loadings(pca, c)).reduce(0, (a, b) -> Math.abs(b) > Math.abs(a) ? b : a);
			assertTrue(largest > 0);
		}
	}

	@Test
	void toleratesAColumnThatNeverVaries() {
		double[][] rows = { { 1, 5, 2 }, { 2, 5, 1 }, { 3, 5, 4 } };
		Pca pca = Pca.of(rows, Scaling.STANDARDISED);
		assertEquals(0, pca.variance(2), 1e-12);
		assertEquals(2, pca.variance(0) + pca.variance(1), 1e-12);
		assertEquals(5, pca.mean(1), 0);
		assertTrue(Double.isFinite(pca.scores(rows[0], 3)[0]));
	}

	@Test
	void losesNoDigitsOfFullRowsUnderALargeOffset() {
		double[][] shifted = Arrays.stream(HANDBOOK)
				.map(row -> Arrays.stream(row).map(v -> v + 1e9).toArray()).toArray(double[][]::new);
		assertVariances(1e-6, Pca.of(shifted, Scaling.CENTRED), 8.273943, 3.676129, .749928);
	}

	@Test
	void countsComponentsForAShare() {
		assertEquals(1, standardised.componentsFor(0.58));
		assertEquals(2, standardised.componentsFor(0.59));
		assertEquals(2, standardised.componentsFor(0.89));
		assertEquals(3, standardised.componentsFor(1));
	}

	@Test
	void refusesTooLittleAndTooMuch() {
		assertThrows(IllegalArgumentException.class, () -> Pca.of(new double[][] { { 1, 2 } }, Scaling.CENTRED));
		assertThrows(IllegalArgumentException.class, () -> Pca.of(new double[][] { { 1, 2 }, { 1 } }, Scaling.CENTRED));
		assertThrows(IllegalArgumentException.class,
				() -> Pca.of(new double[][] { { 1, 2 }, { Double.NaN, 4 } }, Scaling.CENTRED));
		String message = assertThrows(IllegalArgumentException.class,
				() -> Pca.of(new double[2][Pca.MAX_COLUMNS + 1], Scaling.CENTRED)).getMessage();
		assertTrue(message.contains("2001 columns"), message);
	}

	@Test
	void stopsWhenCancelled() {
		Progress cancelled = new Progress() {
			@Override
			public boolean isCancelled() {
				return true;
			}
		};
		assertThrows(CancellationException.class, () -> Pca.of(new DenseAsSparse(HANDBOOK), Scaling.CENTRED,
				Workers.inline().reportingTo(cancelled)));
	}

	private static void assertVariances(double tolerance, Pca pca, double... expected) {
		for (int c = 0; c < expected.length; c++) {
			assertEquals(expected[c], pca.variance(c), tolerance);
		}
	}

	private static double[] loadings(Pca pca, int component) {
		double[] loadings = new double[pca.columns()];
		for (int j = 0; j < loadings.length; j++) {
			loadings[j] = pca.loading(j, component);
		}
		return loadings;
	}

	/** Levels above the least heard, 0 where not heard, with a common cause behind them. */
	private static double[][] levels(int rows, int columns, int seed) {
		Random random = new Random(seed);
		double[][] levels = new double[rows][columns];
		for (double[] row : levels) {
			double place = columns * random.nextDouble();
			for (int j = 0; j < columns; j++) {
				row[j] = Math.max(0, Math.rint(60 - 12 * Math.abs(j - place) + 4 * random.nextGaussian()));
			}
		}
		return levels;
	}
}
