package org.cairnfield.ui.plan.internal.colour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.curation.measure.Landing;
import org.cairnfield.curation.measure.SideBySide.Placed;
import org.cairnfield.ui.charts.colour.Continuous;
import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.charts.colour.Marker;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.plan.internal.raster.Rgb;
import org.cairnfield.ui.plan.internal.errors.FloorErrors;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.RGB;

/** Colours of an error map: the larger an error, the more it stands out; a shape says whether the floor is right. */
public final class ErrorColours {

	private static final int STEPS = 24;
	/** Part of the colour in the heat, so that the plan below stays legible. */
	private static final double HEAT = 0.6;

	private ErrorColours() {
	}

	private static Continuous ramp(RGB background) {
		return Contrast.isDark(background) ? Continuous.rising() : Continuous.falling();
	}

	/** 0xRRGGBB of an error in the heat, as it comes out on the background. */
	public static int heat(double metres, double topMetres, RGB background) {
		return Rgb.between(Rgb.of(background), Rgb.of(ramp(background).rgb(metres / topMetres)), HEAT);
	}

	/** The looks of the test samples, and what colours and shapes mean. */
	public static SampleColours of(FloorErrors errors, RGB background) {
		List<SampleLook> looks = new ArrayList<>();
		for (Landing landing : Landing.values()) {
			for (int step = 0; step < STEPS; step++) {
				looks.add(look(landing, step / (STEPS - 1.0), background));
			}
		}
		int[] lookOf = new int[errors.samples().size()];
		for (int i = 0; i < lookOf.length; i++) {
			Placed placed = errors.placed(i);
			double part = placed.landing() == Landing.NOWHERE ? 0
					: Math.min(1, placed.errorMetres() / errors.topMetres());
			lookOf[i] = placed.landing().ordinal() * STEPS + (int) Math.round(part * (STEPS - 1));
		}
		return new SampleColours(looks, lookOf, legend(List.of(errors), background));
	}

	private static SampleLook look(Landing landing, double part, RGB background) {
		int rgb = Rgb.of(ramp(background).rgb(part));
		return switch (landing) {
		case RIGHT_FLOOR -> SampleLook.solid(rgb, Marker.CIRCLE);
		case OTHER_FLOOR -> SampleLook.solid(rgb, Marker.TRIANGLE);
		case OTHER_SITE -> SampleLook.solid(rgb, Marker.SQUARE);
		case NOWHERE -> SampleLook.solid(Categories.grey(background), Marker.CROSS);
		};
	}

	/** What colours and shapes of one or more maps of one floor and scale mean; shapes that none of them has are left out. */
	public static PlanLegend legend(List<FloorErrors> errors, RGB background) {
		int[] colours = new int[STEPS];
		for (int step = 0; step < STEPS; step++) {
			colours[step] = heat(step, STEPS - 1, background);
		}
		List<PlanLegend.Entry> entries = Arrays.stream(Landing.values())
				.filter(landing -> errors.stream().anyMatch(each -> each.placed().count(landing) > 0))
				.map(landing -> new PlanLegend.Entry(look(landing, 0.5, background), label(landing),
						PlanLegend.Entry.UNCOUNTED))
				.toList();
		FloorErrors first = errors.get(0);
		return new PlanLegend(
				NLS.bind(Messages.ErrorColours_meanErrorInSquaresOf,
						ShownNumbers.text(first.placed().squareMetres(), 0, "m")),
				entries,
				new PlanLegend.Ramp(0, first.topMetres(), Messages.ErrorColours_mOrMore, colours));
	}

	private static String label(Landing landing) {
		return switch (landing) {
		case RIGHT_FLOOR -> Messages.ErrorColours_putOnTheRightFloor;
		case OTHER_FLOOR -> Messages.ErrorColours_onAnotherFloorDashedArrow;
		case OTHER_SITE -> Messages.ErrorColours_atAnotherSiteNoArrow;
		case NOWHERE -> Messages.ErrorColours_noPosition;
		};
	}
}
