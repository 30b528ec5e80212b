package org.cairnfield.core.simulate;

/**
 * Loss inside a building by the classic form of ITU-R P.1238 (editions up to about -9), which averages over
 * rooms and lets floors add: L = 20 log₁₀ f + N log₁₀ d + L_f(n) − 28, f in MHz, d in metres above 1.
 * N and L_f depend on building and band; the values at 2.4 GHz are from memory.
 */
public enum ItuIndoor {

	RESIDENTIAL_1_9_GHZ(28, 4, 4),
	OFFICE_1_9_GHZ(30, 15, 4),
	/** Open halls, few partitions. */
	COMMERCIAL_1_9_GHZ(22, 6, 3),
	/** N 28, floors of a block of flats; 10 dB for one, the same for each further one assumed. */
	RESIDENTIAL_2_4_GHZ(28, 10, 10),
	/** One floor 14 dB; each further one as the 1.9 GHz office has it. */
	OFFICE_2_4_GHZ(30, 14, 4),
	/** One floor 16 dB; each further one as the 1.9 GHz office has it. */
	OFFICE_5_2_GHZ(31, 16, 4);

	private static final double NEAREST_METRES = 1;

	private final double distanceCoefficient;
	private final double firstFloorDb;
	private final double furtherFloorDb;

	ItuIndoor(double distanceCoefficient, double firstFloorDb, double furtherFloorDb) {
		this.distanceCoefficient = distanceCoefficient;
		this.firstFloorDb = firstFloorDb;
		this.furtherFloorDb = furtherFloorDb;
	}

	/** N, dB a decade of distance. */
	public double distanceCoefficient() {
		return distanceCoefficient;
	}

	/** L_f: what {@code floors} floors between the antennas take away, in dB; 0 for none. */
	public double floorLossDb(int floors) {
		return floors == 0 ? 0 : firstFloorDb + furtherFloorDb * (floors - 1);
	}

	/**
	 * The whole loss in dB.
	 *
	 * @param metres below 1 it is taken for 1, where the form begins
	 * @param floors floors between the antennas, 0 or more
	 */
	public double lossDb(double metres, double frequencyMhz, int floors) {
		return lossDb(distanceCoefficient, metres, frequencyMhz, floorLossDb(floors));
	}

	/** The form itself, for coefficients of one's own. */
	public static double lossDb(double distanceCoefficient, double metres, double frequencyMhz, double floorLossDb) {
		return 20 * Math.log10(frequencyMhz) + distanceCoefficient * Math.log10(Math.max(NEAREST_METRES, metres))
				+ floorLossDb - 28;
	}
}
