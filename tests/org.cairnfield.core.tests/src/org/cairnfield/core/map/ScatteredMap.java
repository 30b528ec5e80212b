package org.cairnfield.core.map;

import java.util.SplittableRandom;

/**
 * Small maps by chance, awkward on purpose: groups of access points out of earshot of each other, samples that
 * heard nothing, fingerprints that occur twice, whole levels with many equal distances. Some samples gather
 * round common fingerprints, others stand alone.
 */
public final class ScatteredMap {

	private static final int MOST_ISLANDS = 3;
	private static final int BLOBS_PER_ISLAND = 3;

	private final SplittableRandom random;
	private final RadioMapBuilder builder = new RadioMapBuilder();
	private final int[][] accessPoints;
	/** Level of each access point of an island by blob; 0 where not heard. */
	private final int[][][] blobs;

	private ScatteredMap(long seed) {
		random = new SplittableRandom(seed);
		int islands = 1 + random.nextInt(MOST_ISLANDS);
		accessPoints = new int[islands][];
		blobs = new int[islands][BLOBS_PER_ISLAND][];
		for (int i = 0; i < islands; i++) {
			accessPoints[i] = new int[2 + random.nextInt(7)];
			for (int a = 0; a < accessPoints[i].length; a++) {
				accessPoints[i][a] = builder.accessPoint("AP " + i + "." + a);
			}
			for (int b = 0; b < BLOBS_PER_ISLAND; b++) {
				blobs[i][b] = random.ints(accessPoints[i].length, -90, -40).map(l -> random.nextInt(4) == 0 ? 0 : l)
						.toArray();
			}
		}
	}

	/** The same for the same seed. */
	public static RadioMap of(long seed, int samples) {
		ScatteredMap made = new ScatteredMap(seed);
		for (int s = 0; s < samples; s++) {
			made.sample();
		}
		return made.builder.build();
	}

	private void sample() {
		builder.sample(random.nextBoolean() ? "Tide House" : "Lantern Store", random.nextInt(2),
				random.nextInt(40) / 2.0, random.nextInt(20) / 2.0);
		int island = random.nextInt(accessPoints.length);
		int kind = random.nextInt(20);
		if (kind == 0) {
			return; // heard nothing
		}
		int[] blob = blobs[island][random.nextInt(BLOBS_PER_ISLAND)];
		for (int a = 0; a < blob.length; a++) {
			if (kind > 16) { // alone
				hear(accessPoints[island][a], random.nextInt(3) == 0 ? 0 : random.nextInt(-95, -35));
			} else { // kinds 1 to 3: exactly the common fingerprint
				hear(accessPoints[island][a], blob[a] == 0 || kind <= 3 ? blob[a] : blob[a] + random.nextInt(-3, 4));
			}
		}
	}

	private void hear(int accessPoint, int rssiDbm) {
		if (rssiDbm != 0) {
			builder.reading(accessPoint, rssiDbm);
		}
	}

	/** The samples in an order drawn by seed: shuffled[i] is the i-th. */
	public static int[] shuffled(int samples, long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		int[] order = new int[samples];
		for (int i = 0; i < samples; i++) {
			int at = random.nextInt(i + 1);
			order[i] = order[at];
			order[at] = i;
		}
		return order;
	}

	/**
	 * The samples listed as a map of their own, with its access points in backward order: what a colleague's
	 * file with the same content would give.
	 */
	public static RadioMap rebuilt(RadioMap map, int[] samples) {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int s : samples) {
			builder.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s));
			for (int k = map.endReading(s) - 1; k >= map.firstReading(s); k--) {
				builder.reading(map.accessPoints().get(map.accessPoint(k)), map.rssiDbm(k));
			}
		}
		return builder.build();
	}
}
