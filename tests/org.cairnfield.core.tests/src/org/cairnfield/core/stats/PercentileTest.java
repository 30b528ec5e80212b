package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.IntStream;
import org.cairnfield.core.stats.Percentile.Rule;
import org.junit.jupiter.api.Test;

class PercentileTest {

	private static final double[] ONE_TO_TWENTY = IntStream.rangeClosed(1, 20).asDoubleStream().toArray();

	@Test
	void agreesWithTheHandbookExample() {
		// NIST/SEMATECH e-Handbook 7.2.6.2: p(N + 1) = 11.7, printed as 95.1981.
		assertEquals(95.1981, Percentile.of(Published.HANDBOOK_PERCENTILES, 90), 5e-5);
		assertEquals(95.19807, Percentile.of(Published.HANDBOOK_PERCENTILES, 90), 1e-9);
	}

	@Test
	void rulesDifferAsHyndmanAndFanDefineThem() {
		// Data of the e-Handbook 7.2.6.2; values from the definitions in Hyndman & Fan 1996.
		assertRule(Rule.HYNDMAN_FAN_6, 95.10975, 95.1579, 95.189575, 95.19807, 95.1990);
		assertRule(Rule.HYNDMAN_FAN_7, 95.11625, 95.1579, 95.181325, 95.19568, 95.197295);
		assertRule(Rule.NEAREST_RANK, 95.1065, 95.1567, 95.1772, 95.1959, 95.1990);
	}

	private static void assertRule(Rule rule, double... expected) {
		assertArrayEquals(expected, Percentile.of(rule, Published.HANDBOOK_PERCENTILES, 25, 50, 75, 90, 95), 1e-9,
				rule.title());
	}

	@Test
	void showsHowMuchTheRuleMattersForTwentyValues() {
		assertEquals(19.95, Percentile.of(ONE_TO_TWENTY, 95), 1e-9);
		assertEquals(19.05, Percentile.of(Rule.HYNDMAN_FAN_7, ONE_TO_TWENTY, 95)[0], 1e-9);
		assertEquals(19, Percentile.of(Rule.NEAREST_RANK, ONE_TO_TWENTY, 95)[0], 0);
		assertEquals(10.5, Percentile.of(ONE_TO_TWENTY, 50), 1e-9);
		assertEquals(10, Percentile.of(Rule.NEAREST_RANK, ONE_TO_TWENTY, 50)[0], 0);
	}

	@Test
	void leavesTheValuesInTheirOrder() {
		double[] values = { 3, 1, 2 };
		Percentile.of(values, 50);
		assertArrayEquals(new double[] { 3, 1, 2 }, values);
	}

	@Test
	void handlesOneValueAndNone() {
		assertEquals(7, Percentile.of(new double[] { 7 }, 95), 0);
		assertEquals(Double.NaN, Percentile.of(new double[0], 50));
	}

	@Test
	void refusesNaNAndPercentsOutOfRange() {
		assertThrows(IllegalArgumentException.class, () -> Percentile.of(new double[] { 1, Double.NaN }, 50));
		assertThrows(IllegalArgumentException.class, () -> Percentile.of(ONE_TO_TWENTY, 0));
		assertThrows(IllegalArgumentException.class, () -> Percentile.of(ONE_TO_TWENTY, 100.1));
		assertThrows(IllegalArgumentException.class, () -> Percentile.of(new double[0], Double.NaN));
	}
}
