package org.cairnfield.core.simulate;

/** Loss between two antennas with nothing between them, in dB. */
public final class PathLoss {

	private static final double LIGHT_METRES_PER_SECOND = 299_792_458;

	private PathLoss() {
	}

	/**
	 * Free space by the customary form 20 log₁₀ d + 20 log₁₀ f − 27.55, which reads 0.0022 dB high.
	 *
	 * @param metres       above 0
	 * @param frequencyMhz above 0
	 */
	public static double freeSpaceDb(double metres, double frequencyMhz) {
		return 20 * Math.log10(metres) + 20 * Math.log10(frequencyMhz) - 27.55;
	}

	/** Free space without rounding of the constant: 20 log₁₀(4π d f / c). */
	public static double freeSpaceExactDb(double metres, double frequencyMhz) {
		return 20 * Math.log10(4 * Math.PI * metres * frequencyMhz * 1e6 / LIGHT_METRES_PER_SECOND);
	}
}
