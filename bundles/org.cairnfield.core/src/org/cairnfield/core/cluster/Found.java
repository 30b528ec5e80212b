package org.cairnfield.core.cluster;

import java.util.Arrays;

/** Points that were found, with their distances. */
public final class Found {

	private int[] point = new int[64];
	private double[] distance = new double[64];
	private int count;

	void clear() {
		count = 0;
	}

	void add(int other, double d) {
		if (count == point.length) {
			point = Arrays.copyOf(point, count * 2);
			distance = Arrays.copyOf(distance, count * 2);
		}
		point[count] = other;
		distance[count++] = d;
	}

	/** How many were found. */
	public int size() {
		return count;
	}

	public int point(int i) {
		return point[i];
	}

	public double distance(int i) {
		return distance[i];
	}

	/** Adds a distance to ascending ones, a number of times; the largest go. */
	static void insert(double[] ascending, double d, int times) {
		for (int t = 0; t < times && d < ascending[ascending.length - 1]; t++) {
			int at = ascending.length - 1;
			while (at > 0 && ascending[at - 1] > d) {
				ascending[at] = ascending[at - 1];
				at--;
			}
			ascending[at] = d;
		}
	}
}
