package org.cairnfield.curation.internal.rules.evidence;

import java.util.Arrays;

/** A list of numbers that grows, without boxes. */
public final class Doubles {

	private double[] values = new double[16];
	private int size;

	public void add(double value) {
		if (size == values.length) {
			values = Arrays.copyOf(values, 2 * size);
		}
		values[size++] = value;
	}

	public int size() {
		return size;
	}

	/** A copy. */
	public double[] toArray() {
		return Arrays.copyOf(values, size);
	}
}
