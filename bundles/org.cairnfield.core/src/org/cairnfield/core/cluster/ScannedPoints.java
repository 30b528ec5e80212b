package org.cairnfield.core.cluster;

import java.util.Arrays;

/** Points of one sample each whose surroundings are found by looking at all points. */
abstract class ScannedPoints implements PointSet {

	/** One thread's look at all points. */
	interface Scan {
		/** Adds every other point within reach. */
		void find(int point, double reach, Found found);
	}

	abstract Scan scan();

	@Override
	public final int samples() {
		return size();
	}

	@Override
	public final int pointOf(int sample) {
		return sample;
	}

	@Override
	public final int weight(int point) {
		return 1;
	}

	@Override
	public final int sample(int point, int i) {
		return point;
	}

	@Override
	public final Surroundings surroundings() {
		Scan scan = scan();
		Found found = new Found();
		Found smaller = new Found();
		return new Surroundings() {
			@Override
			public Found within(int point, double reach) {
				found.clear();
				scan.find(point, reach, found);
				return found;
			}

			@Override
			public Found before(int point, double reach) {
				within(point, reach);
				smaller.clear();
				for (int i = 0; i < found.size(); i++) {
					if (found.point(i) < point) {
						smaller.add(found.point(i), found.distance(i));
					}
				}
				return smaller;
			}

			@Override
			public void nearest(int point, double[] distances) {
				Arrays.fill(distances, Double.POSITIVE_INFINITY);
				within(point, Double.POSITIVE_INFINITY);
				for (int i = 0; i < found.size(); i++) {
					Found.insert(distances, found.distance(i), 1);
				}
			}
		};
	}
}
