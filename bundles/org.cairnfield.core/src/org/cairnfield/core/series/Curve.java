package org.cairnfield.core.series;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Curves made of many values, thinned so that they can be drawn: at most {@link #MOST_POINTS} points, all
 * of them of the full curve, chosen so that neither a jump nor a flat stretch is lost.
 */
public final class Curve {

	/** The most points of a curve made here. */
	public static final int MOST_POINTS = 1000;

	/** Two ends a band, bands along x and along y, and room for a starting point. */
	private static final int BANDS = MOST_POINTS / 4 - 1;

	private Curve() {
	}

	/**
	 * The empirical distribution: at x the share of the values that are at most x. It is a step function:
	 * y holds from one x to the next. It begins at (0, 0), or at the smallest value where that is negative.
	 *
	 * @param values in any order, all finite; for none the series is empty
	 * @return x in the unit of the values, y from 0 to 1
	 * @throws IllegalArgumentException for a value that is not finite
	 */
	public static Series distribution(String name, double[] values) {
		double[] sorted = sorted(name, values);
		int n = sorted.length;
		if (n == 0) {
			return new Series(name, sorted, sorted);
		}
		double[] x = new double[n + 1];
		double[] y = new double[n + 1];
		x[0] = Math.min(0, sorted[0]);
		int points = 1;
		for (int i = 0; i < n; i++) {
			if (i + 1 == n || sorted[i + 1] != sorted[i]) {
				x[points] = sorted[i];
				y[points++] = (i + 1) / (double) n;
			}
		}
		return thinned(name, Arrays.copyOf(x, points), Arrays.copyOf(y, points));
	}

	/**
	 * The values in ascending order over their rank 1 … n, such as a sorted k-distance curve.
	 *
	 * @param values in any order, all finite
	 * @return x the rank, y in the unit of the values
	 * @throws IllegalArgumentException for a value that is not finite
	 */
	public static Series ascending(String name, double[] values) {
		double[] sorted = sorted(name, values);
		double[] rank = new double[sorted.length];
		for (int i = 0; i < rank.length; i++) {
			rank[i] = i + 1;
		}
		return thinned(name, rank, sorted);
	}

	private static double[] sorted(String what, double[] values) {
		double[] sorted = values.clone();
		Arrays.sort(sorted);
		// Sorting puts NaN last.
		if (sorted.length > 0 && !(Double.isFinite(sorted[0]) && Double.isFinite(sorted[sorted.length - 1]))) {
			throw new IllegalArgumentException("no curve \"" + what + "\" of values that are not finite");
		}
		return sorted;
	}

	/** Both coordinates ascend. */
	private static Series thinned(String name, double[] x, double[] y) {
		if (x.length <= MOST_POINTS) {
			return new Series(name, x, y);
		}
		BitSet kept = new BitSet(x.length);
		keepEndsOfBands(x, kept);
		keepEndsOfBands(y, kept);
		int[] chosen = kept.stream().toArray();
		return new Series(name, Arrays.stream(chosen).mapToDouble(i -> x[i]).toArray(),
				Arrays.stream(chosen).mapToDouble(i -> y[i]).toArray());
	}

	/**
	 * Cuts the range into equal bands and keeps the first and last point in each. Whatever spans more than a
	 * band has points kept on both sides of it.
	 */
	private static void keepEndsOfBands(double[] ascending, BitSet kept) {
		int last = ascending.length - 1;
		double width = (ascending[last] - ascending[0]) / BANDS;
		int previous = -1;
		for (int i = 0; i <= last; i++) {
			int band = width == 0 ? 0 : (int) ((ascending[i] - ascending[0]) / width);
			if (band != previous) {
				kept.set(Math.max(0, i - 1), i + 1);
				previous = band;
			}
		}
		kept.set(last);
	}
}
