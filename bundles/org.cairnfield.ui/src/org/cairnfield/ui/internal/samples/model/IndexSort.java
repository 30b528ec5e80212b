package org.cairnfield.ui.internal.samples.model;

import java.util.Arrays;

/**
 * Sorts indices, stable, by natural merging: what is sorted already in long runs, as ids are, costs little. No object for
 * each index, unlike what the JDK offers for a sort by comparator.
 */
final class IndexSort {

	private static final int SHORTEST_RUN = 12;

	/** Compares two indices. */
	@FunctionalInterface
	interface Order {
		int compare(int a, int b);
	}

	private IndexSort() {
	}

	/**
	 * Sorts in place.
	 *
	 * @param often called many times while it goes on; may throw to end it, after which the indices are in no order
	 */
	static void sort(int[] indices, Order order, Runnable often) {
		int[] bounds = new int[indices.length / SHORTEST_RUN + 2];
		int runs = 0;
		for (int from = 0; from < indices.length; from = bounds[runs]) {
			bounds[runs + 1] = endOfRun(indices, from, order);
			runs++;
			if (runs % 4096 == 0) {
				often.run();
			}
		}
		int[] from = indices;
		int[] to = new int[indices.length];
		while (runs > 1) {
			often.run();
			int made = 0;
			for (int r = 0; r < runs; r += 2) {
				int middle = bounds[r + 1];
				int end = r + 1 < runs ? bounds[r + 2] : middle;
				merge(from, bounds[r], middle, end, to, order);
				bounds[++made] = end;
			}
			runs = made;
			int[] swap = from;
			from = to;
			to = swap;
		}
		if (from != indices) {
			System.arraycopy(from, 0, indices, 0, indices.length);
		}
	}

	private static int endOfRun(int[] indices, int from, Order order) {
		int end = from + 1;
		if (end < indices.length && order.compare(indices[end], indices[from]) < 0) {
			while (end < indices.length && order.compare(indices[end], indices[end - 1]) < 0) {
				end++;
			}
			for (int a = from, b = end - 1; a < b; a++, b--) {
				int swap = indices[a];
				indices[a] = indices[b];
				indices[b] = swap;
			}
		} else {
			while (end < indices.length && order.compare(indices[end], indices[end - 1]) >= 0) {
				end++;
			}
		}
		int least = Math.min(indices.length, from + SHORTEST_RUN);
		for (; end < least; end++) {
			int index = indices[end];
			int at = end;
			while (at > from && order.compare(indices[at - 1], index) > 0) {
				indices[at] = indices[--at];
			}
			indices[at] = index;
		}
		return end;
	}

	private static void merge(int[] from, int start, int middle, int end, int[] to, Order order) {
		if (middle == end || order.compare(from[middle - 1], from[middle]) <= 0) {
			System.arraycopy(from, start, to, start, end - start);
			return;
		}
		int a = start;
		int b = middle;
		int at = start;
		while (a < middle && b < end) {
			to[at++] = order.compare(from[b], from[a]) < 0 ? from[b++] : from[a++];
		}
		System.arraycopy(from, a, to, at, middle - a);
		System.arraycopy(from, b, to, at + middle - a, end - b);
	}

	/** All indices in their own order. */
	static int[] all(int size) {
		int[] all = new int[size];
		Arrays.setAll(all, i -> i);
		return all;
	}
}
