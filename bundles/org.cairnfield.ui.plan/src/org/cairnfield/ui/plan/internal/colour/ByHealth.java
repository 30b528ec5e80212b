package org.cairnfield.ui.plan.internal.colour;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.charts.colour.Marker;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.plan.internal.raster.Rgb;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.swt.graphics.RGB;

/** The worst open finding about a sample. */
public final class ByHealth implements SampleColouring {

	private static final String[] NAMES = { "error", "warning", "note", Messages.ByHealth_nothingFound };

	@Override
	public String name() {
		return Messages.ByHealth_findings;
	}

	@Override
	public SampleColours colours(SampleRows samples, ArchiveSession session, RGB background) {
		List<SampleLook> looks = List.of(look(Categorical.VERMILLION, Marker.SQUARE, background),
				look(Categorical.ORANGE, Marker.TRIANGLE, background),
				look(Categorical.BLUE, Marker.DIAMOND, background),
				look(Categorical.SKY_BLUE, Marker.CIRCLE, background));
		int[] lookOf = new int[samples.size()];
		int[] counts = new int[looks.size()];
		for (int i = 0; i < lookOf.length; i++) {
			List<Finding> findings = session.findings().of(samples.ref(i));
			lookOf[i] = findings.isEmpty() ? Severity.values().length : findings.get(0).severity().ordinal();
			counts[lookOf[i]]++;
		}
		List<PlanLegend.Entry> entries = new ArrayList<>();
		for (int k = 0; k < looks.size(); k++) {
			if (counts[k] > 0) {
				entries.add(new PlanLegend.Entry(looks.get(k), NAMES[k], counts[k]));
			}
		}
		String title = session.findings().last().isPresent() ? Messages.ByHealth_worstOpenFinding
				: session.findings().isChecking() ? Messages.ByHealth_findingsChecking
						: Messages.ByHealth_findingsNotCheckedYet;
		return new SampleColours(looks, lookOf, new PlanLegend(title, entries, null));
	}

	private static SampleLook look(Categorical colour, Marker marker, RGB background) {
		return SampleLook.solid(Rgb.of(colour.on(background)), marker);
	}
}
