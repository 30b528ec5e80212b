package org.cairnfield.ui.charts.colour;

import org.eclipse.swt.graphics.RGB;

/** Contrast as in the Web Content Accessibility Guidelines (WCAG) 2.1. */
public final class Contrast {

	/** What success criterion 1.4.11 asks of shapes that carry meaning. */
	public static final double SHAPE = 3;

	/** What success criterion 1.4.3 asks of text. */
	public static final double TEXT = 4.5;

	private static final RGB BLACK = new RGB(0, 0, 0);
	private static final RGB WHITE = new RGB(255, 255, 255);

	private Contrast() {
	}

	/** From 1, the same, to 21, black on white. */
	public static double ratio(RGB one, RGB other) {
		double a = luminance(one) + 0.05;
		double b = luminance(other) + 0.05;
		return Math.max(a, b) / Math.min(a, b);
	}

	/** Whether text on this background should be light. */
	public static boolean isDark(RGB background) {
		return ratio(background, WHITE) > ratio(background, BLACK);
	}

	/** Black or white, whichever reads better. */
	public static RGB textOn(RGB background) {
		return isDark(background) ? WHITE : BLACK;
	}

	/**
	 * The colour for the rim of a shape: the fill itself where it stands out from the background by {@link #SHAPE}, else
	 * its hue made darker or lighter until it does.
	 */
	public static RGB rim(RGB fill, RGB background) {
		return standingOut(fill, background, SHAPE);
	}

	/** The colour, or its hue moved away from the background in lightness until the ratio is reached. */
	static RGB standingOut(RGB colour, RGB background, double wanted) {
		Lab start = Lab.of(colour);
		double step = isDark(background) ? 1 : -1;
		RGB found = colour;
		for (double l = start.lightness(); ratio(found, background) < wanted && l >= 0 && l <= 100; l += step) {
			found = start.atLightness(l).rgb();
		}
		return ratio(found, background) < wanted ? textOn(background) : found;
	}

	/** A colour between two, {@code part} of the way from {@code from} to {@code to}. */
	public static RGB between(RGB from, RGB to, double part) {
		return new RGB(mix(from.red, to.red, part), mix(from.green, to.green, part), mix(from.blue, to.blue, part));
	}

	private static int mix(int from, int to, double part) {
		return (int) Math.round(from + (to - from) * part);
	}

	private static double luminance(RGB rgb) {
		return 0.2126 * Lab.linear(rgb.red) + 0.7152 * Lab.linear(rgb.green) + 0.0722 * Lab.linear(rgb.blue);
	}
}
