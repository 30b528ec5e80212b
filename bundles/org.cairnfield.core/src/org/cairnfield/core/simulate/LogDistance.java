package org.cairnfield.core.simulate;

import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * A quantity in dB that changes by the logarithm of distance: loss (exponent above 0 adds) at a reference
 * distance of 1 m, L(d) = L(1 m) + 10 n log₁₀ d.
 *
 * @param atOneMetreDb loss at 1 m
 * @param exponent     n; 2 in free space
 */
public record LogDistance(double atOneMetreDb, double exponent) {

	/** Loss at {@code metres} above 0, in dB. */
	public double lossDb(double metres) {
		return atOneMetreDb + 10 * exponent * Math.log10(metres);
	}

	/** The distance at which the loss is {@code lossDb}, in metres. */
	public double metresAt(double lossDb) {
		return Math.pow(10, (lossDb - atOneMetreDb) / (10 * exponent));
	}

	/** Least squares of loss on the logarithm of distance, with how well it fits. */
	public record Fit(LogDistance law, double correlation, double residualSdDb) {
	}

	/**
	 * @param metres distances above 0, at least three and not all equal
	 * @param lossDb as many losses (a level in dBm with its sign changed serves too)
	 */
	public static Fit fit(double[] metres, double[] lossDb) {
		if (metres.length != lossDb.length || metres.length < 3) {
			throw new IllegalArgumentException("at least three pairs: " + metres.length + ", " + lossDb.length);
		}
		SimpleRegression line = new SimpleRegression();
		for (int i = 0; i < metres.length; i++) {
			line.addData(Math.log10(metres[i]), lossDb[i]);
		}
		LogDistance law = new LogDistance(line.getIntercept(), line.getSlope() / 10);
		return new Fit(law, line.getR(), Math.sqrt(line.getMeanSquareError()));
	}
}
