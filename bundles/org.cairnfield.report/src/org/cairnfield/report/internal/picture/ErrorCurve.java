package org.cairnfield.report.internal.picture;

import java.io.Serializable;
import java.util.Arrays;
import org.cairnfield.core.series.Curve;
import org.cairnfield.core.series.Series;
import org.cairnfield.core.stats.Percentile;

/**
 * One curve of {@link Pictures#errorDistribution} with the figures in its key.
 *
 * @param distribution share of the errors, 0 to 1, over metres: {@link Curve#distribution}
 * @param n            how many errors
 * @param medianMetres by {@link Percentile#RULE}, as are the next two
 * @param p75Metres    75th percentile
 * @param p95Metres    95th percentile
 * @param maxMetres    the largest
 */
public record ErrorCurve(Series distribution, int n, double medianMetres, double p75Metres, double p95Metres,
		double maxMetres) implements Serializable {

	/**
	 * The curve of a set of position errors.
	 *
	 * @param name         for the key
	 * @param errorsMetres at least one, all finite
	 * @throws IllegalArgumentException for none
	 */
	public static ErrorCurve of(String name, double[] errorsMetres) {
		if (errorsMetres.length == 0) {
			throw new IllegalArgumentException("no errors for \"" + name + "\"");
		}
		double[] figures = Percentile.of(Percentile.RULE, errorsMetres, 50, 75, 95);
		return new ErrorCurve(Curve.distribution(name, errorsMetres), errorsMetres.length, figures[0], figures[1],
				figures[2], Arrays.stream(errorsMetres).max().getAsDouble());
	}

	/** Where the curve reaches a share; on the curve itself, so not always a percentile by the rule. */
	double metresAt(double share) {
		int i = 0;
		while (i < distribution.size() - 1 && distribution.y(i) < share) {
			i++;
		}
		return distribution.x(i);
	}

	/** Share of the errors that are larger. */
	double shareBeyond(double metres) {
		double within = 0;
		for (int i = 0; i < distribution.size() && distribution.x(i) <= metres; i++) {
			within = distribution.y(i);
		}
		return 1 - within;
	}
}
