package org.cairnfield.core.cluster;

import org.cairnfield.core.task.Workers;

/** Pairs of points within reach of each other, found by several threads and handed over one batch at a time. */
final class Pairs {

	private static final int BATCH = 8192;

	/** Receives pairs; never from two threads at once. */
	@FunctionalInterface
	interface Taker {
		/** @param b the smaller number */
		void take(int a, int b, double distance);
	}

	private final Taker taker;
	private final int[] a = new int[BATCH];
	private final int[] b = new int[BATCH];
	private final double[] distance = new double[BATCH];
	private int count;

	private Pairs(Taker taker) {
		this.taker = taker;
	}

	/** Finds each pair once, in no order; advances the progress by one a point. */
	static void within(double reach, PointSet points, Workers workers, Taker taker) {
		workers.forRanges(points.size(), () -> {
			PointSet.Surroundings around = points.surroundings();
			Pairs pairs = new Pairs(taker);
			return (from, to) -> {
				for (int p = from; p < to; p++) {
					pairs.add(p, around.before(p, reach));
				}
				pairs.handOver();
			};
		});
	}

	private void add(int point, Found found) {
		for (int i = 0; i < found.size(); i++) {
			if (count == BATCH) {
				handOver();
			}
			a[count] = point;
			b[count] = found.point(i);
			distance[count++] = found.distance(i);
		}
	}

	private void handOver() {
		synchronized (taker) {
			for (int i = 0; i < count; i++) {
				taker.take(a[i], b[i], distance[i]);
			}
		}
		count = 0;
	}
}
