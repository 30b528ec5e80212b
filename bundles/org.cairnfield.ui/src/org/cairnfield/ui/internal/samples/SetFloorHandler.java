package org.cairnfield.ui.internal.samples;

/** Puts the samples selected on a floor it asks for. */
public final class SetFloorHandler extends SamplesHandler {

	public SetFloorHandler() {
		super(SampleActions::setFloor, true);
	}
}
