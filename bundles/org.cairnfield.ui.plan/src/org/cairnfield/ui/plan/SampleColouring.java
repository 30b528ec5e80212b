package org.cairnfield.ui.plan;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.swt.graphics.RGB;

/**
 * A way to colour the samples of the plan. Others can be added at the extension point
 * {@code org.cairnfield.ui.plan.colourings}, by a class with a constructor without arguments.
 */
public interface SampleColouring {

	/** What the choice is called, such as "Number heard". */
	String name();

	/**
	 * The colours now. Called on the user interface thread whenever samples, structure or findings change, so
	 * it must be done within some milliseconds for 20,000 samples: look up, do not compute.
	 *
	 * @param background what they are drawn on
	 */
	SampleColours colours(SampleRows samples, ArchiveSession session, RGB background);

	/** Whether the colours are others after a change of the selection. */
	default boolean changesWith(ArchiveSelection before, ArchiveSelection now) {
		return false;
	}
}
