package org.cairnfield.core.cluster;

import java.util.Arrays;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;

/**
 * What stands for each cell of a split in the coarse search: real-valued sparse rows, and for each access
 * point the list of centroids that hold it, so that a query's distances to all of them are one pass over
 * the lists of what it heard.
 */
public final class Centroids {

	/** What stands for a cell. */
	public enum Kind {
		/** The mean of its members' values, unheard counting as 0. */
		MEAN,
		/** The member with the smallest sum of distances to the others. */
		MEDOID
	}

	private final Signals signals;
	private final Distance distance;
	private final int[] start;
	private final int[] column;
	private final double[] value;
	private final double[] magnitude;
	private final int[] listStart;
	private final int[] listCentroid;
	private final double[] listValue;

	private Centroids(Signals signals, int[] start, int[] column, double[] value) {
		this.signals = signals;
		this.distance = signals.distance();
		this.start = start;
		this.column = column;
		this.value = value;
		int n = start.length - 1;
		magnitude = new double[n];
		listStart = new int[signals.map().accessPointCount() + 1];
		for (int c = 0; c < n; c++) {
			for (int k = start[c]; k < start[c + 1]; k++) {
				magnitude[c] += distance.magnitude(value[k]);
				listStart[column[k] + 1]++;
			}
		}
		for (int c = 1; c < listStart.length; c++) {
			listStart[c] += listStart[c - 1];
		}
		int[] next = Arrays.copyOf(listStart, listStart.length - 1);
		listCentroid = new int[column.length];
		listValue = new double[column.length];
		for (int c = 0; c < n; c++) {
			for (int k = start[c]; k < start[c + 1]; k++) {
				int at = next[column[k]]++;
				listCentroid[at] = c;
				listValue[at] = value[k];
			}
		}
	}

	/** One centroid a cell; {@code members} are samples of the signals' map. */
	public static Centroids of(Signals signals, int[][] members, Kind kind) {
		Collector collector = new Collector(signals.map().accessPointCount());
		for (int[] cell : members) {
			if (kind == Kind.MEDOID) {
				collector.addSample(signals, medoid(signals, cell), 1);
			} else {
				for (int sample : cell) {
					collector.addSample(signals, sample, 1.0 / cell.length);
				}
			}
			collector.endRow();
		}
		return collector.centroids(signals);
	}

	/** Means of groups of centroids, for a search in two levels. */
	public Centroids grouped(int[][] groups) {
		Collector collector = new Collector(signals.map().accessPointCount());
		for (int[] group : groups) {
			for (int c : group) {
				for (int k = start[c]; k < start[c + 1]; k++) {
					collector.add(column[k], value[k] / group.length);
				}
			}
			collector.endRow();
		}
		return collector.centroids(signals);
	}

	/**
	 * The same with every value rounded to a multiple of 1/parts; what rounds to 0 is left out. With a power of two sums of
	 * such values are exact in double precision, so that a device gets the same distances whatever order it adds them in.
	 *
	 * @param parts of one unit of the signals' values, at least 1
	 */
	public Centroids rounded(int parts) {
		if (parts < 1) {
			throw new IllegalArgumentException("parts must be at least 1: " + parts);
		}
		Collector collector = new Collector(signals.map().accessPointCount());
		for (int c = 0; c < size(); c++) {
			for (int k = start[c]; k < start[c + 1]; k++) {
				long rounded = Math.round(value[k] * parts);
				if (rounded > 0) {
					collector.add(column[k], (double) rounded / parts);
				}
			}
			collector.endRow();
		}
		return collector.centroids(signals);
	}

	public int size() {
		return magnitude.length;
	}

	/** First entry of a centroid; its entries are {@code start(c) … end(c) - 1}, ascending by column. */
	public int start(int centroid) {
		return start[centroid];
	}

	/** One past the last entry of a centroid. */
	public int end(int centroid) {
		return start[centroid + 1];
	}

	/** Access point index of an entry. */
	public int column(int entry) {
		return column[entry];
	}

	/** Value of an entry, in the signals' values. */
	public double value(int entry) {
		return value[entry];
	}

	/** Σ of the distance's magnitude over a centroid. */
	public double magnitude(int centroid) {
		return magnitude[centroid];
	}

	/** Distances of a query to all centroids; out is at least {@link #size} long. */
	public void distances(SignalRows queries, int query, double[] out) {
		Arrays.fill(out, 0, size(), 0);
		for (int k = queries.start(query); k < queries.end(query); k++) {
			addOverlaps(queries.column(k), signals.value(queries.step(k)), out);
		}
		finish(queries.magnitude(query), out);
	}

	/** Distances of one of some other centroids to all of these. */
	public void distances(Centroids others, int other, double[] out) {
		Arrays.fill(out, 0, size(), 0);
		for (int k = others.start[other]; k < others.start[other + 1]; k++) {
			addOverlaps(others.column[k], others.value[k], out);
		}
		finish(others.magnitude[other], out);
	}

	private void addOverlaps(int c, double v, double[] out) {
		for (int p = listStart[c]; p < listStart[c + 1]; p++) {
			out[listCentroid[p]] += distance.overlap(v, listValue[p]);
		}
	}

	private void finish(double m, double[] out) {
		for (int c = 0; c < magnitude.length; c++) {
			out[c] = distance.finish(m + magnitude[c] - 2 * out[c]);
		}
	}

	/** Distance of one centroid to a query laid out by access point, 0 where it heard nothing. */
	public double distance(int centroid, double[] query, double queryMagnitude) {
		double overlap = 0;
		for (int k = start[centroid]; k < start[centroid + 1]; k++) {
			overlap += distance.overlap(query[column[k]], value[k]);
		}
		return distance.finish(queryMagnitude + magnitude[centroid] - 2 * overlap);
	}

	private static int medoid(Signals signals, int[] cell) {
		DistanceKernel kernel = signals.kernel();
		double[] row = new double[signals.components().largest()];
		int best = cell[0];
		double least = Double.POSITIVE_INFINITY;
		for (int sample : cell) {
			kernel.row(sample, row);
			int component = signals.components().componentOf(sample);
			double sum = 0;
			for (int other : cell) {
				sum += signals.components().componentOf(other) == component
						? row[signals.components().placeOf(other)]
						: signals.apart(sample, other);
			}
			if (sum < least) {
				least = sum;
				best = sample;
			}
		}
		return best;
	}

	/** Builds sparse rows one after the other. */
	private static final class Collector {
		private final double[] dense;
		private final int[] touched;
		private int touchedCount;
		private int[] start = new int[] { 0 };
		private int[] column = new int[1024];
		private double[] value = new double[1024];
		private int rows;
		private int entries;

		Collector(int columns) {
			dense = new double[columns];
			touched = new int[columns];
		}

		void addSample(Signals signals, int sample, double weight) {
			SignalRows rows = signals.rows();
			for (int k = rows.start(sample); k < rows.end(sample); k++) {
				add(rows.column(k), signals.value(rows.step(k)) * weight);
			}
		}

		void add(int c, double v) {
			if (dense[c] == 0) {
				touched[touchedCount++] = c;
			}
			dense[c] += v;
		}

		void endRow() {
			Arrays.sort(touched, 0, touchedCount);
			for (int t = 0; t < touchedCount; t++) {
				if (entries == column.length) {
					column = Arrays.copyOf(column, entries * 2);
					value = Arrays.copyOf(value, entries * 2);
				}
				column[entries] = touched[t];
				value[entries++] = dense[touched[t]];
				dense[touched[t]] = 0;
			}
			touchedCount = 0;
			if (++rows == start.length) {
				start = Arrays.copyOf(start, rows * 2);
			}
			start[rows] = entries;
		}

		Centroids centroids(Signals signals) {
			return new Centroids(signals, Arrays.copyOf(start, rows + 1), Arrays.copyOf(column, entries),
					Arrays.copyOf(value, entries));
		}
	}
}
