package org.cairnfield.ui.plan.internal.gef;

import org.cairnfield.ui.plan.internal.geometry.Lasso;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.Shape;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;

/** A free line selects what it encloses. */
final class LassoGesture extends Gesture {

	private final PlanCanvas plan;
	private final Lasso lasso = new Lasso();
	private final Line line;
	private boolean shown;

	LassoGesture(PlanCanvas plan) {
		this.plan = plan;
		line = new Line(Colours.of(plan.scene().ink().accent()));
	}

	@Override
	void drag() {
		if (!shown) {
			lasso.to(getStartLocation().x, getStartLocation().y);
			addFeedback(line);
			shown = true;
		}
		lasso.to(getLocation().x, getLocation().y);
		line.show(lasso.corners());
	}

	@Override
	void dragged() {
		plan.choice().selectArea(
				lasso.inside(plan.scene().grid(), plan.scene().xMetres(), plan.scene().yMetres(), plan.camera()),
				toggles(),
				adds());
	}

	@Override
	void click() {
		plan.click(getLocation().x, getLocation().y, toggles(), adds());
	}

	@Override
	void erase() {
		if (shown) {
			removeFeedback(line);
			shown = false;
		}
	}

	/** A pale area with a rim. */
	private static final class Line extends Shape {
		private int[] corners = new int[0];

		Line(Color accent) {
			setForegroundColor(accent);
			setBackgroundColor(accent);
		}

		void show(int[] line) {
			corners = line;
			Rectangle area = new PointList(line).getBounds();
			setBounds(area.expand(2, 2));
			repaint();
		}

		@Override
		protected void fillShape(Graphics graphics) {
			graphics.setAntialias(SWT.ON);
			graphics.setAlpha(30);
			graphics.fillPolygon(corners);
			graphics.setAlpha(255);
		}

		@Override
		protected void outlineShape(Graphics graphics) {
			graphics.drawPolygon(corners);
		}
	}
}
