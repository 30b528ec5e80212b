package org.cairnfield.ui.internal.samples;

/** Edits floor, x and y of a sample in its row. */
public final class EditPositionHandler extends SamplesHandler {

	public EditPositionHandler() {
		super(SampleActions::editPosition, true);
	}
}
