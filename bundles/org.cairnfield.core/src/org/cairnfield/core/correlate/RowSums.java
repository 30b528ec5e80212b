package org.cairnfield.core.correlate;

import java.io.Serializable;

/**
 * A row of the distance matrix in sums, by city-block distance: enough to correlate it with a row out of earshot, whichever
 * machine has that one.
 *
 * @param magnitude   of the sample
 * @param ownSum      Σ d over the samples within earshot, itself included
 * @param ownWeighted Σ magnitude·d over these
 * @param sum         Σ d over all samples
 * @param spread      √(n·Σ d² − (Σ d)²) over all samples; NaN where the row is constant
 * @param own         the samples within earshot
 */
public record RowSums(double magnitude, double ownSum, double ownWeighted, double sum, double spread, SampleSums own)
		implements Serializable {

	/**
	 * Pearson's r of two rows that are out of earshot of each other, as {@link NoiseCorrelation} has it; NaN where a row is constant.
	 *
	 * @param all the samples of the whole map
	 */
	public double correlation(RowSums other, SampleSums all) {
		SampleSums rest = all.without(own).without(other.own);
		double product = product(magnitude, ownSum, ownWeighted, other.magnitude, other.ownSum, other.ownWeighted,
				rest.samples(), rest.sum(),
				rest.squares());
		return RowMoments.correlation(RowMoments.covariance(all.samples(), product, sum, other.sum), spread,
				other.spread);
	}

	/** Σ of the products of two rows a and b out of earshot; the rest are the samples that hear neither. */
	static double product(double a, double ownSumA, double ownWeightedA, double b, double ownSumB, double ownWeightedB,
			double rest,
			double restSum, double restSquares) {
		return b * ownSumA + ownWeightedA + a * ownSumB + ownWeightedB + rest * a * b + (a + b) * restSum + restSquares;
	}
}
