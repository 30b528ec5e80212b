package org.cairnfield.ui.plan.internal.gef;

import java.util.BitSet;

import org.cairnfield.ui.plan.internal.geometry.Bounds;
import org.cairnfield.ui.plan.internal.geometry.Camera;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.Shape;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;

/** A click selects a sample, a drag those in a rectangle. */
final class BandGesture extends Gesture {

	private final PlanCanvas plan;
	private final Band band;
	private boolean shown;

	BandGesture(PlanCanvas plan) {
		this.plan = plan;
		band = new Band(Colours.of(plan.scene().ink().accent()));
	}

	private Rectangle area() {
		return new Rectangle(getStartLocation(), getLocation());
	}

	@Override
	void drag() {
		if (!shown) {
			addFeedback(band);
			shown = true;
		}
		band.setBounds(area());
	}

	@Override
	void dragged() {
		Rectangle area = area();
		Camera camera = plan.camera();
		BitSet inside = new BitSet();
		plan.scene().grid().within(Bounds.between(camera.xMetres(area.x), camera.yMetres(area.y),
				camera.xMetres(area.right()), camera.yMetres(area.bottom())), inside::set);
		plan.choice().selectArea(inside, toggles(), adds());
	}

	@Override
	void click() {
		plan.click(getLocation().x, getLocation().y, toggles(), adds());
	}

	@Override
	void erase() {
		if (shown) {
			removeFeedback(band);
			shown = false;
		}
	}

	/** A pale area with a rim. */
	private static final class Band extends Shape {

		Band(Color accent) {
			setForegroundColor(accent);
			setBackgroundColor(accent);
		}

		@Override
		protected void fillShape(Graphics graphics) {
			graphics.setAlpha(30);
			graphics.fillRectangle(getBounds());
			graphics.setAlpha(255);
		}

		@Override
		protected void outlineShape(Graphics graphics) {
			graphics.drawRectangle(getBounds().getResized(-1, -1));
		}
	}
}
