package org.cairnfield.core.simulate;

import java.util.SplittableRandom;

/**
 * Chance by name instead of by order. Every random value hangs from a key: the seed, a purpose, then indexes
 * or addresses. A value depends on its key alone, so adding a purpose, a sample or an access point leaves all
 * others as they were, and work may be done in any order. Keys are mixed by the finaliser of SplitMix64
 * (Steele, Lea and Flood, OOPSLA 2014).
 */
final class Streams {

	private static final long GOLDEN = 0x9E37_79B9_7F4A_7C15L;

	private Streams() {
	}

	/** The key of a purpose under a seed or another key. */
	static long key(long parent, String purpose) {
		long hash = mix(parent + GOLDEN);
		for (int i = 0; i < purpose.length(); i++) {
			hash = mix(hash + GOLDEN ^ purpose.charAt(i));
		}
		return hash;
	}

	/** The key of the {@code index}-th thing under a key. */
	static long key(long parent, long index) {
		return mix(mix(parent + GOLDEN) ^ index * GOLDEN);
	}

	/** A generator of its own for the key. */
	static SplittableRandom random(long key) {
		return new SplittableRandom(key);
	}

	/** The one uniform value in [0, 1) that belongs to the key. */
	static double uniform(long key) {
		return (mix(key) >>> 11) * 0x1p-53;
	}

	/**
	 * The one standard normal value that belongs to the key, by Box and Muller. Logarithm and cosine may differ in
	 * their last bit from machine to machine, which levels in whole dBm do not show.
	 */
	static double gaussian(long key) {
		double first = ((mix(key) >>> 11) + 1) * 0x1p-53;
		double second = (mix(key + GOLDEN) >>> 11) * 0x1p-53;
		return Math.sqrt(-2 * Math.log(first)) * Math.cos(2 * Math.PI * second);
	}

	private static long mix(long key) {
		long z = key;
		z = (z ^ z >>> 30) * 0xBF58_476D_1CE4_E5B9L;
		z = (z ^ z >>> 27) * 0x94D0_49BB_1331_11EBL;
		return z ^ z >>> 31;
	}
}
