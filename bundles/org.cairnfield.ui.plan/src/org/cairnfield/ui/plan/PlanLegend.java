package org.cairnfield.ui.plan;

import java.util.List;
import java.util.Objects;

/**
 * What the colours of the plan mean: kinds with their names, or a ramp with its ends.
 *
 * @param title   what is shown, without unit, such as "RSSI of 00:00:5e:00:53:01"
 * @param entries kinds, in order
 * @param ramp    null where there is none
 */
public record PlanLegend(String title, List<Entry> entries, Ramp ramp) {

	/** A kind of sample. @param count how many samples of the floor look like this */
	public record Entry(SampleLook look, String label, int count) {
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
