package org.cairnfield.core.distance;

/**
 * Distances of a few samples of one component to all of its members, and sums over them. What is read of the map is read once for
 * all of these samples, so it pays to take near ones together. One per thread.
 */
public interface DistanceRows {

	/** The most samples at once. */
	int BATCH = 8;

	/**
	 * Takes samples; what follows is about them.
	 *
	 * @param samples 1 to {@link #BATCH} of one component
	 */
	void begin(int[] samples);

	/**
	 * A distance to a member of the component.
	 *
	 * @param i place in the batch
	 */
	double distance(int i, int member);

	/**
	 * Adds up the distances to those that heard an access point at a step.
	 *
	 * @param sums sums[at + i] is set for each place i of a batch
	 */
	void sum(int column, int step, double[] sums, int at);

	/** Σ d, Σ d² and Σ magnitude·d over the members of the component, by place in the batch. All are set. */
	void moments(double[] plain, double[] squares, double[] weighted);
}
