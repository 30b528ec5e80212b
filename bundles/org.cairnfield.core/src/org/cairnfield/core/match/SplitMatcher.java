package org.cairnfield.core.match;

import java.util.Arrays;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;

/**
 * Coarse search for the nearest centroids, fine search inside their cells. In two levels the groups of
 * centroids come first. Every centroid and sample looked at counts as a comparison.
 *
 * <p>The coarse search may compare relative distances, d over the sum of both magnitudes. A mean of many
 * samples is loud, and a faint query is then nearer to any quiet group, even one it has nothing in common
 * with; relative to the magnitudes such a group is as far as can be. Measured on an open survey of three
 * buildings: groups taken by plain distance sent 2 % of the queries to a wrong building.
 */
public final class SplitMatcher implements Matcher {

	private final SplitMap split;
	private final int groupProbes;
	private final int cellProbes;
	private final boolean relative;
	private final Voting voting;

	/**
	 * @param groupProbes groups entered; without meaning in one level
	 * @param cellProbes  cells searched
	 * @param relative    whether the coarse search goes by relative distances
	 * @throws IllegalArgumentException for no probe, or several cells of a split whose zones overlap: a sample would vote twice
	 */
	public SplitMatcher(SplitMap split, int groupProbes, int cellProbes, boolean relative, Voting voting) {
		if (groupProbes < 1 || cellProbes < 1) {
			throw new IllegalArgumentException("at least one probe: " + groupProbes + ", " + cellProbes);
		}
		if (split.overlaps() && cellProbes > 1) {
			throw new IllegalArgumentException("of overlapping zones a query searches one only, not " + cellProbes);
		}
		this.split = split;
		this.groupProbes = groupProbes;
		this.cellProbes = cellProbes;
		this.relative = relative;
		this.voting = voting;
	}

	@Override
	public Signals signals() {
		return split.signals;
	}

	@Override
	public Voting voting() {
		return voting;
	}

	@Override
	public Session session() {
		return new SplitSession();
	}

	private final class SplitSession implements Session {
		private final Signals signals = split.signals;
		private final Distance distance = signals.distance();
		private final double[] coarse = new double[split.groups == null ? split.centroids.size() : split.groups.size()];
		/** The query by access point; all 0 between calls. */
		private final double[] query = new double[signals.map().accessPointCount()];
		/** By access point: the overlap of the query's step there with any step; of "not heard" between calls. */
		private final double[][] overlaps = new double[query.length][];
		private final Nearest nearest = new Nearest(voting.k(), split.rank);
		private final Nearest groups = new Nearest(groupProbes, inOrder(coarse.length));
		private final Nearest cells = new Nearest(cellProbes, inOrder(split.cells.length));
		private int comparisons;

		SplitSession() {
			Arrays.fill(overlaps, signals.overlaps(0));
		}

		private int[] inOrder(int n) {
			int[] order = new int[n];
			Arrays.setAll(order, i -> i);
			return order;
		}

		@Override
		public Nearest nearest(SignalRows queries, int row) {
			for (int k = queries.start(row); k < queries.end(row); k++) {
				query[queries.column(k)] = signals.value(queries.step(k));
				overlaps[queries.column(k)] = signals.overlaps(queries.step(k));
			}
			double magnitude = queries.magnitude(row);
			comparisons = 0;
			nearest.clear();
			cells.clear();
			findCells(queries, row, magnitude);
			for (int i = 0; i < cells.size(); i++) {
				search(cells.sample(i), magnitude);
			}
			search(split.cells.length, magnitude);
			for (int k = queries.start(row); k < queries.end(row); k++) {
				query[queries.column(k)] = 0;
				overlaps[queries.column(k)] = signals.overlaps(0);
			}
			return nearest;
		}

		private void findCells(SignalRows queries, int row, double magnitude) {
			if (split.groups == null) {
				split.centroids.distances(queries, row, coarse);
				comparisons += coarse.length;
				offerAll(split.centroids, magnitude, cells);
				return;
			}
			split.groups.distances(queries, row, coarse);
			comparisons += coarse.length;
			groups.clear();
			offerAll(split.groups, magnitude, groups);
			for (int g = 0; g < groups.size(); g++) {
				for (int cell : split.cellsOfGroup[groups.sample(g)]) {
					cells.offer(cell, coarse(split.centroids, cell, magnitude, split.centroids.distance(cell, query, magnitude)));
					comparisons++;
				}
			}
		}

		private void offerAll(Centroids of, double magnitude, Nearest into) {
			for (int i = 0; i < coarse.length; i++) {
				double d = coarse(of, i, magnitude, coarse[i]);
				if (d <= into.reach()) {
					into.offer(i, d);
				}
			}
		}

		private double coarse(Centroids of, int centroid, double magnitude, double distance) {
			double both = magnitude + of.magnitude(centroid);
			return relative && both > 0 ? distance / both : distance;
		}

		private void search(int cell, double magnitude) {
			PackedCells packed = split.packed;
			int to = packed.cellStart[cell + 1];
			for (int place = packed.cellStart[cell]; place < to; place++) {
				double overlap = 0;
				for (int k = packed.entryStart[place], end = packed.entryStart[place + 1]; k < end; k++) {
					overlap += overlaps[packed.column[k]][packed.step[k]];
				}
				double d = distance.finish(magnitude + packed.magnitude[place] - 2 * overlap);
				if (d <= nearest.reach()) {
					nearest.offer(packed.sample[place], d);
				}
			}
			comparisons += to - packed.cellStart[cell];
		}

		@Override
		public int comparisons() {
			return comparisons;
		}
	}
}
