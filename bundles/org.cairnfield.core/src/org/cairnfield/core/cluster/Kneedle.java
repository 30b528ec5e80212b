package org.cairnfield.core.cluster;

import java.io.Serializable;
import java.util.Optional;

/**
 * Finds the point of a curve beyond which going on pays less: Satopaa, Albrecht, Irwin &amp; Raghavan,
 * "Finding a 'Kneedle' in a Haystack", ICDCS Workshops 2011. Both axes are scaled to [0, 1], and the knee
 * is where the curve is farthest from the diagonal. The answer depends on the range of x given: for a
 * normal distribution's integral it is not mean + one standard deviation, as is often said. The paper's
 * smoothing is left out: sorted values need none.
 */
public final class Kneedle {

	/** The sensitivity that the paper proposes for use while values arrive. */
	public static final double USUAL_SENSITIVITY = 1;

	/** A straight line is this far from the diagonal at most, by rounding. */
	private static final double STRAIGHT = 1e-12;

	/** How a curve bends and whether it rises; a sorted k-distance curve is {@link #CONVEX_INCREASING}. */
	public enum Shape {
		/** Rises fast, then slowly. */
		CONCAVE_INCREASING,
		/** Rises slowly, then fast. */
		CONVEX_INCREASING,
		/** Falls slowly, then fast. */
		CONCAVE_DECREASING,
		/** Falls fast, then slowly. */
		CONVEX_DECREASING;

		private double difference(double x, double y) {
			return switch (this) {
			case CONCAVE_INCREASING -> y - x;
			case CONVEX_INCREASING -> x - y;
			case CONCAVE_DECREASING -> x + y - 1;
			case CONVEX_DECREASING -> 1 - x - y;
			};
		}
	}

	/**
	 * A knee.
	 *
	 * @param index       of the point among those given
	 * @param x           as given
	 * @param y           as given
	 * @param difference  from the diagonal, both axes scaled to [0, 1]
	 * @param threshold   what the difference had to fall below
	 * @param confirmedAt index of the first later point where it did
	 */
	public record Knee(int index, double x, double y, double difference, double threshold, int confirmedAt)
			implements Serializable {
	}

	private Kneedle() {
	}

	/**
	 * The knee of a whole curve: the point of largest difference, the first of equals, if the difference
	 * falls below the threshold after it. Small steps on the way, such as whole-number distances make, do
	 * not count as knees.
	 *
	 * @param x           ascending, finite, at least three, not all the same
	 * @param y           as many, finite
	 * @param sensitivity S of the paper, 0 or more: the difference has to fall by S mean steps of x; the
	 *                    larger, the more pronounced a knee has to be
	 * @return empty for a straight line, a constant one, and where the knee is not pronounced enough
	 * @throws IllegalArgumentException for arguments other than described
	 */
	public static Optional<Knee> find(double[] x, double[] y, double sensitivity, Shape shape) {
		double[] difference = differences(x, y, sensitivity, shape);
		int top = 0;
		for (int i = 1; i < difference.length; i++) {
			if (difference[i] > difference[top]) {
				top = i;
			}
		}
		double threshold = difference[top] - fall(x.length, sensitivity);
		for (int i = top + 1; difference[top] > STRAIGHT && i < difference.length; i++) {
			if (difference[i] < threshold) {
				return Optional.of(new Knee(top, x[top], y[top], difference[top], threshold, i));
			}
		}
		return Optional.empty();
	}

	/**
	 * The first knee that is confirmed as the curve is read from the left: a local maximum of the difference
	 * counts if the difference falls below its threshold before it reaches another maximum. On stepped or
	 * noisy curves this answers early; {@link #find} is for those.
	 *
	 * @see #find for arguments and errors
	 */
	public static Optional<Knee> firstConfirmed(double[] x, double[] y, double sensitivity, Shape shape) {
		double[] difference = differences(x, y, sensitivity, shape);
		int candidate = -1;
		int top = 0;
		for (int i = 1; i < difference.length; i++) {
			if (difference[i] > difference[i - 1]) {
				top = i;
				continue;
			}
			if (difference[i] < difference[i - 1] && difference[top] > STRAIGHT) {
				candidate = top;
			}
			if (candidate >= 0) {
				double threshold = difference[candidate] - fall(x.length, sensitivity);
				if (difference[i] < threshold) {
					return Optional.of(new Knee(candidate, x[candidate], y[candidate], difference[candidate],
							threshold, i));
				}
			}
		}
		return Optional.empty();
	}

	private static double fall(int points, double sensitivity) {
		return sensitivity / (points - 1);
	}

	private static double[] differences(double[] x, double[] y, double sensitivity, Shape shape) {
		int n = x.length;
		if (n < 3 || y.length != n) {
			throw new IllegalArgumentException("a curve needs three points at least, as many x as y; had " + n
					+ " and " + y.length);
		}
		if (!(sensitivity >= 0)) {
			throw new IllegalArgumentException("sensitivity must be 0 or more, was " + sensitivity);
		}
		double lowest = y[0];
		double highest = y[0];
		for (int i = 0; i < n; i++) {
			if (!Double.isFinite(x[i]) || !Double.isFinite(y[i]) || i > 0 && x[i] < x[i - 1]) {
				throw new IllegalArgumentException("point " + i + " is not finite or x descends");
			}
			lowest = Math.min(lowest, y[i]);
			highest = Math.max(highest, y[i]);
		}
		double width = x[n - 1] - x[0];
		double height = highest - lowest;
		if (width == 0) {
			throw new IllegalArgumentException("all x are " + x[0]);
		}
		double[] difference = new double[n];
		for (int i = 0; height > 0 && i < n; i++) {
			difference[i] = shape.difference((x[i] - x[0]) / width, (y[i] - lowest) / height);
		}
		return difference;
	}
}
