package org.cairnfield.ui.plan.internal.surface;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.core.surface.Surface;
import org.cairnfield.ui.charts.colour.Continuous;
import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.internal.geometry.Bounds;
import org.cairnfield.ui.plan.internal.raster.FloorLayer;
import org.cairnfield.ui.plan.internal.raster.Rgb;
import org.eclipse.swt.graphics.RGB;

/**
 * A surface as the plan shows it.
 *
 * @param surface the values
 * @param title   what they are, without unit
 * @param low     value of the first colour
 * @param high    value of the last
 * @param unit    of both
 * @param grey    whether in shades of grey, which mean nothing else on the plan; else in the colours of levels
 * @param words   how it was made, and where it says nothing
 */
public record FloorSurface(Surface surface, String title, double low, double high, String unit, boolean grey,
		String words) {

	private static final int STEPS = 24;
	/** Part of the colour on the background, so that samples above stand out. */
	private static final double STRENGTH = 0.6;
	/** Shares of the ink in the shades of grey. */
	private static final double LIGHTEST = 0.04;
	private static final double DARKEST = 0.5;

	/** Nothing but words. */
	public static FloorSurface none(String words) {
		return new FloorSurface(new Surface(0, 0, 1, 0, 0, new double[0], 0, Double.NaN), "", 0, 1, "", false, words);
	}

	private int step(double value) {
		return (int) Math.round(Math.max(0, Math.min(1, (value - low) / (high - low))) * (STEPS - 1));
	}

	private int rgb(int step, RGB background) {
		if (grey) {
			return Rgb.between(Rgb.of(background), Contrast.isDark(background) ? 0xffffff : 0,
					LIGHTEST + (DARKEST - LIGHTEST) * step / (STEPS - 1));
		}
		Continuous ramp = Contrast.isDark(background) ? Continuous.rising() : Continuous.falling();
		return Rgb.between(Rgb.of(background), Rgb.of(ramp.rgb(step / (STEPS - 1.0))), STRENGTH);
	}

	/** What its colours mean. */
	public PlanLegend legend(RGB background) {
		if (surface.values().length == 0) {
			return new PlanLegend("", List.of(), null);
		}
		int[] colours = new int[STEPS];
		for (int step = 0; step < STEPS; step++) {
			colours[step] = rgb(step, background);
		}
		return new PlanLegend(title, List.of(), new PlanLegend.Ramp(low, high, unit, colours));
	}

	/** @param inside what is outside is left out; empty for all */
	public FloorLayer layer(RGB background, Bounds inside) {
		List<FloorLayer.Patch> patches = new ArrayList<>();
		for (int row = 0; row < surface.rows(); row++) {
			for (int from = 0, to; from < surface.columns(); from = to) { // as far as the colour is the same
				double value = surface.value(from, row);
				to = from + 1;
				while (to < surface.columns() && isAlike(value, surface.value(to, row))) {
					to++;
				}
				if (!Double.isNaN(value)) {
					double left = surface.leftMetres();
					double bottom = surface.bottomMetres();
					double side = surface.sideMetres();
					Bounds whole = new Bounds(left + from * side, bottom + row * side, left + to * side,
							bottom + (row + 1) * side);
					patches.add(new FloorLayer.Patch(inside.isEmpty() ? whole : whole.within(inside),
							rgb(step(value), background)));
				}
			}
		}
		return new FloorLayer(patches, List.of(), 0);
	}

	private boolean isAlike(double value, double other) {
		return Double.isNaN(value) ? Double.isNaN(other) : !Double.isNaN(other) && step(value) == step(other);
	}
}
