package org.cairnfield.curation.split;

import java.util.List;

/**
 * A grid of ε × minPts.
 *
 * @param epsilons ascending
 * @param minPts   in the order asked for
 * @param cells    by minPts, then ε
 * @param basis    what the errors were computed from, for a person; empty where there are none
 */
public record SweepTable(double[] epsilons, int[] minPts, List<SweepCell> cells, String basis) {

	/** By places in {@link #epsilons} and {@link #minPts}. */
	public SweepCell cell(int epsilonAt, int minPtsAt) {
		return cells.get(minPtsAt * epsilons.length + epsilonAt);
	}

	/** Whether errors were asked for. */
	public boolean hasErrors() {
		return !basis.isEmpty();
	}
}
