package org.cairnfield.ui.scope;

import java.util.List;

import org.cairnfield.model.edit.SampleRef;

/** Samples as one thing that is selected; at least one. */
public record SelectedSamples(List<SampleRef> samples) {

	public SelectedSamples {
		samples = List.copyOf(samples);
	}
}
