package org.cairnfield.ui.charts;

import java.util.Objects;

/** A point of a plot with a short text, such as an elbow; x and y in the units of the data. */
public record Mark(double x, double y, String text) {

	public Mark {
		Objects.requireNonNull(text);
	}
}
