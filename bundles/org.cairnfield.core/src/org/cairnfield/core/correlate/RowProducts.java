package org.cairnfield.core.correlate;

import org.cairnfield.core.cluster.Clustering;

/** Products of one row of the distance matrix with others. One per thread. */
interface RowProducts {

	/**
	 * Σ over all samples c of d(sample, c)·d(other, c).
	 *
	 * @param out set for every labelled sample; what noise samples get is unspecified
	 */
	void withAll(int sample, Clustering clustering, double[] out);

	/** Distances of the sample last asked for to the members of its component, by place. */
	double[] row();
}
