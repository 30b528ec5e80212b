package org.cairnfield.core.stats;

import java.util.SplittableRandom;

/** A sample without replacement, each of its size as likely as any other. */
public final class Draw {

	private Draw() {
	}

	/**
	 * Numbers from 0 to {@code of} − 1, ascending; all of them where there are no more than wanted. The same for the same seed.
	 *
	 * @param count at least 0
	 */
	public static int[] some(int count, int of, long seed) {
		int[] drawn = new int[Math.min(count, of)];
		SplittableRandom random = new SplittableRandom(seed);
		int at = 0;
		for (int i = 0; at < drawn.length; i++) {
			if (random.nextInt(of - i) < drawn.length - at) {
				drawn[at++] = i;
			}
		}
		return drawn;
	}
}
