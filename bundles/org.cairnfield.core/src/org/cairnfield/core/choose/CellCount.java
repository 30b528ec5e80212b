package org.cairnfield.core.choose;

import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;

/**
 * Cells, and groups of them.
 *
 * @param groups     0 for one level
 * @param unevenness how many times as many cells a group that is entered has as the mean group: large ones are entered more often
 */
record CellCount(double cells, double groups, double unevenness) {

	static CellCount of(SplitMap split) {
		double squares = 0;
		for (int g = 0; g < split.groups(); g++) {
			double size = split.cellsOf(g).length;
			squares += size * size;
		}
		double cells = split.cells();
		return new CellCount(cells, split.groups(), split.groups() == 0 ? 1 : squares / cells * split.groups() / cells);
	}

	/** As if groups were of one size. */
	CellCount even() {
		return new CellCount(cells, groups, 1);
	}

	/** How many centroids, of groups and of cells, a query compares. */
	double compared(Search search) {
		return groups == 0 ? cells : groups + Math.min(groups, search.groupProbes()) * cells * unevenness / groups;
	}
}
