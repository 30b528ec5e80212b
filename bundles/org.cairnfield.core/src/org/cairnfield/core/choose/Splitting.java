package org.cairnfield.core.choose;

import java.util.Locale;
import org.cairnfield.core.cluster.Clustering;

/**
 * One way to split a map for matching, named as people read it.
 *
 * @param method     how cells are found
 * @param epsilon    DBSCAN's ε in the signals' units, NaN for k-means
 * @param minPts     DBSCAN's, 0 for k-means
 * @param cut        whether large cells were cut in two until none was
 * @param clustering the cells of one map
 */
public record Splitting(Method method, double epsilon, int minPts, boolean cut, Clustering clustering) {

	/** How cells are found, and where noise goes. */
	public enum Method {
		/** DBSCAN, noise to the cluster of the most correlated sample. */
		DBSCAN_CORRELATION("DBSCAN + correlation"),
		/** DBSCAN, noise to the cluster of the nearest labelled sample. */
		DBSCAN_NEAREST("DBSCAN + nearest"),
		/** k-means, which knows no noise. */
		K_MEANS("k-means");

		private final String label;

		Method(String label) {
			this.label = label;
		}

		@Override
		public String toString() {
			return label;
		}
	}

	@Override
	public String toString() {
		String parameters = method == Method.K_MEANS ? "" : String.format(Locale.ROOT, " (ε %.6g, minPts %d)", epsilon, minPts);
		return method + parameters + (cut ? ", large cells cut" : "") + ", " + clustering.clusters() + " cells";
	}
}
