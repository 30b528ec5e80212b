package org.cairnfield.curation.floors;

import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.curation.floors.FloorChange.Fit;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.SampleTable;

/** The samples of a site that are not set aside, and where they lie. */
final class SiteSamples {

	private final Site site;
	private final double[] bounds = { Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY,
			Double.NEGATIVE_INFINITY };

	/** What is asked of each of them. */
	private interface Visit {
		void sample(int level, double x, double y);
	}

	SiteSamples(Site site) {
		this.site = site;
		visit((level, x, y) -> {
			bounds[0] = Math.min(bounds[0], x);
			bounds[1] = Math.min(bounds[1], y);
			bounds[2] = Math.max(bounds[2], x);
			bounds[3] = Math.max(bounds[3], y);
		});
	}

	private void visit(Visit visit) {
		for (Survey survey : site.getSurveys()) {
			SampleTable table = survey.table();
			for (int row = 0; row < table.size(); row++) {
				if (table.isKept(row)) {
					visit.sample(table.floorLevel(row), table.xMetres(row), table.yMetres(row));
				}
			}
		}
	}

	/** Whether there are none. */
	boolean isEmpty() {
		return !(bounds[0] <= bounds[2]);
	}

	/** {x, y} of the middle of the box around them, or null. */
	double[] middle() {
		return isEmpty() ? null : new double[] { (bounds[0] + bounds[2]) / 2, (bounds[1] + bounds[3]) / 2 };
	}

	/** How far the box around them is from that of an outline, in metres; 0 where they overlap. */
	double metresTo(Outline outline) {
		double[] other = outline.polygon().bounds();
		return Math.hypot(Math.max(0, Math.max(other[0] - bounds[2], bounds[0] - other[2])),
				Math.max(0, Math.max(other[1] - bounds[3], bounds[1] - other[3])));
	}

	/** Those on a floor, and how they lie to an outline of it, which may be null. */
	Fit fit(int level, Outline outline) {
		int[] count = new int[2];
		double[] farthest = new double[1];
		Polygon polygon = outline == null ? null : outline.polygon();
		visit((on, x, y) -> {
			if (on == level) {
				count[0]++;
				if (polygon != null && !polygon.contains(x, y)) {
					count[1]++;
					farthest[0] = Math.max(farthest[0], polygon.metresToEdge(x, y));
				}
			}
		});
		return new Fit(count[0], count[1], farthest[0]);
	}
}
