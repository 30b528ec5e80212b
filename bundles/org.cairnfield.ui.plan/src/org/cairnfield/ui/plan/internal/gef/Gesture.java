package org.cairnfield.ui.plan.internal.gef;

import org.eclipse.gef.DragTracker;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/** A press, a drag and a release on the floor, or a click. Escape breaks it off. */
abstract class Gesture extends AbstractTool implements DragTracker {

	/** It has moved far enough to be a drag. */
	abstract void drag();

	/** The end of a drag. */
	abstract void dragged();

	/** Released where it was pressed. */
	abstract void click();

	/** Takes away what was shown on the way. */
	abstract void erase();

	boolean adds() {
		return getCurrentInput().isShiftKeyDown();
	}

	boolean toggles() {
		return getCurrentInput().isModKeyDown(SWT.MOD1);
	}

	@Override
	protected boolean handleButtonDown(int button) {
		return stateTransition(STATE_INITIAL, STATE_DRAG);
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			drag();
		}
		return true;
	}

	/** The place of the release counts too: a quick hand lets go before the last move, or any, has arrived. */
	@Override
	protected boolean handleButtonUp(int button) {
		if (movedPastThreshold()) {
			handleDragStarted();
		}
		handleDragInProgress();
		if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
			erase();
			dragged();
		} else if (stateTransition(STATE_DRAG, STATE_TERMINAL)) {
			click();
		}
		return true;
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		if (event.keyCode == SWT.ESC && stateTransition(STATE_DRAG_IN_PROGRESS, STATE_INVALID)) {
			erase();
		}
		return true;
	}

	@Override
	public void deactivate() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			erase();
		}
		super.deactivate();
		setState(STATE_TERMINAL);
	}

	@Override
	protected String getCommandName() {
		return getClass().getSimpleName();
	}

	@Override
	public void commitDrag() {
		// for drags that come from the system's own drag and drop
	}
}
