package org.cairnfield.ui.plan.internal.raster;

/**
 * Colours of what is not data, 0xRRGGBB.
 *
 * @param background of the floor
 * @param line       of outlines and of what marks a sample
 * @param accent     of what is selected
 */
public record Ink(int background, int line, int accent) {

	/** Whether the background is dark, and what lies on it light. */
	public boolean isDark() {
		return (background >> 8 & 0xff) < (line >> 8 & 0xff);
	}
}
