package org.cairnfield.ui.plan.internal.gef;

import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.internal.geometry.Camera;
import org.cairnfield.ui.plan.internal.outline.OutlineShape;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;

/** The outline that is drawn: sides with their lengths, a square a corner, a small ring in the middle of a side for a corner more. */
final class OutlineFigure extends Figure {

	private static final int CORNER = 4;
	private static final int SELECTED = 5;
	private static final int MIDDLE = 3;
	/** From a side to the middle of its length, and how much longer than that text the side has to be, in points. */
	private static final int ASIDE = 16;
	private static final int ROOM = 16;

	private final PlanCanvas plan;
	private final Color line;
	private final Color accent;
	private final Color background;
	private double[] pointer;

	OutlineFigure(PlanCanvas plan) {
		this.plan = plan;
		line = Colours.of(plan.scene().ink().line());
		accent = Colours.of(plan.scene().ink().accent());
		background = Colours.of(plan.scene().ink().background());
		setVisible(false);
	}

	/** Where the next corner would be, in metres; null while the pointer is elsewhere. */
	void pointAt(double[] place) {
		pointer = place;
		repaint();
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		if (!plan.tools().outline().isOn()) {
			return;
		}
		OutlineShape shape = plan.tools().outline().shape();
		graphics.setAntialias(SWT.ON);
		graphics.setForegroundColor(accent);
		graphics.setBackgroundColor(accent);
		PointList corners = new PointList();
		for (int i = 0; i < shape.size(); i++) {
			corners.addPoint(pixel(shape.corners().xMetres(i), shape.corners().yMetres(i)));
		}
		graphics.setLineWidth(2);
		if (shape.isClosed()) {
			graphics.setAlpha(25);
			graphics.fillPolygon(corners);
			graphics.setAlpha(255);
			graphics.drawPolygon(corners);
		} else {
			graphics.drawPolyline(corners);
		}
		if (!shape.isClosed() && shape.size() > 0 && pointer != null) {
			graphics.setLineStyle(SWT.LINE_DASH);
			graphics.drawLine(corners.getLastPoint(), pixel(pointer[0], pointer[1]));
			graphics.setLineStyle(SWT.LINE_SOLID);
			paintLengths(graphics, shape.added(pointer[0], pointer[1]));
		} else {
			paintLengths(graphics, shape);
		}
		paintHandles(graphics, shape, corners);
	}

	private void paintHandles(Graphics graphics, OutlineShape shape, PointList corners) {
		graphics.setLineWidth(1);
		graphics.setForegroundColor(accent);
		graphics.setBackgroundColor(background);
		for (int side = 0; side < shape.sides(); side++) {
			if (plan.tools().outline().hasHandle(side)) {
				Point middle = pixel(shape.middleX(side), shape.middleY(side));
				graphics.fillOval(middle.x - MIDDLE, middle.y - MIDDLE, 2 * MIDDLE, 2 * MIDDLE);
				graphics.drawOval(middle.x - MIDDLE, middle.y - MIDDLE, 2 * MIDDLE, 2 * MIDDLE);
			}
		}
		graphics.setLineWidth(2);
		for (int i = 0; i < corners.size(); i++) {
			int half = i == shape.selected() ? SELECTED : CORNER;
			graphics.setBackgroundColor(i == shape.selected() ? accent : background);
			Point at = corners.getPoint(i);
			graphics.fillRectangle(at.x - half, at.y - half, 2 * half, 2 * half);
			graphics.drawRectangle(at.x - half, at.y - half, 2 * half, 2 * half);
		}
	}

	/** Next to each side that is long enough for it, outside of the ring. */
	private void paintLengths(Graphics graphics, OutlineShape shape) {
		double scale = plan.camera().pixelsPerMetre();
		boolean isClockwise = shape.size() >= OutlineShape.LEAST_CORNERS && shape.corners().polygon().signedArea() < 0;
		for (int side = 0; side < shape.sides(); side++) {
			String text = ShownNumbers.text(shape.metres(side), 2, "m");
			Dimension size = FigureUtilities.getTextExtents(text, getFont());
			if (shape.metres(side) * scale >= size.width + ROOM) {
				double share = (isClockwise ? -ASIDE : ASIDE) / (shape.metres(side) * scale);
				double dx = shape.corners().xMetres(shape.endOf(side)) - shape.corners().xMetres(side);
				double dy = shape.corners().yMetres(shape.endOf(side)) - shape.corners().yMetres(side);
				double wide = 1 + Math.abs(dy) / Math.hypot(dx, dy) * size.width / 2 / ASIDE; // a text beside an upright side needs its half width
				Point at = pixel(shape.middleX(side) + dy * share * wide, shape.middleY(side) - dx * share * wide);
				graphics.setAlpha(215);
				graphics.setBackgroundColor(background);
				graphics.fillRectangle(at.x - size.width / 2 - 2, at.y - size.height / 2, size.width + 4, size.height);
				graphics.setAlpha(255);
				graphics.setForegroundColor(line);
				graphics.drawText(text, at.x - size.width / 2, at.y - size.height / 2);
			}
		}
	}

	private Point pixel(double xMetres, double yMetres) {
		Camera camera = plan.camera();
		return new Point((int) Math.round(camera.column(xMetres)), (int) Math.round(camera.row(yMetres)));
	}
}
