package org.cairnfield.curation.edit;

import java.util.Arrays;
import java.util.Optional;

import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.Floor;
import org.cairnfield.model.values.Outline;

/** An outline for a floor that has none but was surveyed: convex, around its samples that are not set aside. */
public final class SampledOutline {

	private SampledOutline() {
	}

	/**
	 * @param marginMetres how far outside of the samples it lies at least, 0 or more
	 * @return with corners to a centimetre; empty without a sample, or where the samples lie on one line and there is no margin
	 */
	public static Optional<Outline> of(Floor floor, double marginMetres) {
		SampleRows rows = SampleRows.of(floor);
		double[] x = new double[rows.size()];
		double[] y = new double[rows.size()];
		int kept = 0;
		for (int i = 0; i < rows.size(); i++) {
			if (rows.table(i).isKept(rows.row(i))) {
				x[kept] = rows.table(i).xMetres(rows.row(i));
				y[kept++] = rows.table(i).yMetres(rows.row(i));
			}
		}
		Polygon around = Polygon.around(Arrays.copyOf(x, kept), Arrays.copyOf(y, kept), marginMetres);
		return Optional.ofNullable(around).map(SampledOutline::toCentimetres);
	}

	private static Outline toCentimetres(Polygon polygon) {
		double[] x = new double[polygon.size()];
		double[] y = new double[polygon.size()];
		for (int i = 0; i < x.length; i++) {
			x[i] = Math.rint(polygon.xMetres(i) * 100) / 100;
			y[i] = Math.rint(polygon.yMetres(i) * 100) / 100;
		}
		return Outline.of(x, y);
	}
}
