package org.cairnfield.core.distance;

import java.util.concurrent.atomic.AtomicIntegerArray;

/**
 * Disjoint sets over 0 … n − 1 whose root is always the smallest member. {@link #join} may be called from
 * several threads at once; the sets that result do not depend on the order.
 */
public final class DisjointSets {

	private final AtomicIntegerArray parent;

	public DisjointSets(int n) {
		int[] self = new int[n];
		for (int i = 0; i < n; i++) {
			self[i] = i;
		}
		parent = new AtomicIntegerArray(self);
	}

	/** The smallest member of the set of {@code i}. */
	public int find(int i) {
		int at = i;
		while (true) {
			int up = parent.getPlain(at);
			if (up == at) {
				return at;
			}
			int above = parent.getPlain(up);
			if (above != up) {
				parent.weakCompareAndSetPlain(at, up, above); // halves the path; losing the race is harmless
			}
			at = up;
		}
	}

	public void join(int a, int b) {
		while (true) {
			int rootA = find(a);
			int rootB = find(b);
			if (rootA == rootB) {
				return;
			}
			int low = Math.min(rootA, rootB);
			int high = Math.max(rootA, rootB);
			if (parent.compareAndSet(high, high, low)) {
				return;
			}
		}
	}
}
