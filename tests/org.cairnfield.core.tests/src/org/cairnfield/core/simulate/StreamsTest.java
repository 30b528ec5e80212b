package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

class StreamsTest {

	@Test
	void valuesHangFromTheirKeyAlone() {
		long key = Streams.key(Streams.key(7, "noise"), 12);
		assertEquals(Streams.gaussian(key), Streams.gaussian(key), 0);
		assertNotEquals(Streams.gaussian(key), Streams.gaussian(Streams.key(Streams.key(7, "noise"), 13)));
		assertNotEquals(Streams.key(7, "ab"), Streams.key(7, "ba"));
		assertNotEquals(Streams.key(7, "a"), Streams.key(8, "a"));
	}

	// Moments of the standard normal law: 0, 1, skewness 0, excess 0; five standard errors allowed for.
	@Test
	void gaussiansOfNeighbouringKeysAreNormalAndIndependent() {
		int n = 40_000;
		double[] first = new double[n];
		double[] next = new double[n];
		SummaryStatistics sums = new SummaryStatistics();
		double cubes = 0;
		double fourths = 0;
		for (int i = 0; i < n; i++) {
			first[i] = Streams.gaussian(Streams.key(3, i));
			next[i] = Streams.gaussian(Streams.key(3, i + 1));
			sums.addValue(first[i]);
			cubes += Math.pow(first[i], 3) / n;
			fourths += Math.pow(first[i], 4) / n;
		}
		assertEquals(0, sums.getMean(), 5 / Math.sqrt(n));
		assertEquals(1, sums.getStandardDeviation(), 5 / Math.sqrt(2 * n));
		assertEquals(0, cubes, 5 * Math.sqrt(15.0 / n));
		assertEquals(3, fourths, 5 * Math.sqrt(96.0 / n));
		assertEquals(0, new PearsonsCorrelation().correlation(first, next), 5 / Math.sqrt(n));
	}

	@Test
	void uniformsFillTheUnitInterval() {
		int[] bins = new int[10];
		for (int i = 0; i < 10_000; i++) {
			bins[(int) (10 * Streams.uniform(Streams.key(5, i)))]++;
		}
		for (int bin : bins) {
			assertEquals(1000, bin, 150);
		}
	}
}
