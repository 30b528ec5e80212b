package org.cairnfield.ui.plan.internal.gef;

import org.eclipse.draw2d.geometry.Point;

/** Shifts the plan. */
final class PanGesture extends Gesture {

	private final PlanCanvas plan;
	private Point last;

	PanGesture(PlanCanvas plan) {
		this.plan = plan;
	}

	@Override
	void drag() {
		Point now = getLocation().getCopy();
		Point from = last == null ? getStartLocation() : last;
		plan.look().from(plan.camera().panned(now.x - from.x, now.y - from.y));
		last = now;
	}

	@Override
	void dragged() {
		// done on the way
	}

	@Override
	void click() {
		// nothing
	}

	@Override
	void erase() {
		// nothing was shown
	}
}
