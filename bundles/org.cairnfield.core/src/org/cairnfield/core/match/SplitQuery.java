package org.cairnfield.core.match;

import java.util.Arrays;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;

/** One query beside the centroids and samples of a split; scratch space of one thread. */
final class SplitQuery {

	private final SplitMap split;
	private final boolean relative;
	private final Signals signals;
	private final Distance distance;
	/** The query by access point; all 0 between queries. */
	private final double[] values;
	/** By access point: the overlap of the query's step there with any step; of "not heard" between queries. */
	private final double[][] overlaps;
	private double magnitude;

	/** @param relative whether centroids are compared by relative distances, see {@link SplitMatcher} */
	SplitQuery(SplitMap split, boolean relative) {
		this.split = split;
		this.relative = relative;
		signals = split.signals;
		distance = signals.distance();
		values = new double[signals.map().accessPointCount()];
		overlaps = new double[values.length][];
		Arrays.fill(overlaps, signals.overlaps(0));
	}

	static int[] inOrder(int n) {
		int[] order = new int[n];
		Arrays.setAll(order, i -> i);
		return order;
	}

	void begin(SignalRows queries, int row) {
		for (int k = queries.start(row); k < queries.end(row); k++) {
			values[queries.column(k)] = signals.value(queries.step(k));
			overlaps[queries.column(k)] = signals.overlaps(queries.step(k));
		}
		magnitude = queries.magnitude(row);
	}

	void end(SignalRows queries, int row) {
		for (int k = queries.start(row); k < queries.end(row); k++) {
			values[queries.column(k)] = 0;
			overlaps[queries.column(k)] = signals.overlaps(0);
		}
	}

	/** How far a centroid is for the coarse search. @param plain its distance */
	double coarse(Centroids of, int centroid, double plain) {
		double both = magnitude + of.magnitude(centroid);
		return relative && both > 0 ? plain / both : plain;
	}

	/** How far a cell is for the coarse search. */
	double toCell(int cell) {
		return coarse(split.centroids, cell, split.centroids.distance(cell, values, magnitude));
	}

	/** Offers the samples of a cell. */
	void search(int cell, Nearest nearest) {
		PackedCells packed = split.packed;
		for (int place = packed.cellStart[cell], to = packed.cellStart[cell + 1]; place < to; place++) {
			double overlap = 0;
			for (int k = packed.entryStart[place], end = packed.entryStart[place + 1]; k < end; k++) {
				overlap += overlaps[packed.column[k]][packed.step[k]];
			}
			double d = distance.finish(magnitude + packed.magnitude[place] - 2 * overlap);
			if (d <= nearest.reach()) {
				nearest.offer(packed.sample[place], d);
			}
		}
	}
}
