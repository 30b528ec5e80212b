package org.cairnfield.core.stats;

import java.util.Arrays;

/** Data sets published with certified or exactly computable results. */
final class Published {

	/** Anscombe, The American Statistician 27 (1973): x of sets 1 to 3. */
	static final double[] ANSCOMBE_X = { 10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5 };
	static final double[] ANSCOMBE_Y1 = { 8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68 };
	static final double[] ANSCOMBE_Y2 = { 9.14, 8.14, 8.74, 8.77, 9.26, 8.10, 6.13, 3.10, 9.13, 7.26, 4.74 };
	static final double[] ANSCOMBE_Y3 = { 7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73 };
	static final double[] ANSCOMBE_X4 = { 8, 8, 8, 8, 8, 8, 8, 19, 8, 8, 8 };
	static final double[] ANSCOMBE_Y4 = { 6.58, 5.76, 7.71, 8.84, 8.47, 7.04, 5.25, 12.50, 5.56, 7.91, 6.89 };

	/** NIST Statistical Reference Datasets, linear regression, Norris. */
	static final double[] NORRIS_X = { .2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777, 558.2, .4,
			.6, 775.5, 666.9, 338, 447.5, 11.6, 556, 228.1, 995.8, 887.6, 120.2, .3, .3, 556.8, 339.1, 887.2, 999,
			779, 11.1, 118.3, 229.2, 669.1, 448.9, .5 };
	static final double[] NORRIS_Y = { .1, 338.8, 118.1, 888, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, .3,
			.1, 778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998, 888.8, 119.6, .3, .6, 557.6, 339.3, 888, 998.5,
			778.9, 10.2, 117.6, 228.9, 668.4, 449.2, .2 };

	/** NIST Statistical Reference Datasets, linear regression, Longley. */
	static final double[] LONGLEY_EMPLOYED = { 60323, 61122, 60171, 61187, 63221, 63639, 64989, 63761, 66019,
			67857, 68169, 66513, 68655, 69564, 69331, 70551 };
	static final double[] LONGLEY_GNP = { 234289, 259426, 258054, 284599, 328975, 346999, 365385, 363112, 397469,
			419180, 442769, 444546, 482704, 502601, 518173, 554894 };
	static final double[] LONGLEY_UNEMPLOYED = { 2356, 2325, 3682, 3351, 2099, 1932, 1870, 3578, 2904, 2822, 2936,
			4681, 3813, 3931, 4806, 4007 };
	static final double[] LONGLEY_YEAR = { 1947, 1948, 1949, 1950, 1951, 1952, 1953, 1954, 1955, 1956, 1957, 1958,
			1959, 1960, 1961, 1962 };

	/** NIST Statistical Reference Datasets, univariate, Michelso: (value - 299) × 100. */
	static final double[] MICHELSO = scaled(299, 100, 85, 74, 90, 107, 93, 85, 95, 98, 98, 88, 100, 98, 93, 65, 76,
			81, 100, 100, 96, 96, 96, 94, 96, 94, 88, 80, 85, 88, 90, 84, 83, 79, 81, 88, 88, 83, 80, 79, 76, 80, 88,
			88, 88, 86, 72, 72, 62, 86, 97, 95, 88, 91, 85, 87, 84, 84, 85, 84, 84, 84, 89, 81, 81, 82, 80, 77, 76, 74,
			75, 76, 91, 92, 89, 86, 88, 72, 84, 85, 85, 78, 89, 84, 78, 81, 76, 81, 79, 81, 82, 85, 87, 87, 81, 74, 81,
			94, 95, 80, 81, 87);

	/** NIST Statistical Reference Datasets, univariate, Mavro: (value - 2) × 10000. */
	static final double[] MAVRO = scaled(2, 10000, 18, 17, 18, 19, 18, 17, 15, 14, 15, 15, 17, 18, 18, 19, 19, 21,
			20, 16, 14, 13, 13, 15, 15, 16, 15, 14, 13, 14, 15, 14, 15, 16, 15, 16, 19, 20, 20, 21, 22, 23, 24, 25, 27,
			26, 26, 26, 27, 26, 25, 24);

	/** NIST/SEMATECH e-Handbook, 7.2.6.2: twelve measurements. */
	static final double[] HANDBOOK_PERCENTILES = { 95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591,
			95.1195, 95.1065, 95.0925, 95.1990, 95.1682 };

	/** NIST Statistical Reference Datasets, univariate, NumAcc2 to NumAcc4: a value, then 500 pairs. */
	static double[] numAcc(double base) {
		double[] values = new double[1001];
		for (int i = 0; i < values.length; i++) {
			// Decimal literals as the files have them, not sums that round.
			values[i] = Double.parseDouble((long) base + (i == 0 ? ".2" : i % 2 == 1 ? ".1" : ".3"));
		}
		return values;
	}

	private static double[] scaled(int offset, int divisor, int... codes) {
		return Arrays.stream(codes).mapToDouble(code -> (offset * divisor + code) / (double) divisor).toArray();
	}

	private Published() {
	}
}
