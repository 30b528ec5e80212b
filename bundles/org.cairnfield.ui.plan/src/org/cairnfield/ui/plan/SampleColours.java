package org.cairnfield.ui.plan;

import java.util.List;

import org.cairnfield.curation.samples.SampleRows;

/**
 * The looks of a floor's samples.
 *
 * @param looks  those that occur; keep them below some hundred
 * @param lookOf for each sample of {@link SampleRows} the index in looks; kept, not copied
 */
public record SampleColours(List<SampleLook> looks, int[] lookOf, PlanLegend legend) {

	public SampleColours {
		looks = List.copyOf(looks);
	}
}
