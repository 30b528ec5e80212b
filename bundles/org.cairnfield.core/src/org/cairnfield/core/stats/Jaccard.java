package org.cairnfield.core.stats;

import java.util.function.IntUnaryOperator;

/** The share that two sets have in common, |A ∩ B| / |A ∪ B| (Jaccard 1901), in one pass over sorted ids. */
public final class Jaccard {

	private Jaccard() {
	}

	/**
	 * @param a ids, ascending, each once
	 * @param b likewise
	 * @return from 0 (nothing in common) to 1 (the same); two empty sets have 1 by convention
	 */
	public static double overlap(int[] a, int[] b) {
		int common = common(i -> a[i], 0, a.length, i -> b[i], 0, b.length);
		return share(common, a.length, b.length);
	}

	/**
	 * The overlap of two runs of one long column of ids, such as the access points of two samples of a
	 * radio map.
	 *
	 * @param ids   the id at a place; ascending within either run
	 * @param fromA first place of the one run
	 * @param endA  one past its last
	 * @param fromB first place of the other
	 * @param endB  one past its last
	 */
	public static double overlap(IntUnaryOperator ids, int fromA, int endA, int fromB, int endB) {
		return share(common(ids, fromA, endA, ids, fromB, endB), endA - fromA, endB - fromB);
	}

	private static int common(IntUnaryOperator a, int fromA, int endA, IntUnaryOperator b, int fromB, int endB) {
		int i = fromA;
		int j = fromB;
		int common = 0;
		while (i < endA && j < endB) {
			int idA = a.applyAsInt(i);
			int idB = b.applyAsInt(j);
			if (idA == idB) {
				common++;
			}
			if (idA <= idB) {
				i++;
			}
			if (idB <= idA) {
				j++;
			}
		}
		return common;
	}

	private static double share(int common, int sizeA, int sizeB) {
		int union = sizeA + sizeB - common;
		return union == 0 ? 1 : (double) common / union;
	}
}
