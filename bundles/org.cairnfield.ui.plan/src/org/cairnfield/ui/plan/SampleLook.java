package org.cairnfield.ui.plan;

import java.util.Objects;

import org.cairnfield.ui.charts.colour.Marker;

/**
 * How samples of one kind are drawn.
 *
 * @param rgb    0xRRGGBB
 * @param marker shape that says the same as the colour
 * @param fill   how much of the shape is drawn
 */
public record SampleLook(int rgb, Marker marker, Fill fill) {

	/** How a shape is filled. */
	public enum Fill {
		/** All of it. */
		SOLID,
		/** The rim only, as noise is shown. */
		HOLLOW,
		/** The rim and a dot in the middle, as a proposal is shown. */
		DOTTED
	}

	public SampleLook {
		Objects.requireNonNull(marker);
		Objects.requireNonNull(fill);
	}

	/** A filled shape. */
	public static SampleLook solid(int rgb, Marker marker) {
		return new SampleLook(rgb, marker, Fill.SOLID);
	}
}
