package org.cairnfield.ui.plan.internal.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

import org.cairnfield.ui.charts.colour.Continuous;
import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.charts.colour.Marker;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.plan.internal.raster.Rgb;
import org.eclipse.swt.graphics.RGB;

/** Colours for values: the higher, the more they stand out from the background. */
public final class Ramps {

	private static final int STEPS = 48;

	private Ramps() {
	}

	/**
	 * Colours values; what has none is a grey plus.
	 *
	 * @param valueOf of a sample; NaN for none
	 * @param none    what it means to have none, such as "not heard"
	 */
	public static SampleColours of(String title, double low, double high, String unit, int samples,
			IntToDoubleFunction valueOf, String none, RGB background) {
		Continuous ramp = Contrast.isDark(background) ? Continuous.rising() : Continuous.falling();
		List<SampleLook> looks = new ArrayList<>();
		int[] colours = new int[STEPS];
		for (int step = 0; step < STEPS; step++) {
			colours[step] = Rgb.of(ramp.rgb(step / (STEPS - 1.0)));
			looks.add(SampleLook.solid(colours[step], Marker.CIRCLE));
		}
		SampleLook without = SampleLook.solid(Categories.grey(background), Marker.PLUS);
		looks.add(without);
		int[] lookOf = new int[samples];
		int missing = 0;
		for (int i = 0; i < samples; i++) {
			double value = valueOf.applyAsDouble(i);
			if (Double.isNaN(value)) {
				lookOf[i] = STEPS;
				missing++;
			} else {
				double part = high > low ? (value - low) / (high - low) : 0.5;
				lookOf[i] = (int) Math.round(Math.max(0, Math.min(1, part)) * (STEPS - 1));
			}
		}
		List<PlanLegend.Entry> entries = missing == 0 ? List.of()
				: List.of(new PlanLegend.Entry(without, none, missing));
		return new SampleColours(looks, lookOf,
				new PlanLegend(title, entries, new PlanLegend.Ramp(low, high, unit, colours)));
	}
}
