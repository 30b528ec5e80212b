package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Certified values: NIST Statistical Reference Datasets, univariate summary statistics. */
class SummaryTest {

	@Test
	void reproducesMichelso() {
		assertSummary(100, 299.8524, 0.0790105478190518, 1e-12, Published.MICHELSO);
	}

	@Test
	void reproducesMavro() {
		assertSummary(50, 2.001856, 0.000429123454003053, 1e-12, Published.MAVRO);
	}

	@Test
	void reproducesNumAccOneExactly() {
		Summary summary = Summary.of(new double[] { 10000001, 10000003, 10000002 });
		assertEquals(new Summary(3, 10000002, 1, 10000001, 10000003), summary);
	}

	@Test
	void reproducesNumAccTwo() {
		assertSummary(1001, 1.2, 0.1, 1e-13, Published.numAcc(1));
	}

	@Test
	void keepsTheSpreadUnderALargeOffset() {
		// NumAcc3 and NumAcc4: the one-pass sum of squares fails here, with a negative variance on the second.
		assertSummary(1001, 1000000.2, 0.1, 1e-9, Published.numAcc(1000000));
		assertSummary(1001, 10000000.2, 0.1, 1e-8, Published.numAcc(10000000));
	}

	@Test
	void saysNaNWhereNothingIsDefined() {
		assertEquals(new Summary(0, Double.NaN, Double.NaN, Double.NaN, Double.NaN), Summary.of(new double[0]));
		assertEquals(new Summary(1, 4, Double.NaN, 4, 4), Summary.of(new double[] { 4 }));
	}

	private static void assertSummary(int n, double mean, double sd, double relative, double[] values) {
		Summary summary = Summary.of(values);
		assertEquals(n, summary.n());
		assertEquals(mean, summary.mean(), mean * 1e-15);
		assertEquals(sd, summary.sd(), sd * relative);
	}
}
