package org.cairnfield.core.match;

import org.cairnfield.core.cluster.Centroids;
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
		private final SplitQuery query = new SplitQuery(split, relative);
		private final double[] coarse = new double[split.groups == null ? split.centroids.size() : split.groups.size()];
		private final Nearest nearest = new Nearest(voting.k(), split.rank);
		private final Nearest groups = new Nearest(groupProbes, SplitQuery.inOrder(coarse.length));
		private final Nearest cells = new Nearest(cellProbes, SplitQuery.inOrder(split.cells.length));
		private int comparisons;

		@Override
		public Nearest nearest(SignalRows queries, int row) {
			query.begin(queries, row);
			comparisons = 0;
			nearest.clear();
			cells.clear();
			findCells(queries, row);
			for (int i = 0; i < cells.size(); i++) {
				search(cells.sample(i));
			}
			search(split.cells.length);
			query.end(queries, row);
			return nearest;
		}

		private void findCells(SignalRows queries, int row) {
			if (split.groups == null) {
				split.centroids.distances(queries, row, coarse);
				comparisons += coarse.length;
				offerAll(split.centroids, cells);
				return;
			}
			split.groups.distances(queries, row, coarse);
			comparisons += coarse.length;
			groups.clear();
			offerAll(split.groups, groups);
			for (int g = 0; g < groups.size(); g++) {
				for (int cell : split.cellsOfGroup[groups.sample(g)]) {
					cells.offer(cell, query.toCell(cell));
					comparisons++;
				}
			}
		}

		private void offerAll(Centroids of, Nearest into) {
			for (int i = 0; i < coarse.length; i++) {
				double d = query.coarse(of, i, coarse[i]);
				if (d <= into.reach()) {
					into.offer(i, d);
				}
			}
		}

		private void search(int cell) {
			query.search(cell, nearest);
			comparisons += split.packed.size(cell);
		}

		@Override
		public int comparisons() {
			return comparisons;
		}
	}
}
