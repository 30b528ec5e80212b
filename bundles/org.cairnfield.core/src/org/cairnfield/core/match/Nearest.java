package org.cairnfield.core.match;

/** The k nearest offered so far, nearest first; ties by rank. */
public final class Nearest {

	private final int[] sample;
	private final double[] distance;
	private final int[] rank;
	private int size;

	Nearest(int k, int[] rank) {
		if (k < 1) {
			throw new IllegalArgumentException("k must be at least 1: " + k);
		}
		sample = new int[k];
		distance = new double[k];
		this.rank = rank;
	}

	void clear() {
		size = 0;
	}

	int capacity() {
		return sample.length;
	}

	/** Nothing farther than this can enter. */
	double reach() {
		return size < sample.length ? Double.POSITIVE_INFINITY : distance[size - 1];
	}

	void offer(int candidate, double d) {
		if (size == sample.length) {
			if (!before(d, candidate, size - 1)) {
				return;
			}
			size--;
		}
		int at = size++;
		while (at > 0 && before(d, candidate, at - 1)) {
			sample[at] = sample[at - 1];
			distance[at] = distance[at - 1];
			at--;
		}
		sample[at] = candidate;
		distance[at] = d;
	}

	private boolean before(double d, int candidate, int at) {
		return d < distance[at] || (d == distance[at] && rank[candidate] < rank[sample[at]]);
	}

	/** How many were found: k, or fewer where the map has fewer. */
	public int size() {
		return size;
	}

	/** The i-th nearest sample. */
	public int sample(int i) {
		return sample[i];
	}

	/** Its distance, in the signals' units. */
	public double distance(int i) {
		return distance[i];
	}
}
