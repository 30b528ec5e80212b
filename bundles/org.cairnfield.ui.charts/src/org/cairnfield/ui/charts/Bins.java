package org.cairnfield.ui.charts;

import java.util.Arrays;

/** Counts of values in bins of one width, whose edges are whole multiples of it. A value on an edge belongs above. */
public final class Bins {

	private static final int MOST = 100_000;

	private final double width;
	private final long first;
	private final int[] counts;

	private Bins(double width, long first, int[] counts) {
		this.width = width;
		this.first = first;
		this.counts = counts;
	}

	/**
	 * @param values in any order; what is not finite is left out
	 * @param width  of a bin, in their unit
	 * @throws IllegalArgumentException where the width is not above 0, or would make more than 100,000 bins
	 */
	public static Bins of(double[] values, double width) {
		if (!(width > 0)) {
			throw new IllegalArgumentException("no bins of width " + width);
		}
		double[] finite = Arrays.stream(values).filter(Double::isFinite).toArray();
		if (finite.length == 0) {
			return new Bins(width, 0, new int[0]);
		}
		long low = (long) Math.floor(Arrays.stream(finite).min().getAsDouble() / width);
		long high = (long) Math.floor(Arrays.stream(finite).max().getAsDouble() / width);
		if (high - low >= MOST) {
			throw new IllegalArgumentException("bins of width " + width + " would be too many");
		}
		int[] counts = new int[(int) (high - low + 1)];
		for (double value : finite) {
			counts[(int) ((long) Math.floor(value / width) - low)]++;
		}
		return new Bins(width, low, counts);
	}

	/** How many, empty ones between others included. */
	public int size() {
		return counts.length;
	}

	/** Lower edge of a bin; of the one after the last, the upper edge of that. */
	public double edge(int bin) {
		return (first + bin) * width;
	}

	/** How many values lie in a bin. */
	public int count(int bin) {
		return counts[bin];
	}

	/** How many lie in the fullest. */
	public int most() {
		return Arrays.stream(counts).max().orElse(0);
	}

	/** How many values there are. */
	public int total() {
		return Arrays.stream(counts).sum();
	}
}
