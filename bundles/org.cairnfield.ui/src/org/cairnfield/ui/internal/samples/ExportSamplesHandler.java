package org.cairnfield.ui.internal.samples;

/** Writes the samples selected to a file. */
public final class ExportSamplesHandler extends SamplesHandler {

	public ExportSamplesHandler() {
		super(SampleActions::export, false);
	}
}
