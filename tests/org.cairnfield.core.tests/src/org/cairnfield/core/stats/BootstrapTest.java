package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BootstrapTest {

	@Test
	void isNearTheNormalIntervalForManyValues() {
		double[] values = new Random(1).doubles(2000, 0, 12).toArray();
		Summary summary = Summary.of(values);
		double halfWidth = 1.959964 * summary.sd() / Math.sqrt(summary.n());
		Interval found = Bootstrap.seeded(9).mean(values);
		assertEquals(summary.mean() - halfWidth, found.low(), 0.1 * halfWidth);
		assertEquals(summary.mean() + halfWidth, found.high(), 0.1 * halfWidth);
		assertEquals(0.95, found.confidence(), 0);
	}

	@Test
	void coversTheTrueMeanAboutAsOftenAsItSays() {
		Random random = new Random(2);
		int covered = 0;
		for (int i = 0; i < 400; i++) {
			double[] values = random.doubles(60).toArray();
			covered += new Bootstrap(i, 400, 0.90).mean(values).contains(0.5) ? 1 : 0;
		}
		// 90 % of 400, give or take three standard deviations and the known slight narrowness.
		assertEquals(360, covered, 24);
	}

	@Test
	void answersTheSameForTheSameSeedOnly() {
		double[] values = new Random(3).doubles(50).toArray();
		assertEquals(Bootstrap.seeded(4).mean(values), Bootstrap.seeded(4).mean(values));
		assertNotEquals(Bootstrap.seeded(4).mean(values), Bootstrap.seeded(5).mean(values));
	}

	@Test
	void drawsPairsTogether() {
		double[] denominator = new Random(6).doubles(80, 1, 30).toArray();
		double[] numerator = Arrays.stream(denominator).map(v -> 0.75 * v).toArray();
		Interval found = Bootstrap.seeded(7).ratioOfMeans(numerator, denominator);
		// Drawn apart, the ratio would spread by about a fifth.
		assertEquals(0.75, found.low(), 1e-12);
		assertEquals(0.75, found.high(), 1e-12);
	}

	@Test
	void putsTheRatioBetweenItsBounds() {
		double[] denominator = new Random(8).doubles(300, 1, 5).toArray();
		double[] numerator = new Random(9).doubles(300, 1, 6).toArray();
		double ratio = Summary.of(numerator).mean() / Summary.of(denominator).mean();
		Interval found = Bootstrap.seeded(10).ratioOfMeans(numerator, denominator);
		assertTrue(found.low() < ratio - 0.02 && ratio + 0.02 < found.high(), found::toString);
		assertTrue(found.high() - found.low() < 0.4, found::toString);
	}

	@Test
	void narrowsWithLessConfidence() {
		double[] values = new Random(11).doubles(100).toArray();
		Interval wide = new Bootstrap(1, 1000, 0.99).mean(values);
		Interval narrow = new Bootstrap(1, 1000, 0.50).mean(values);
		assertTrue(wide.low() < narrow.low() && narrow.high() < wide.high());
	}

	@Test
	void saysNaNForNoValuesAndRefusesNonsense() {
		assertTrue(Double.isNaN(Bootstrap.seeded(1).mean(new double[0]).low()));
		assertThrows(IllegalArgumentException.class, () -> new Bootstrap(1, 10, 0.95));
		assertThrows(IllegalArgumentException.class, () -> new Bootstrap(1, 1000, 95));
		assertThrows(IllegalArgumentException.class,
				() -> Bootstrap.seeded(1).ratioOfMeans(new double[2], new double[3]));
	}
}
