package org.cairnfield.ui.internal.samples;

/** Sets the samples selected aside, for a reason it asks for. */
public final class SetAsideHandler extends SamplesHandler {

	public SetAsideHandler() {
		super(SampleActions::setAside, true);
	}
}
