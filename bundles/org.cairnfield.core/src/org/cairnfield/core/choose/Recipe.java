package org.cairnfield.core.choose;

import java.util.ArrayList;
import java.util.List;

/**
 * A way to split any map, in parameters that do not depend on its size.
 *
 * @param curveShare     for DBSCAN: where on the k-distance curve ε stands
 * @param samplesPerCell for k-means: n over the number of cells; 0 stands for √n
 */
record Recipe(Splitting.Method method, double curveShare, boolean cut, int samplesPerCell) {

	static final int MIN_PTS = 3;
	private static final double[] CURVE_SHARES = { 0.3, 0.5 };
	private static final int[] SAMPLES_PER_CELL = { 8, 16, 32, 0 };

	/** What the automatic choice tries. */
	static List<Recipe> all() {
		List<Recipe> recipes = new ArrayList<>();
		for (double share : CURVE_SHARES) {
			for (boolean cut : new boolean[] { false, true }) {
				recipes.add(new Recipe(Splitting.Method.DBSCAN_CORRELATION, share, cut, 0));
				recipes.add(new Recipe(Splitting.Method.DBSCAN_NEAREST, share, cut, 0));
			}
		}
		for (int perCell : SAMPLES_PER_CELL) {
			recipes.add(new Recipe(Splitting.Method.K_MEANS, Double.NaN, false, perCell));
		}
		return recipes;
	}
}
