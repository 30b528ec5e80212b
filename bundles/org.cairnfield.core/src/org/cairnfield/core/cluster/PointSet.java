package org.cairnfield.core.cluster;

import org.cairnfield.core.distance.Signals;

/** What is clustered by density: samples at numbered points, several of them at one point perhaps. */
public interface PointSet {

	/** The number of points. */
	int size();

	/** The number of samples. */
	int samples();

	/** The point of a sample. */
	int pointOf(int sample);

	/** How many samples are at a point, at least 1. */
	int weight(int point);

	/** The i-th sample at a point, ascending. */
	int sample(int point, int i);

	/** Makes a search with scratch space of its own; one per thread. */
	Surroundings surroundings();

	/** One thread's search. What one call found lasts until the next. */
	interface Surroundings {

		/** Finds every other point within reach, in no order. */
		Found within(int point, double reach);

		/** Finds those within reach that have a smaller number: over all points, each pair once. */
		Found before(int point, double reach);

		/**
		 * Finds the distances to the nearest samples other than one at the point.
		 *
		 * @param distances set, ascending; infinite where there are fewer samples
		 */
		void nearest(int point, double[] distances);
	}

	/** The samples of a map, in signal space. */
	static PointSet of(Signals signals) {
		return signals.index().<PointSet>map(IndexedPoints::new).orElseGet(() -> new RowPoints(signals));
	}
}
