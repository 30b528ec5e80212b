package org.cairnfield.core.distance;

import java.util.Arrays;

/** Halves points again and again by which of two far ones, or of their medians, is nearer, until few near ones are left in each leaf. */
final class LeafSplit {

	/** Leaves grow with the root of what is split: a search measures all centres and opens some leaves. */
	private static final double LEAF_PER_ROOT = 1 / 8.0;
	private static final int SMALLEST_LEAF = 8;
	private static final int LARGEST_LEAF = 64;
	/** Of points that stand for many. */
	private static final int SAMPLE = 128;
	/** Medians of more than that, from many places, would hold next to nothing. */
	private static final int SOME = 500;
	/** Neither half is smaller than this share. */
	private static final int SMALLEST_SHARE = 8;

	private final Points points;
	private final Medians medians;
	private final int[] order;
	private final int[] valueA;
	private final int[] valueB;
	private int[] starts = new int[64];
	private int leaves;

	LeafSplit(Points points, int accessPoints) {
		this.points = points;
		medians = new Medians(points, accessPoints);
		order = new int[points.size()];
		Arrays.setAll(order, p -> p);
		valueA = new int[accessPoints];
		valueB = new int[accessPoints];
	}

	/** Points in the order of the leaves. */
	int[] order() {
		return order;
	}

	int leaves() {
		return leaves;
	}

	/** Where each leaf begins in the order; then its end. */
	int[] starts() {
		int[] all = Arrays.copyOf(starts, leaves + 1);
		all[leaves] = order.length;
		return all;
	}

	/** Splits points from … to − 1, behind all that were split before. */
	void split(int from, int to) {
		if (from < to) {
			int most = (int) Math.max(SMALLEST_LEAF, Math.min(LARGEST_LEAF, LEAF_PER_ROOT * Math.sqrt(to - from)));
			split(from, to, most);
		}
	}

	private void split(int from, int to, int most) {
		if (to - from <= most) {
			if (leaves == starts.length) {
				starts = Arrays.copyOf(starts, 2 * leaves);
			}
			starts[leaves++] = from;
			return;
		}
		int far = farthest(order[from], from, to);
		int[] a = entries(far);
		int[] b = entries(farthest(far, from, to));
		int middle = halve(a, b, from, to);
		if (to - from <= SOME) {
			a = medians.of(order, from, middle, step(middle - from));
			b = medians.of(order, middle, to, step(to - middle));
			middle = halve(a, b, from, to);
		}
		split(from, middle, most);
		split(middle, to, most);
	}

	private static int step(int count) {
		return Math.max(1, count / SAMPLE);
	}

	private int[] entries(int point) {
		return Arrays.copyOfRange(points.entry, points.start[point], points.start[point + 1]);
	}

	/** Of some of the points. */
	private int farthest(int point, int from, int to) {
		int[] entries = entries(point);
		lay(entries, valueA);
		int best = point;
		int most = Integer.MIN_VALUE;
		for (int i = from; i < to; i += step(to - from)) {
			int overlap = 0;
			for (int k = points.start[order[i]]; k < points.start[order[i] + 1]; k++) {
				overlap += Math.min(valueA[points.entry[k] >>> Points.VALUE_BITS], points.entry[k] & Points.VALUE);
			}
			int d = points.sum[order[i]] - 2 * overlap; // and the sum of the point itself
			if (d > most) {
				most = d;
				best = order[i];
			}
		}
		clear(entries, valueA);
		return best;
	}

	private static void lay(int[] entries, int[] value) {
		for (int e : entries) {
			value[e >>> Points.VALUE_BITS] = e & Points.VALUE;
		}
	}

	private static void clear(int[] entries, int[] value) {
		for (int e : entries) {
			value[e >>> Points.VALUE_BITS] = 0;
		}
	}

	private static int sum(int[] entries) {
		int sum = 0;
		for (int e : entries) {
			sum += e & Points.VALUE;
		}
		return sum;
	}

	/** Puts those nearer to a in front. @return where those of b begin */
	private int halve(int[] a, int[] b, int from, int to) {
		lay(a, valueA);
		lay(b, valueB);
		int sums = sum(a) - sum(b);
		long[] keys = new long[to - from];
		int nearA = 0;
		for (int i = from; i < to; i++) {
			int overlapA = 0;
			int overlapB = 0;
			for (int k = points.start[order[i]]; k < points.start[order[i] + 1]; k++) {
				int at = points.entry[k] >>> Points.VALUE_BITS;
				int v = points.entry[k] & Points.VALUE;
				overlapA += Math.min(valueA[at], v);
				overlapB += Math.min(valueB[at], v);
			}
			int difference = sums - 2 * (overlapA - overlapB);
			keys[i - from] = (long) difference << 32 | order[i];
			nearA += difference < 0 ? 1 : 0;
		}
		clear(a, valueA);
		clear(b, valueB);
		int least = keys.length / SMALLEST_SHARE;
		if (nearA <= least || nearA >= keys.length - least) {
			Arrays.sort(keys);
			nearA = keys.length / 2;
			for (int i = 0; i < keys.length; i++) {
				order[from + i] = (int) keys[i];
			}
			return from + nearA;
		}
		int front = from;
		int back = from + nearA;
		for (long key : keys) {
			order[key < 0 ? front++ : back++] = (int) key;
		}
		return from + nearA;
	}
}
