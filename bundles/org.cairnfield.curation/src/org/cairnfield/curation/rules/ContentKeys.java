package org.cairnfield.curation.rules;

/**
 * Keys made from content alone, the same on every machine and in every run: 64 bits, mixed by the finaliser of
 * SplitMix64 (Steele, Lea and Flood, OOPSLA 2014). Two of a million contents share a key by chance once in about
 * forty million archives. No defence against somebody who wants a clash.
 */
public final class ContentKeys {

	private static final long GOLDEN = 0x9E37_79B9_7F4A_7C15L;

	private ContentKeys() {
	}

	/** The key of a text. */
	public static long of(String text) {
		long key = mix(text.length() + GOLDEN);
		for (int i = 0; i < text.length(); i++) {
			key = mix(key + GOLDEN ^ text.charAt(i));
		}
		return key;
	}

	/** The key of what {@code key} stands for followed by {@code next}; order matters. */
	public static long join(long key, long next) {
		return mix(mix(key + GOLDEN) ^ next * GOLDEN);
	}

	/** Two numbers spread over 64 bits; sums of such keys do not depend on order. */
	static long pair(long a, long b) {
		return mix(mix(a) + GOLDEN ^ b);
	}

	/** 16 hexadecimal digits. */
	public static String text(long key) {
		String digits = Long.toHexString(key);
		return "0".repeat(16 - digits.length()) + digits;
	}

	private static long mix(long key) {
		long z = key;
		z = (z ^ z >>> 30) * 0xBF58_476D_1CE4_E5B9L;
		z = (z ^ z >>> 27) * 0x94D0_49BB_1331_11EBL;
		return z ^ z >>> 31;
	}
}
