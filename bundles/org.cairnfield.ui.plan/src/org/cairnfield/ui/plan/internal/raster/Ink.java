package org.cairnfield.ui.plan.internal.raster;

import org.cairnfield.ui.charts.colour.Palette;
import org.eclipse.swt.graphics.RGB;

/**
 * Colours of what is not data, 0xRRGGBB.
 *
 * @param background of the floor
 * @param line       of outlines and of what marks a sample
 * @param accent     of what is selected
 */
public record Ink(int background, int line, int accent) {

	/** As a theme has them. */
	public static Ink of(Palette palette, RGB accent) {
		return new Ink(Rgb.of(palette.background()), Rgb.of(palette.strong()), Rgb.of(accent));
	}

	/** Whether the background is dark, and what lies on it light. */
	public boolean isDark() {
		return (background >> 8 & 0xff) < (line >> 8 & 0xff);
	}
}
