package org.cairnfield.core.distance;

import java.util.Arrays;

/**
 * Fingerprints as sparse rows, in the frame of one {@link Signals}: which of its access points each heard
 * and at which step above "not heard". Immutable by custom; the arrays are not handed out.
 */
public final class SignalRows {

	final int[] start;
	final int[] column;
	final byte[] step;
	/** Σ magnitude over all columns, per row. */
	final double[] magnitude;

	SignalRows(int[] start, int[] column, byte[] step, double[] magnitude) {
		this.start = start;
		this.column = column;
		this.step = step;
		this.magnitude = magnitude;
	}

	public int size() {
		return start.length - 1;
	}

	/** First entry of a row; its entries are {@code start(row) … end(row) - 1}, ascending by column. */
	public int start(int row) {
		return start[row];
	}

	public int end(int row) {
		return start[row + 1];
	}

	/** Access point index of an entry. */
	public int column(int entry) {
		return column[entry];
	}

	/** Step of an entry: RSSI − (min − 1), at least 1. */
	public int step(int entry) {
		return step[entry];
	}

	/** Σ of the distance's magnitude over the row: for city-block the sum of the values. */
	public double magnitude(int row) {
		return magnitude[row];
	}

	/** Of the readings of a row. */
	int hash(int row) {
		int hash = 0;
		for (int k = start[row]; k < start[row + 1]; k++) {
			hash = 31 * (31 * hash + column[k]) + step[k];
		}
		return hash;
	}

	/** Whether two rows have the same readings. */
	boolean same(int a, int b) {
		return Arrays.equals(column, start[a], start[a + 1], column, start[b], start[b + 1])
				&& Arrays.equals(step, start[a], start[a + 1], step, start[b], start[b + 1]);
	}
}
