package org.cairnfield.ui.internal.samples;

/** Exchanges x and y of the samples selected. */
public final class SwapAxesHandler extends SamplesHandler {

	public SwapAxesHandler() {
		super(SampleActions::swapAxes, true);
	}
}
