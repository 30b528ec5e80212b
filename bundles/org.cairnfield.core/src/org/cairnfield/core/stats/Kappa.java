package org.cairnfield.core.stats;

import java.io.Serializable;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Agreement of two people beyond chance: Cohen, "A coefficient of agreement for nominal scales", Educational
 * and Psychological Measurement 20 (1960), with the standard error of Fleiss, Cohen and Everitt,
 * Psychological Bulletin 72 (1969).
 *
 * @param items         how many both judged
 * @param observed      share on which they agree, 0 … 1; NaN for no items
 * @param expected      share on which they would by chance, 0 … 1
 * @param value         κ, −1 … 1: 1 for full agreement, 0 for that of chance; NaN where chance alone gives full
 *                      agreement, since both gave all items the same answer
 * @param standardError of κ; NaN where κ is
 */
public record Kappa(long items, double observed, double expected, double value, double standardError)
		implements Serializable {

	/**
	 * @param table [answer of the one][answer of the other], counts; square
	 * @throws IllegalArgumentException for a table that is not square, or a negative count
	 */
	public static Kappa of(long[][] table) {
		int k = table.length;
		long n = 0;
		long[] rows = new long[k];
		long[] columns = new long[k];
		long agreed = 0;
		for (int i = 0; i < k; i++) {
			if (table[i].length != k) {
				throw new IllegalArgumentException(
						"a table of agreement is square: row " + i + " has " + table[i].length
								+ " of " + k);
			}
			for (int j = 0; j < k; j++) {
				if (table[i][j] < 0) {
					throw new IllegalArgumentException("a negative count: " + table[i][j]);
				}
				rows[i] += table[i][j];
				columns[j] += table[i][j];
				n += table[i][j];
			}
			agreed += table[i][i];
		}
		double observed = (double) agreed / n;
		double expected = 0;
		boolean alike = n == 0;
		for (int i = 0; i < k; i++) {
			expected += (double) rows[i] / n * columns[i] / n;
			alike |= rows[i] == n && columns[i] == n;
		}
		if (alike) {
			return new Kappa(n, observed, n == 0 ? Double.NaN : 1, Double.NaN, Double.NaN);
		}
		double value = (observed - expected) / (1 - expected);
		return new Kappa(n, observed, expected, value, standardError(table, rows, columns, n, value, expected));
	}

	private static double standardError(long[][] table, long[] rows, long[] columns, long n, double kappa,
			double expected) {
		double diagonal = 0;
		double beside = 0;
		for (int i = 0; i < table.length; i++) {
			double both = (double) (rows[i] + columns[i]) / n;
			diagonal += (double) table[i][i] / n * Math.pow(1 - both * (1 - kappa), 2);
			for (int j = 0; j < table.length; j++) {
				if (i != j) {
					beside += (double) table[i][j] / n * Math.pow((double) (columns[i] + rows[j]) / n, 2);
				}
			}
		}
		double last = Math.pow(kappa - expected * (1 - kappa), 2);
		double variance = (diagonal + Math.pow(1 - kappa, 2) * beside - last) / (n * Math.pow(1 - expected, 2));
		return Math.sqrt(Math.max(0, variance)); // rounding may leave a little less than nothing
	}

	/** The normal interval around κ, within −1 … 1; NaN bounds where κ is. */
	public Interval interval(double confidence) {
		Interval.checkConfidence(confidence);
		double reach = new NormalDistribution(null, 0, 1).inverseCumulativeProbability((1 + confidence) / 2)
				* standardError;
		return Double.isNaN(value) ? new Interval(Double.NaN, Double.NaN, confidence)
				: new Interval(Math.max(-1, value - reach), Math.min(1, value + reach), confidence);
	}
}
