package org.cairnfield.curation.internal.rules.evidence;

import java.util.Arrays;

/** A list of indexes that grows, without boxes. */
public final class Ints {

	private int[] values = new int[8];
	private int size;

	public void add(int value) {
		if (size == values.length) {
			values = Arrays.copyOf(values, 2 * size);
		}
		values[size++] = value;
	}

	public int size() {
		return size;
	}

	public int get(int i) {
		return values[i];
	}

	/** A copy. */
	public int[] toArray() {
		return Arrays.copyOf(values, size);
	}
}
