package org.cairnfield.ui.plan.internal.colour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.charts.colour.Marker;
import org.cairnfield.ui.charts.colour.Palette;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.plan.internal.raster.Rgb;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.RGB;

/** Colours for kinds: eight at most, the rest together in grey. */
public final class Categories {

	private static final int MOST = 8;

	private Categories() {
	}

	/** For what has no value of its own. */
	public static int grey(RGB background) {
		return Rgb.of(new Palette(Contrast.textOn(background), background).line());
	}

	/** One of the eight. */
	public static SampleLook look(int index, RGB background) {
		Categorical.Style style = Categorical.style(index);
		return SampleLook.solid(Rgb.of(style.colour().on(background)), style.marker());
	}

	/**
	 * Colours kinds in their order; where there are more than eight, the seven with most samples have their own.
	 *
	 * @param names  of all kinds; those without a sample are left out
	 * @param kindOf of a sample, index in names
	 */
	public static SampleColours of(String title, List<String> names, int samples, IntUnaryOperator kindOf,
			RGB background) {
		int[] counts = new int[names.size()];
		int[] lookOf = new int[samples];
		for (int i = 0; i < samples; i++) {
			lookOf[i] = kindOf.applyAsInt(i);
			counts[lookOf[i]]++;
		}
		int[] own = ownColours(counts);
		List<SampleLook> looks = new ArrayList<>();
		List<PlanLegend.Entry> entries = new ArrayList<>();
		int[] place = new int[names.size()];
		int others = 0;
		int kinds = 0;
		Arrays.fill(place, -1);
		for (int kind : own) {
			place[kind] = looks.size();
			looks.add(look(looks.size(), background));
			entries.add(new PlanLegend.Entry(looks.get(looks.size() - 1), names.get(kind), counts[kind]));
		}
		for (int kind = 0; kind < counts.length; kind++) {
			if (counts[kind] > 0 && place[kind] < 0) {
				place[kind] = looks.size();
				others += counts[kind];
				kinds++;
			}
		}
		if (kinds > 0) {
			SampleLook look = SampleLook.solid(grey(background), Marker.PLUS);
			looks.add(look);
			entries.add(new PlanLegend.Entry(look, NLS.bind(Messages.Categories_others, kinds), others));
		}
		for (int i = 0; i < samples; i++) {
			lookOf[i] = place[lookOf[i]];
		}
		return new SampleColours(looks, lookOf, new PlanLegend(title, entries, null));
	}

	private static int[] ownColours(int[] counts) {
		int[] used = IntStream.range(0, counts.length).filter(kind -> counts[kind] > 0).toArray();
		if (used.length <= MOST) {
			return used;
		}
		return IntStream.of(used).boxed().sorted(Comparator.comparingInt((Integer kind) -> -counts[kind]))
				.limit(MOST - 1)
				.mapToInt(Integer::intValue).sorted().toArray();
	}
}
