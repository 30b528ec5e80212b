package org.cairnfield.core.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.cairnfield.core.cluster.Kneedle.Knee;
import org.cairnfield.core.cluster.Kneedle.Shape;
import org.junit.jupiter.api.Test;

class KneedleTest {

	/** The worked example usual for Kneedle, y = 5 - 1 / (x + 0.1) on [0, 1]; its knee lies at √0.11 - 0.1. */
	private static final DoubleUnaryOperator SATURATING = x -> 5 - 1 / (x + 0.1);
	private static final NormalDistribution NORMAL = new NormalDistribution(50, 10);

	@Test
	void findsTheKneeOfTenPoints() {
		Knee knee = find(grid(10, 0, 1), SATURATING, Shape.CONCAVE_INCREASING).orElseThrow();
		assertEquals(2, knee.index());
		assertEquals(2 / 9.0, knee.x(), 1e-12);
		assertEquals(1.896552, knee.y(), 1e-6);
		assertEquals(0.536398, knee.difference(), 1e-6);
		assertEquals(0.425287, knee.threshold(), 1e-6);
		assertEquals(5, knee.confirmedAt());
	}

	@Test
	void comesWithinHalfAStepOfTheAnalyticKnee() {
		for (int points : new int[] { 11, 101, 1001, 100_001 }) {
			Knee knee = find(grid(points, 0, 1), SATURATING, Shape.CONCAVE_INCREASING).orElseThrow();
			assertEquals(0.2316624790, knee.x(), 0.5 / (points - 1));
		}
		Knee fine = find(grid(100_001, 0, 1), SATURATING, Shape.CONCAVE_INCREASING).orElseThrow();
		assertEquals(0.5366750419, fine.difference(), 1e-8);
		assertEquals(1.9848865542, fine.y(), 1e-4);
	}

	@Test
	void findsMirroredKneesInAllFourShapes() {
		double[] x = grid(10, 0, 1);
		assertEquals(2, find(x, SATURATING, Shape.CONCAVE_INCREASING).orElseThrow().index());
		assertEquals(2, find(x, t -> -SATURATING.applyAsDouble(t), Shape.CONVEX_DECREASING).orElseThrow().index());
		assertEquals(7, find(x, t -> SATURATING.applyAsDouble(1 - t), Shape.CONCAVE_DECREASING).orElseThrow().index());
		Knee last = find(x, t -> -SATURATING.applyAsDouble(1 - t), Shape.CONVEX_INCREASING).orElseThrow();
		assertEquals(7, last.index());
		assertEquals(0.536398, last.difference(), 1e-6);
	}

	@Test
	void dependsOnTheRangeForANormalCurve() {
		// Where the density equals the mean slope; not at mean + one s.d. = 60, which is often quoted.
		double[][] kneeByRange = { { 20, 80, 63.23272 }, { 10, 90, 65.23526 }, { 0, 100, 66.63519 } };
		for (double[] expected : kneeByRange) {
			double[] x = grid(100_001, expected[0], expected[1]);
			Knee knee = find(x, NORMAL::cumulativeProbability, Shape.CONCAVE_INCREASING).orElseThrow();
			assertEquals(expected[2], knee.x(), 0.5 * (x[1] - x[0]) + 5e-6);
		}
	}

	@Test
	void findsTheLargestDifferenceOfSortedRandomValues() {
		// Mean 63.6, s.d. 1.3 over many draws of 1000, computed independently.
		Random random = new Random(41);
		double sum = 0;
		for (int draw = 0; draw < 100; draw++) {
			double[] x = IntStream.range(0, 1000).mapToDouble(i -> 50 + 10 * random.nextGaussian()).sorted().toArray();
			double[] rank = grid(1000, 0, 1);
			sum += Kneedle.find(x, rank, 1, Shape.CONCAVE_INCREASING).orElseThrow().x();
		}
		assertEquals(63.6, sum / 100, 0.4);
	}

	@Test
	void findsKneesOfConvexCurvesAnalytically() {
		double[] x = grid(10_001, 0, 1);
		assertEquals(0.5, convex(x, t -> t * t).x(), 1e-4);
		assertEquals(0.25, convex(x, t -> t * t).difference(), 1e-8);
		assertEquals(Math.cbrt(0.25), convex(x, t -> t * t * t * t).x(), 1e-4);
		assertEquals(1.1 - Math.sqrt(0.11), convex(x, t -> 1 / (1.1 - t)).x(), 1e-4);
		assertEquals(7, convex(grid(10, 0, 1), t -> 1 / (1.1 - t)).index());
	}

	@Test
	void findsTheElbowOfSortedDistances() {
		double[] distances = { 1, 1, 1.1, 1.1, 1.2, 1.2, 1.3, 1.4, 1.6, 2, 3.5, 6, 9, 12 };
		Knee elbow = Kneedle.find(grid(14, 0, 13), distances, 1, Shape.CONVEX_INCREASING).orElseThrow();
		assertEquals(9, elbow.index());
		assertEquals(2.0, elbow.y(), 0);
		assertEquals(0.601399, elbow.difference(), 1e-6);
		assertTrue(Kneedle.find(grid(14, 0, 13), distances, 1, Shape.CONCAVE_INCREASING).isEmpty());
	}

	@Test
	void findsNoKneeInAStraightLine() {
		double[] x = grid(1000, 3, 7.1);
		for (Shape shape : Shape.values()) {
			boolean rises = shape.name().endsWith("_INCREASING");
			double[] y = Arrays.stream(x).map(t -> (rises ? 0.3 : -0.3) * t + 0.1).toArray();
			assertTrue(Kneedle.find(x, y, 0, shape).isEmpty(), shape.name());
			assertTrue(Kneedle.firstConfirmed(x, y, 0, shape).isEmpty(), shape.name());
		}
	}

	@Test
	void findsNoKneeInAConstant() {
		assertTrue(find(grid(20, 0, 1), t -> 4, Shape.CONVEX_INCREASING).isEmpty());
	}

	@Test
	void asksForAMorePronouncedKneeTheHigherTheSensitivity() {
		double[] x = grid(10, 0, 1);
		double[] y = Arrays.stream(x).map(SATURATING).toArray();
		// It must fall by S/9 from 0.536 and ends at 0.
		assertEquals(9, Kneedle.find(x, y, 4.8, Shape.CONCAVE_INCREASING).orElseThrow().confirmedAt());
		assertTrue(Kneedle.find(x, y, 4.9, Shape.CONCAVE_INCREASING).isEmpty());
	}

	@Test
	void firstConfirmedStopsAtTheFirstOfTwoKnees() {
		// Two rises, each then flat; the second is the larger departure from the diagonal.
		double[] x = grid(11, 0, 10);
		double[] y = { 0, 2, 2, 2, 2, 7.5, 9, 9.5, 9.7, 9.9, 10 };
		assertEquals(1, Kneedle.firstConfirmed(x, y, 1, Shape.CONCAVE_INCREASING).orElseThrow().index());
		assertEquals(2.0 / 10 - 1.0 / 10, Kneedle.firstConfirmed(x, y, 1, Shape.CONCAVE_INCREASING).orElseThrow()
				.difference(), 1e-12);
		assertEquals(6, Kneedle.find(x, y, 1, Shape.CONCAVE_INCREASING).orElseThrow().index());
	}

	@Test
	void firstConfirmedDropsACandidateWhenTheCurveTurnsUpAgain() {
		double[] x = grid(11, 0, 10);
		// Differences 0 .2 .1 .4 .3 .2 …: from the first maximum the fall of 1.5 steps is not reached.
		double[] y = { 0, 3, 3, 7, 7, 7, 7.5, 8, 8.5, 9, 10 };
		Knee first = Kneedle.firstConfirmed(x, y, 1.5, Shape.CONCAVE_INCREASING).orElseThrow();
		assertEquals(3, first.index());
		assertEquals(5, first.confirmedAt());
	}

	@Test
	void isNotMisledByStepsOfWholeNumbers() {
		// A convex curve rounded to whole distances, as city-block distances of whole levels are.
		double[] x = grid(5000, 0, 1);
		double[] y = Arrays.stream(x).map(t -> Math.rint(40 + 400 * Math.pow(t, 8))).toArray();
		double expected = Math.pow(1 / 8.0, 1 / 7.0);
		assertEquals(expected, Kneedle.find(x, y, 1, Shape.CONVEX_INCREASING).orElseThrow().x(), 0.02);
		assertTrue(Kneedle.firstConfirmed(x, y, 1, Shape.CONVEX_INCREASING).orElseThrow().x() < expected - 0.1);
	}

	@Test
	void refusesWhatIsNoCurve() {
		double[] three = { 0, 1, 2 };
		assertThrows(IllegalArgumentException.class, () -> usual(new double[] { 0, 1 }, new double[] { 0, 1 }));
		assertThrows(IllegalArgumentException.class, () -> usual(three, new double[] { 0, 1 }));
		assertThrows(IllegalArgumentException.class, () -> usual(new double[] { 0, 2, 1 }, three));
		assertThrows(IllegalArgumentException.class, () -> usual(new double[] { 1, 1, 1 }, three));
		assertThrows(IllegalArgumentException.class, () -> usual(three, new double[] { 0, Double.NaN, 1 }));
		assertThrows(IllegalArgumentException.class,
				() -> Kneedle.find(three, three, -1, Shape.CONVEX_INCREASING));
	}

	private static Optional<Knee> usual(double[] x, double[] y) {
		return Kneedle.find(x, y, Kneedle.USUAL_SENSITIVITY, Shape.CONVEX_INCREASING);
	}

	private static Optional<Knee> find(double[] x, DoubleUnaryOperator y, Shape shape) {
		return Kneedle.find(x, Arrays.stream(x).map(y).toArray(), Kneedle.USUAL_SENSITIVITY, shape);
	}

	private static Knee convex(double[] x, DoubleUnaryOperator y) {
		return find(x, y, Shape.CONVEX_INCREASING).orElseThrow();
	}

	private static double[] grid(int points, double from, double to) {
		return IntStream.range(0, points).mapToDouble(i -> from + (to - from) * i / (points - 1)).toArray();
	}
}
