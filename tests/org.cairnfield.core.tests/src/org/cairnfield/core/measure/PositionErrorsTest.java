package org.cairnfield.core.measure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.cairnfield.core.stats.Percentile;
import org.cairnfield.core.stats.Percentile.Rule;
import org.junit.jupiter.api.Test;

/** Quantities named in ISO/IEC 18305:2016, clause 8; expected values worked by hand from their usual formulae. */
class PositionErrorsTest {

	// x, y, floor of the truth, then of the estimate.
	private static final double[][] TEN = { { 0, 0, 0, 3, 4, 0 }, { 0, 0, 0, 0, 2, 0 }, { 10, 0, 0, 10, 1, 0 },
			{ 10, 5, 0, 9, 5, 0 }, { 0, 5, 0, 0, 8, 0 }, { 5, 5, 1, 5, 5, 1 }, { 5, 0, 1, 8, 4, 0 },
			{ 0, 10, 1, 0, 14, 1 },
			{ 10, 10, 1, 4, 2, 1 }, { 5, 10, 1, 5, 11.5, 1 } };
	private static final Positions TRUTH = positions(0);
	private static final Positions ESTIMATES = positions(3);

	/** West of x = 5 m and east of it count as two sites that share a frame. */
	private static Positions positions(int from) {
		double[] x = Arrays.stream(TEN).mapToDouble(row -> row[from]).toArray();
		return new Positions(x, Arrays.stream(TEN).mapToDouble(row -> row[from + 1]).toArray(),
				Arrays.stream(TEN).mapToInt(row -> (int) row[from + 2]).toArray(),
				Arrays.stream(x).mapToInt(metres -> metres < 5 ? 0 : 1).toArray());
	}

	private static Positions onOneFloor(double[] x, double[] y) {
		return new Positions(x, y, new int[x.length], new int[x.length]);
	}

	@Test
	void measuresTenPointsInThePlane() {
		PositionErrors errors = PositionErrors.of(ESTIMATES, TRUTH);
		assertArrayEquals(new double[] { 5, 2, 1, 1, 3, 0, 5, 4, 10, 1.5 }, errors.errorsMetres(), 1e-12);
		assertEquals(10, errors.n());
		assertEquals(3.25, errors.meanMetres(), 1e-9);
		assertEquals(4.2807709586, errors.rmseMetres(), 1e-9);
		assertEquals(2.9368350311, errors.sdMetres(), 1e-9);
		assertEquals(10, errors.maxMetres(), 0);
	}

	@Test
	void measuresBiasAndCovariance() {
		PositionErrors errors = PositionErrors.of(ESTIMATES, TRUTH);
		assertEquals(-0.1, errors.biasXMetres(), 1e-9);
		assertEquals(1.15, errors.biasYMetres(), 1e-9);
		assertEquals(1.1543396381, errors.biasMetres(), 1e-9);
		assertEquals(5.49, errors.varianceXSquareMetres(), 1e-9);
		assertEquals(7.315, errors.covarianceXySquareMetres(), 1e-9);
		assertEquals(11.5025, errors.varianceYSquareMetres(), 1e-9);
	}

	@Test
	void countsRightFloorsAndSites() {
		PositionErrors errors = PositionErrors.of(ESTIMATES, TRUTH);
		assertEquals(0.9, errors.floorHitRate(), 1e-12);
		assertEquals(0.9, errors.siteHitRate(), 1e-12);
		assertEquals(0.8, errors.siteAndFloorHitRate(), 1e-12);
		assertEquals(9, errors.floorHits());
		assertEquals(9, errors.siteHits());
		assertEquals(8, errors.siteAndFloorHits());
	}

	@Test
	void takesPercentilesByTheProductsRule() {
		PositionErrors errors = PositionErrors.of(ESTIMATES, TRUTH);
		assertEquals(2.5, errors.medianMetres(), 1e-9);
		assertEquals(2.5, errors.ce50Metres(), 1e-9);
		assertEquals(5, errors.p75Metres(), 1e-9);
		assertEquals(10, errors.p95Metres(), 1e-9);
		assertEquals(10, errors.ce95Metres(), 1e-9);
		// At n = 10 the rule alone decides between 7.75 m and 10 m.
		assertArrayEquals(new double[] { 2, 5, 10 },
				Percentile.of(Rule.NEAREST_RANK, errors.errorsMetres(), 50, 75, 95), 1e-9);
		assertArrayEquals(new double[] { 2.5, 4.75, 7.75 },
				Percentile.of(Rule.HYNDMAN_FAN_7, errors.errorsMetres(), 50, 75, 95), 1e-9);
	}

	@Test
	void takesPercentilesOfOneToTwenty() {
		double[] x = IntStream.rangeClosed(1, 20).asDoubleStream().toArray();
		PositionErrors errors = PositionErrors.of(onOneFloor(x, new double[20]),
				onOneFloor(new double[20], new double[20]));
		assertEquals(19.95, errors.ce95Metres(), 1e-9);
		assertEquals(10.5, errors.ce50Metres(), 1e-9);
		assertEquals(18.9, errors.p90Metres(), 1e-9);
	}

	@Test
	void leavesOutWrongFloorsWhereAsked() {
		PositionErrors errors = PositionErrors.of(ESTIMATES, TRUTH, Horizontal.RIGHT_FLOOR);
		// The seventh is on the wrong floor, the ninth on the wrong side.
		assertArrayEquals(new double[] { 5, 2, 1, 1, 3, 0, 4, 1.5 }, errors.errorsMetres(), 1e-12);
		assertEquals(17.5 / 8, errors.meanMetres(), 1e-12);
		assertEquals(0.9, errors.floorHitRate(), 1e-12);
		assertEquals(10, errors.located());
	}

	@Test
	void leavesOutWrongSitesWhereAsked() {
		PositionErrors errors = PositionErrors.of(ESTIMATES, TRUTH, Horizontal.RIGHT_SITE);
		assertArrayEquals(new double[] { 5, 2, 1, 1, 3, 0, 5, 4, 1.5 }, errors.errorsMetres(), 1e-12);
		assertEquals(5, errors.maxMetres(), 0);
		assertEquals(Horizontal.RIGHT_SITE, errors.horizontal());
	}

	@Test
	void splitsTheSquareErrorIntoBiasAndSpread() {
		Random random = new Random(17);
		Positions truth = onOneFloor(random.doubles(200, 0, 50).toArray(), random.doubles(200, 0, 30).toArray());
		Positions estimates = onOneFloor(random.doubles(200, 5, 60).toArray(), random.doubles(200, 0, 30).toArray());
		PositionErrors errors = PositionErrors.of(estimates, truth);
		assertEquals(Math.pow(errors.rmseMetres(), 2), Math.pow(errors.biasMetres(), 2)
				+ errors.varianceXSquareMetres() + errors.varianceYSquareMetres(), 1e-9);
	}

	@Test
	void hasTheRatiosOfCircularGaussianErrors() {
		// One metre a side: CEP = √(2 ln 2) m, CE95 = √(2 ln 20) m, by the Rayleigh distribution.
		Random random = new Random(23);
		int n = 20_000;
		double[] x = IntStream.range(0, n).mapToDouble(i -> random.nextGaussian()).toArray();
		double[] y = IntStream.range(0, n).mapToDouble(i -> random.nextGaussian()).toArray();
		PositionErrors errors = PositionErrors.of(onOneFloor(x, y), onOneFloor(new double[n], new double[n]));
		assertEquals(1.177410, errors.ce50Metres(), 0.03);
		assertEquals(2.447747, errors.ce95Metres(), 0.05);
	}

	@Test
	void countsPointsWithoutAnEstimateInCoverageOnly() {
		Positions truth = onOneFloor(new double[] { 0, 0, 0, 0 }, new double[] { 0, 0, 0, 0 });
		Positions estimates = new Positions(new double[] { 3, Double.NaN, 0, 0 }, new double[] { 4, 1, 1, Double.NaN },
				new int[4], new int[4]);
		PositionErrors errors = PositionErrors.of(estimates, truth);
		assertEquals(0.5, errors.coverage(), 0);
		assertEquals(4, errors.points());
		assertEquals(2, errors.located());
		assertArrayEquals(new double[] { 5, 1 }, errors.errorsMetres(), 1e-12);
		assertEquals(1, errors.floorHitRate(), 0);
	}

	@Test
	void saysNaNWhereNothingEnters() {
		Positions truth = onOneFloor(new double[] { 1 }, new double[] { 1 });
		Positions elsewhere = new Positions(new double[] { 1 }, new double[] { 2 }, new int[] { 1 }, new int[] { 0 });
		PositionErrors errors = PositionErrors.of(elsewhere, truth, Horizontal.RIGHT_FLOOR);
		assertEquals(0, errors.n());
		assertEquals(0, errors.floorHitRate(), 0);
		for (double figure : new double[] { errors.meanMetres(), errors.rmseMetres(), errors.maxMetres(),
				errors.ce95Metres(), errors.biasMetres(), errors.varianceXSquareMetres() }) {
			assertTrue(Double.isNaN(figure));
		}
	}

	@Test
	void refusesWhatDoesNotMatch() {
		Positions one = onOneFloor(new double[1], new double[1]);
		Positions two = onOneFloor(new double[2], new double[2]);
		Positions unknown = onOneFloor(new double[] { Double.NaN }, new double[1]);
		assertThrows(IllegalArgumentException.class, () -> PositionErrors.of(one, two));
		assertThrows(IllegalArgumentException.class, () -> PositionErrors.of(one, unknown));
		assertThrows(IllegalArgumentException.class,
				() -> new Positions(new double[2], new double[1], new int[2], new int[2]));
		assertThrows(IllegalArgumentException.class,
				() -> onOneFloor(new double[] { Double.POSITIVE_INFINITY }, new double[1]));
	}
}
