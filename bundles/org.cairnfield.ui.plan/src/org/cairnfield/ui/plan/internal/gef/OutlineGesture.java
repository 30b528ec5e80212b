package org.cairnfield.ui.plan.internal.gef;

import org.cairnfield.ui.plan.internal.outline.OutlineShape;
import org.eclipse.draw2d.geometry.Point;

/**
 * The mouse while an outline is drawn. Over a corner, a drag moves it and a click selects it, or closes the ring at its first or last
 * corner; at the handle of a side there is a new corner; elsewhere a click adds one to an open ring, and a drag shifts the plan.
 */
final class OutlineGesture extends Gesture {

	private final PlanCanvas plan;
	private final OutlineEditor editor;
	private int corner = -1;
	private int side = -1;
	private Point last;

	OutlineGesture(PlanCanvas plan) {
		this.plan = plan;
		editor = plan.tools().outline();
	}

	@Override
	protected boolean handleButtonDown(int button) {
		last = getStartLocation().getCopy();
		corner = editor.isOn() ? editor.cornerAt(last.x, last.y) : -1;
		side = editor.isOn() && corner < 0 ? editor.sideAt(last.x, last.y) : -1;
		return super.handleButtonDown(button);
	}

	@Override
	void drag() {
		if (!editor.isOn()) {
			return; // ended by a key meanwhile
		}
		editor.release();
		if (corner < 0 && side < 0) {
			Point now = getLocation().getCopy();
			plan.look().from(plan.camera().panned(now.x - last.x, now.y - last.y));
			last = now;
		} else {
			editor.show(dropped());
		}
	}

	/** With what is dragged where the pointer is. */
	private OutlineShape dropped() {
		OutlineShape shape = editor.shape();
		int at = corner >= 0 ? corner : side + 1;
		OutlineShape with = corner >= 0 ? shape : shape.inserted(at, shape.middleX(side), shape.middleY(side));
		double x = plan.camera().xMetres(getLocation().x);
		double y = plan.camera().yMetres(getLocation().y);
		double[] place = adds() ? with.atRightAngle(at, x, y) : new double[] { x, y };
		return with.moved(at, place[0], place[1]);
	}

	@Override
	void dragged() {
		if (editor.isOn() && (corner >= 0 || side >= 0)) {
			editor.take(dropped());
		}
	}

	@Override
	void click() {
		if (!editor.isOn()) {
			return;
		}
		OutlineShape shape = editor.shape();
		if (corner >= 0) {
			boolean closes = !shape.isClosed() && (corner == 0 || corner == shape.size() - 1)
					&& shape.size() >= OutlineShape.LEAST_CORNERS;
			editor.take(closes ? shape.closed() : shape.selecting(corner));
		} else if (side >= 0) {
			editor.take(shape.inserted(side + 1, shape.middleX(side), shape.middleY(side)));
		} else if (shape.isClosed()) {
			editor.take(shape.selecting(-1));
		} else {
			double[] place = editor.next(getLocation().x, getLocation().y, adds());
			editor.take(shape.added(place[0], place[1]));
		}
	}

	@Override
	void erase() {
		editor.release();
	}
}
