package org.cairnfield.ui.internal.samples;

/** Brings the samples selected back into the map. */
public final class BringBackHandler extends SamplesHandler {

	public BringBackHandler() {
		super(SampleActions::bringBack, true);
	}
}
