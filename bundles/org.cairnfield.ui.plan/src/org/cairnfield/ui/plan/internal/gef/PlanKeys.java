package org.cairnfield.ui.plan.internal.gef;

import java.util.BitSet;

import org.cairnfield.ui.plan.internal.geometry.Direction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;

/**
 * The plan by keyboard: arrows go from sample to sample, with Ctrl they shift the plan; Enter selects, with Ctrl or Shift as
 * a click; plus, minus, 0 and Home zoom.
 */
final class PlanKeys {

	private static final double STEP = 1.4;
	private static final int SHIFT_PIXELS = 60;

	private final PlanCanvas plan;

	PlanKeys(PlanCanvas plan, Canvas canvas) {
		this.plan = plan;
		canvas.addListener(SWT.KeyDown, this::down);
		canvas.addListener(SWT.KeyUp, event -> {
			if (event.character == ' ') {
				plan.spaceDown(false);
			}
		});
		canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
		canvas.addListener(SWT.FocusOut, event -> {
			plan.spaceDown(false);
			canvas.redraw();
		});
		canvas.addListener(SWT.Traverse, event -> {
			int tab = event.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : event.detail == SWT.TRAVERSE_TAB_PREVIOUS ? -1 : 0;
			event.doit = tab != 0 && !(plan.tools().active() != null && plan.tools().active().tab(tab));
		});
	}

	private void down(Event event) {
		if (plan.tools().active() != null && plan.tools().active().down(event)) {
			return;
		}
		boolean ctrl = (event.stateMask & SWT.MOD1) != 0;
		boolean shift = (event.stateMask & SWT.SHIFT) != 0;
		switch (event.keyCode) {
		case SWT.ARROW_LEFT -> go(Direction.LEFT, ctrl, SHIFT_PIXELS, 0);
		case SWT.ARROW_RIGHT -> go(Direction.RIGHT, ctrl, -SHIFT_PIXELS, 0);
		case SWT.ARROW_UP -> go(Direction.UP, ctrl, 0, SHIFT_PIXELS);
		case SWT.ARROW_DOWN -> go(Direction.DOWN, ctrl, 0, -SHIFT_PIXELS);
		case SWT.HOME, '0', SWT.KEYPAD_0 -> plan.look().fit();
		case '+', '=', SWT.KEYPAD_ADD -> plan.look().zoom(STEP);
		case '-', SWT.KEYPAD_SUBTRACT -> plan.look().zoom(1 / STEP);
		case SWT.CR, SWT.KEYPAD_CR -> enter(ctrl, shift);
		case ' ' -> plan.spaceDown(true);
		case SWT.ESC -> {
			if ((event.stateMask & SWT.BUTTON_MASK) == 0) { // else it breaks the gesture off
				plan.choice().selectArea(new BitSet(), false, false);
			}
		}
		case 'a' -> {
			if (ctrl) {
				plan.choice().selectAll();
			}
		}
		default -> {
			// of no concern here
		}
		}
	}

	private void enter(boolean toggles, boolean adds) {
		if (plan.focus() >= 0) {
			BitSet one = new BitSet();
			one.set(plan.focus());
			plan.choice().selectArea(one, toggles, adds);
		}
	}

	private void go(Direction direction, boolean shifts, int columns, int rows) {
		if (shifts) {
			plan.look().from(plan.camera().panned(columns, rows));
		} else if (plan.scene().samples().size() > 0) {
			int from = plan.focus() >= 0 ? plan.focus() : plan.scene().selected().nextSetBit(0);
			int next = from < 0 ? nearestToMiddle()
					: direction.next(plan.scene().xMetres(), plan.scene().yMetres(), from);
			if (next >= 0) {
				plan.focus(next);
			}
		}
	}

	private int nearestToMiddle() {
		Rectangle area = plan.canvas().getClientArea();
		return plan.scene().grid().nearest(plan.camera().xMetres(area.width / 2.0),
				plan.camera().yMetres(area.height / 2.0),
				Double.MAX_VALUE / 4);
	}
}
