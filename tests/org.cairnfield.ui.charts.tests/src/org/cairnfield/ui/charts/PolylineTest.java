package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;

import org.cairnfield.core.series.Series;
import org.cairnfield.ui.charts.scale.Scale;
import org.eclipse.swt.graphics.Rectangle;
import org.junit.jupiter.api.Test;

class PolylineTest {

	private static final Rectangle PLOT = new Rectangle(10, 20, 100, 50);

	@Test
	void putsPointsWhereTheScalesSay() {
		Polyline line = of(new double[] { 0, 5, 10 }, new double[] { 0, 1, 0.5 }, Scale.linear(0, 10),
				Scale.linear(0, 1), PLOT);
		assertEquals(3, line.size());
		assertEquals(10, line.x(0), 1e-4);
		assertEquals(70, line.y(0), 1e-4);
		assertEquals(60, line.x(1), 1e-4);
		assertEquals(20, line.y(1), 1e-4);
		assertEquals(110, line.x(2), 1e-4);
	}

	@Test
	void keepsAtMostFourPointsAPixel() {
		Polyline line = noisy(20_000);
		assertTrue(line.size() <= 4 * (PLOT.width + 1), line.size() + " points");
	}

	@Test
	void keepsTheExtremesOfEachPixel() {
		double[] x = IntStream.range(0, 20_000).asDoubleStream().toArray();
		double[] y = new Random(2).doubles(20_000).toArray();
		Polyline line = noisy(20_000);
		double[] low = new double[PLOT.width + 1];
		double[] high = new double[PLOT.width + 1];
		for (int i = 0; i < x.length; i++) {
			int pixel = (int) Math.floor(x[i] / 19_999 * PLOT.width);
			low[pixel] = Math.max(low[pixel], 1 - y[i]);
			high[pixel] = Math.max(high[pixel], y[i]);
		}
		double[] drawnLow = new double[PLOT.width + 1];
		double[] drawnHigh = new double[PLOT.width + 1];
		for (int i = 0; i < line.size(); i++) {
			int pixel = (int) Math.floor(line.x(i)) - PLOT.x;
			double value = 1 - (line.y(i) - PLOT.y) / PLOT.height;
			drawnLow[pixel] = Math.max(drawnLow[pixel], 1 - value);
			drawnHigh[pixel] = Math.max(drawnHigh[pixel], value);
		}
		for (int pixel = 0; pixel <= PLOT.width; pixel++) {
			assertEquals(low[pixel], drawnLow[pixel], 1e-4, "low at " + pixel);
			assertEquals(high[pixel], drawnHigh[pixel], 1e-4, "high at " + pixel);
		}
	}

	private static Polyline of(double[] x, double[] y, Scale xScale, Scale yScale, Rectangle plot) {
		return Polyline.of(new Series("s", x, y), 1, 1, xScale, yScale, plot);
	}

	private static Polyline noisy(int points) {
		return of(IntStream.range(0, points).asDoubleStream().toArray(), new Random(2).doubles(points).toArray(),
				Scale.linear(0, points - 1), Scale.linear(0, 1), PLOT);
	}

	@Test
	void whatHasNoPlaceMakesAGap() {
		Polyline line = of(new double[] { 1, 2, 3, 4 }, new double[] { 1, Double.NaN, 0, 1 }, Scale.linear(0, 4),
				Scale.linear(0, 1), PLOT);
		assertEquals(4, line.size());
		assertTrue(line.isGap(1));
	}

	@Test
	void stepsHoldUntilTheNextPoint() {
		Polyline steps = of(new double[] { 0, 5, 10 }, new double[] { 0, 1, 1 }, Scale.linear(0, 10),
				Scale.linear(0, 1), PLOT).stepped();
		assertEquals(5, steps.size());
		assertEquals(60, steps.x(1), 1e-4);
		assertEquals(70, steps.y(1), 1e-4);
	}
}
