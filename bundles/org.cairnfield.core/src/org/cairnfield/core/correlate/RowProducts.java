package org.cairnfield.core.correlate;

import org.cairnfield.core.distance.DistanceRows;

/**
 * Products of some rows of the distance matrix with others. What is read of the map is read once for all of them. One per thread.
 */
interface RowProducts {

	/** The most rows at once. */
	int BATCH = DistanceRows.BATCH;

	/**
	 * Takes the rows of samples; what follows is about them.
	 *
	 * @param samples 1 to {@link #BATCH} of one component
	 */
	void begin(int[] samples);

	/**
	 * Σ over all samples c of d(sample, c)·d(other, c).
	 *
	 * @param out set by place in the batch
	 */
	void with(int other, double[] out);

	/** The same for one sample. @param i its place in the batch */
	double with(int i, int other);

	/** The distance of a sample to another one. @param i its place in the batch */
	double distance(int i, int other);
}
