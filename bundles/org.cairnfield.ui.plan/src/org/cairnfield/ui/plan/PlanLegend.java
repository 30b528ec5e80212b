package org.cairnfield.ui.plan;

import java.util.List;
import java.util.Objects;

import org.cairnfield.ui.charts.scale.ShownNumbers;

/**
 * What the colours of the plan mean: kinds with their names, or a ramp with its ends.
 *
 * @param title   what is shown, without unit, such as "RSSI of 00:00:5e:00:53:01"
 * @param entries kinds, in order
 * @param ramp    null where there is none
 */
public record PlanLegend(String title, List<Entry> entries, Ramp ramp) {

	/** A kind of sample. @param count how many samples of the floor look like this, or {@link #UNCOUNTED} */
	public record Entry(SampleLook look, String label, int count) {

		/** In place of a number that would say nothing. */
		public static final int UNCOUNTED = -1;

		/** The label with the count, if there is one, such as "kept (20,000)". */
		public String text() {
			return count == UNCOUNTED ? label : label + " (" + ShownNumbers.text(count, 0) + ")";
		}
	}

	/**
	 * A range of values.
	 *
	 * @param low    value of the first colour
	 * @param high   value of the last
	 * @param unit   such as "dBm"; never empty
	 * @param colours 0xRRGGBB from low to high
	 */
	public record Ramp(double low, double high, String unit, int[] colours) {
	}

	public PlanLegend {
		Objects.requireNonNull(title);
		entries = List.copyOf(entries);
	}
}
