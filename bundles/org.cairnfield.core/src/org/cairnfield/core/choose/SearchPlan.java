package org.cairnfield.core.choose;

import java.util.List;

/**
 * How a split is searched.
 *
 * @param twoLevel    whether groups of centroids come first
 * @param groupProbes groups entered, 1 in one level
 * @param cellProbes  cells searched
 */
public record SearchPlan(boolean twoLevel, int groupProbes, int cellProbes) {

	/** What the automatic choice tries. */
	static final List<SearchPlan> TRIED = List.of(new SearchPlan(false, 1, 1), new SearchPlan(false, 1, 2),
			new SearchPlan(false, 1, 3), new SearchPlan(true, 2, 3), new SearchPlan(true, 3, 4), new SearchPlan(true, 4, 4),
			new SearchPlan(true, 6, 8));

	@Override
	public String toString() {
		return twoLevel ? "two levels, " + groupProbes + " groups + " + cellProbes + " cells"
				: cellProbes == 1 ? "1 cell" : cellProbes + " cells";
	}
}
