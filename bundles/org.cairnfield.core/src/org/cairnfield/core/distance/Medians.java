package org.cairnfield.core.distance;

import java.util.Arrays;

/**
 * Makes the fingerprint that has the least sum of city-block distances to some points: by access point the median of their values,
 * 0 where not heard. So it holds only what more than half of them heard. Scratch space; one per thread.
 */
final class Medians {

	private final Points points;
	/** By access point: how many of the points heard it; all 0 between calls. */
	private final int[] heard;
	private final int[] met;
	private int[] gathered = new int[256];

	Medians(Points points, int accessPoints) {
		this.points = points;
		heard = new int[accessPoints];
		met = new int[accessPoints];
	}

	/**
	 * @param of   points
	 * @param step takes every step-th of them, from the one at {@code from} on
	 * @return entries as in {@link Points#entry}
	 */
	int[] of(int[] of, int from, int to, int step) {
		int count = (to - from + step - 1) / step;
		int metCount = 0;
		int size = 0;
		for (int i = from; i < to; i += step) {
			for (int k = points.start[of[i]]; k < points.start[of[i] + 1]; k++) {
				if (heard[points.entry[k] >>> Points.VALUE_BITS]++ == 0) {
					met[metCount++] = points.entry[k] >>> Points.VALUE_BITS;
				}
			}
		}
		for (int i = from; i < to; i += step) {
			for (int k = points.start[of[i]]; k < points.start[of[i] + 1]; k++) {
				if (2 * heard[points.entry[k] >>> Points.VALUE_BITS] > count) {
					if (size == gathered.length) {
						gathered = Arrays.copyOf(gathered, 2 * size);
					}
					gathered[size++] = points.entry[k];
				}
			}
		}
		for (int m = 0; m < metCount; m++) {
			heard[met[m]] = 0;
		}
		Arrays.sort(gathered, 0, size);
		return medians(size, count);
	}

	/** Values of one access point follow each other, ascending; those who did not hear it come before them. */
	private int[] medians(int size, int count) {
		int[] medians = new int[size];
		int found = 0;
		for (int first = 0, end; first < size; first = end) {
			end = first + 1;
			while (end < size && gathered[end] >>> Points.VALUE_BITS == gathered[first] >>> Points.VALUE_BITS) {
				end++;
			}
			medians[found++] = gathered[end - 1 - (count - 1) / 2];
		}
		return Arrays.copyOf(medians, found);
	}
}
