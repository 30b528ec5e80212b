package org.cairnfield.ui.plan.internal.gef;

import org.eclipse.gef.DragTracker;
import org.eclipse.swt.widgets.Event;

/** What takes mouse and keys of the plan while something is set on it, until it is kept or given up. */
interface PlanTool {

	/** What the mouse does when its button is pressed. */
	DragTracker gesture();

	/** The pointer is over the floor without a button. @param isRight whether Shift asks for a right angle */
	void pointAt(int column, int row, boolean isRight);

	/** A key. @return whether it was meant for the tool */
	boolean down(Event event);

	/** Tab, or with Shift (−1). @return whether the focus stays, since there is more to go to */
	boolean tab(int by);

	/** Where it stands, in words. */
	String words();

	/** The archive has changed. */
	void check();

	/** The person goes elsewhere: what can be kept is kept. */
	void leave();

	/** Ends it; nothing is kept. */
	void giveUp();
}
