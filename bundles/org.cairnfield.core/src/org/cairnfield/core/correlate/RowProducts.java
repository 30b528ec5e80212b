package org.cairnfield.core.correlate;

/** Products of one row of the distance matrix with others. One per thread. */
interface RowProducts {

	/** Takes the row of a sample; what follows is about it. */
	void begin(int sample);

	/** Σ over all samples c of d(sample, c)·d(other, c). */
	double with(int other);

	/** The distance of the sample to another one. */
	double distance(int other);
}
