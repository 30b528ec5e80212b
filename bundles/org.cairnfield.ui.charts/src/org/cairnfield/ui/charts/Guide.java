package org.cairnfield.ui.charts;

import java.util.Objects;

/**
 * A line across a plot that the user can move.
 *
 * @param upright whether it stands at a value of x; otherwise it lies at a value of y
 * @param value   in the unit of the data, not multiplied by the factor of the axis
 * @param label   short, such as "ε"
 */
public record Guide(boolean upright, double value, String label) {

	/** Told where the guide is. */
	public interface Listener {
		/**
		 * @param settled false while the mouse still drags it: then only what is cheap should follow
		 */
		void moved(double value, boolean settled);
	}

	public Guide {
		Objects.requireNonNull(label);
	}

	/** The same line elsewhere. */
	public Guide at(double newValue) {
		return new Guide(upright, newValue, label);
	}
}
