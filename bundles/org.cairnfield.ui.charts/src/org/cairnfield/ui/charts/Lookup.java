package org.cairnfield.ui.charts;

import org.cairnfield.core.series.Series;

/** Finds points of a series. */
final class Lookup {

	private Lookup() {
	}

	/**
	 * The point that a readout at x tells of.
	 *
	 * @param stepped whether each value holds until the next point; otherwise the nearest point is meant
	 * @return −1 where there is none
	 */
	static int at(Series series, double x, boolean stepped) {
		int found = -1;
		double best = Double.POSITIVE_INFINITY;
		for (int i = 0; i < series.size(); i++) {
			double away = x - series.x(i);
			double distance = stepped && away < 0 ? Double.NaN : Math.abs(away);
			// of points at the same x the last one holds
			if (distance <= best && !Double.isNaN(series.y(i))) {
				best = distance;
				found = i;
			}
		}
		return found;
	}
}
