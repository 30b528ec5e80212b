package org.cairnfield.ui.charts.colour;

import org.eclipse.swt.graphics.RGB;

/**
 * A ramp from dark blue over teal to light yellow: a curve through CIE 1976 L*a*b*, walked at even speed, so that equal
 * steps of the value are equal differences ΔE*ab, and lightness rises all the way. It runs along the axis from blue to
 * yellow, which people without working L or M cones see as well.
 */
public final class Continuous {

	// Corners of a quadratic Bézier curve, each L*, a*, b*. The L* are evenly spaced, so lightness never turns.
	private static final double[][] CORNERS = { { 24, 24, -50 }, { 56.5, -60, -8 }, { 89, -6, 74 } };
	private static final int STEPS = 256;

	private final RGB[] ramp = new RGB[STEPS];

	private Continuous(boolean falling) {
		int fine = 4096;
		double[] along = new double[fine + 1];
		for (int i = 1; i <= fine; i++) {
			along[i] = along[i - 1] + at(i / (double) fine).difference(at((i - 1) / (double) fine));
		}
		int next = 0;
		for (int step = 0; step < STEPS; step++) {
			double wanted = along[fine] * step / (STEPS - 1);
			while (next < fine && along[next] < wanted) {
				next++;
			}
			ramp[falling ? STEPS - 1 - step : step] = at(next / (double) fine).rgb();
		}
	}

	private static final class Ramps {
		static final Continuous RISING = new Continuous(false);
		static final Continuous FALLING = new Continuous(true);
	}

	/** Dark for low, light for high. */
	public static Continuous rising() {
		return Ramps.RISING;
	}

	/** Light for low, dark for high. */
	public static Continuous falling() {
		return Ramps.FALLING;
	}

	/**
	 * The colour. Not every one stands out from every background: give shapes a {@link Contrast#rim}.
	 *
	 * @param fraction cut to 0 … 1
	 * @throws IllegalArgumentException for NaN: what has no value has no colour either
	 */
	public RGB rgb(double fraction) {
		if (Double.isNaN(fraction)) {
			throw new IllegalArgumentException("no colour for NaN");
		}
		RGB found = ramp[(int) Math.round(Math.max(0, Math.min(1, fraction)) * (STEPS - 1))];
		return new RGB(found.red, found.green, found.blue);
	}

	/** A point of the curve as designed, {@code t} not proportional to the length. */
	static Lab at(double t) {
		double u = 1 - t;
		double[] c = new double[3];
		for (int i = 0; i < 3; i++) {
			c[i] = u * u * CORNERS[0][i] + 2 * u * t * CORNERS[1][i] + t * t * CORNERS[2][i];
		}
		return new Lab(c[0], c[1], c[2]);
	}
}
