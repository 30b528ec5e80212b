package org.cairnfield.ui.plan.internal.gef;

import org.cairnfield.ui.plan.internal.outline.OutlineShape;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;

/**
 * The outline by keyboard: Tab goes from corner to corner and at the end out of the plan, arrows move the selected one by 0.1 m, with
 * Shift by 1 m; Insert adds a corner, Delete removes one; Enter closes the ring and keeps it, Escape gives it up.
 */
final class OutlineKeys {

	private static final double SMALL_STEP = 0.1;
	private static final double LARGE_STEP = 1;

	private final PlanCanvas plan;
	private final OutlineEditor editor;

	OutlineKeys(PlanCanvas plan, OutlineEditor editor) {
		this.plan = plan;
		this.editor = editor;
	}

	/** Whether the focus stays, since there is another corner to go to. */
	boolean tab(int by) {
		OutlineShape shape = editor.shape();
		int next = shape.selected() < 0 ? by > 0 ? 0 : shape.size() - 1 : shape.selected() + by;
		boolean stays = next >= 0 && next < shape.size();
		take(shape.selecting(stays ? next : -1));
		return stays;
	}

	/** @return whether the key was meant for the outline */
	boolean down(Event event) {
		if ((event.stateMask & SWT.MOD1) != 0) {
			return false;
		}
		double step = (event.stateMask & SWT.SHIFT) != 0 ? LARGE_STEP : SMALL_STEP;
		switch (event.keyCode) {
		case SWT.ARROW_LEFT -> move(-step, 0);
		case SWT.ARROW_RIGHT -> move(step, 0);
		case SWT.ARROW_UP -> move(0, step);
		case SWT.ARROW_DOWN -> move(0, -step);
		case SWT.INSERT -> insert();
		case SWT.DEL, SWT.BS -> take(editor.shape().removed());
		case SWT.CR, SWT.KEYPAD_CR -> enter();
		case SWT.ESC -> {
			if ((event.stateMask & SWT.BUTTON_MASK) == 0) { // else it breaks the drag off
				editor.giveUp();
			}
		}
		default -> {
			return false;
		}
		}
		return true;
	}

	private void move(double right, double up) {
		OutlineShape shape = editor.shape();
		if (shape.selected() < 0) {
			tab(1);
		} else {
			take(shape.moved(shape.selected(), shape.corners().xMetres(shape.selected()) + right,
					shape.corners().yMetres(shape.selected()) + up));
		}
	}

	/** In the middle of the side behind the selected corner; at the end of an open ring a step further, the first one in the middle of the plan. */
	private void insert() {
		OutlineShape shape = editor.shape();
		int side = shape.selected() < 0 ? shape.sides() - 1 : shape.selected();
		if (side >= 0 && side < shape.sides()) {
			take(shape.inserted(side + 1, shape.middleX(side), shape.middleY(side)));
		} else if (shape.size() > 0) {
			take(shape.added(shape.corners().xMetres(shape.size() - 1) + LARGE_STEP,
					shape.corners().yMetres(shape.size() - 1)));
		} else {
			Rectangle area = plan.canvas().getClientArea();
			take(shape.added(plan.camera().xMetres(area.width / 2.0), plan.camera().yMetres(area.height / 2.0)));
		}
	}

	private void enter() {
		OutlineShape shape = editor.shape();
		if (!shape.isClosed() && shape.size() >= OutlineShape.LEAST_CORNERS) {
			take(shape.closed());
		} else {
			editor.keep();
		}
	}

	private void take(OutlineShape next) {
		editor.take(next);
		if (next.selected() >= 0) {
			plan.look().bringIntoSight(next.corners().xMetres(next.selected()),
					next.corners().yMetres(next.selected()));
		}
	}
}
