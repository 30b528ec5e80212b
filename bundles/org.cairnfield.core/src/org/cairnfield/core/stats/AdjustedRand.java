package org.cairnfield.core.stats;

import java.util.HashMap;
import java.util.Map;

/**
 * How far two clusterings of the same samples agree, corrected for chance: Hubert &amp; Arabie, "Comparing
 * partitions", Journal of Classification 2 (1985). 1 for the same partition whatever the labels are
 * called, about 0 for unrelated ones, below 0 for less agreement than chance would give.
 */
public final class AdjustedRand {

	/** What becomes of noise, the samples with a negative label. */
	public enum Noise {
		/** All noise is one class, compared like any cluster. */
		ONE_CLASS,
		/** A sample that is noise in either clustering is left out of the comparison. */
		LEFT_OUT
	}

	private AdjustedRand() {
	}

	/** The index with noise as {@link Noise#ONE_CLASS}. */
	public static double index(int[] a, int[] b) {
		return index(a, b, Noise.ONE_CLASS);
	}

	/**
	 * @param a a label for each sample; any negative one means noise
	 * @param b likewise, for the same samples in the same order
	 * @return at most 1; NaN where fewer than two samples are compared. Where both put all samples in one
	 *         cluster, or both put each in its own, it is 1 by convention
	 * @throws IllegalArgumentException where the lengths differ
	 */
	public static double index(int[] a, int[] b, Noise noise) {
		if (a.length != b.length) {
			throw new IllegalArgumentException("lengths differ: " + a.length + " and " + b.length);
		}
		Map<Integer, Long> rows = new HashMap<>();
		Map<Integer, Long> columns = new HashMap<>();
		Map<Long, Long> cells = new HashMap<>();
		long n = 0;
		for (int i = 0; i < a.length; i++) {
			if (noise == Noise.LEFT_OUT && (a[i] < 0 || b[i] < 0)) {
				continue;
			}
			int row = Math.max(a[i], -1);
			int column = Math.max(b[i], -1);
			n++;
			rows.merge(row, 1L, Long::sum);
			columns.merge(column, 1L, Long::sum);
			cells.merge((long) row << 32 | column & 0xffffffffL, 1L, Long::sum);
		}
		if (n < 2) {
			return Double.NaN;
		}
		long inRows = pairs(rows);
		long inColumns = pairs(columns);
		double together = pairs(cells);
		double all = n * (n - 1) / 2;
		if (inRows == inColumns && (inRows == 0 || inRows == all)) {
			return 1;
		}
		double expected = (double) inRows * inColumns / all;
		double most = 0.5 * ((double) inRows + inColumns);
		return (together - expected) / (most - expected);
	}

	private static long pairs(Map<?, Long> counts) {
		long sum = 0;
		for (long count : counts.values()) {
			sum += count * (count - 1) / 2;
		}
		return sum;
	}
}
