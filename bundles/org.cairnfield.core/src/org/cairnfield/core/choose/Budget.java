package org.cairnfield.core.choose;

/** How many comparisons a query may cost, as a share of plain matching. */
public final class Budget {

	private static final int LARGE_MAP = 5000;
	private static final double LARGE_MAP_SHARE = 0.06;

	private Budget() {
	}

	/** 6 % from 5,000 samples on, below that 3/√n: fewer than √n centroids plus √n members cannot be. */
	public static double share(int samples) {
		return samples >= LARGE_MAP ? LARGE_MAP_SHARE : Math.min(1, 3 / Math.sqrt(Math.max(1, samples)));
	}
}
