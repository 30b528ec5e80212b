package org.cairnfield.ui.plan.internal.gef;

import org.cairnfield.model.Site;
import org.cairnfield.ui.plan.internal.geometry.ScaleBar;
import org.cairnfield.ui.plan.internal.raster.FloorRaster;
import org.cairnfield.ui.plan.internal.raster.Ink;
import org.cairnfield.ui.plan.internal.scene.PlanScene;
import org.cairnfield.ui.scope.MarkedPlace;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;

/** Scale bar, north arrow, words at samples, marked places, what the pointer and the keyboard are at, and a word where nothing is to be seen. */
final class Furniture extends Figure {

	private static final int EDGE = 14;
	private static final int MOST_BAR = 140;
	private static final int ARROW = 12;
	private static final int RING = 9;
	private static final int CROSS = 5;

	private final PlanCanvas plan;
	private Color line;
	private Color accent;
	private Color background;
	private int hover = -1;
	private int focus = -1;

	Furniture(PlanCanvas plan) {
		this.plan = plan;
	}

	/** Rings two samples; -1 for none. */
	void ring(int underPointer, int ofKeyboard) {
		if (hover != underPointer || focus != ofKeyboard) {
			repaintRing(hover);
			repaintRing(focus);
			hover = underPointer;
			focus = ofKeyboard;
			repaintRing(hover);
			repaintRing(focus);
		}
	}

	private void repaintRing(int sample) {
		if (sample >= 0 && sample < plan.scene().samples().size()) {
			repaint(ringOf(sample).expand(2, 2));
		}
	}

	private Rectangle ringOf(int sample) {
		int reach = (int) Math.ceil(FloorRaster.radiusPoints(plan.camera().pixelsPerMetre())) + RING;
		int column = (int) Math.round(plan.camera().column(plan.scene().xMetres()[sample]));
		int row = (int) Math.round(plan.camera().row(plan.scene().yMetres()[sample]));
		return new Rectangle(column - reach, row - reach, 2 * reach, 2 * reach);
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		Ink ink = plan.scene().ink();
		line = Colours.of(ink.line());
		accent = Colours.of(ink.accent());
		background = Colours.of(ink.background());
		graphics.setAntialias(SWT.ON);
		String empty = emptyText();
		if (empty != null) {
			paintEmpty(graphics, empty);
		}
		if (plan.showsFocus()) {
			graphics.setForegroundColor(accent);
			graphics.drawRectangle(bounds.x, bounds.y, bounds.width - 1, bounds.height - 1);
		}
		if (plan.scene().floor() == null) {
			return;
		}
		plan.scene().crosses().forEach(place -> paintCross(graphics, place));
		SampleLabels.place(plan, getFont()).forEach(label -> paintLabel(graphics, label));
		paintRing(graphics, hover, line, SWT.LINE_SOLID, 1);
		paintRing(graphics, focus, accent, SWT.LINE_DASH, 2);
		paintScale(graphics);
		Site site = plan.scene().site();
		if (site != null && site.getGeoreference() != null) {
			paintNorth(graphics, site.getGeoreference().bearingDegrees());
		}
	}

	private void paintRing(Graphics graphics, int sample, Color colour, int style, int width) {
		if (sample >= 0 && sample < plan.scene().samples().size()) {
			graphics.setForegroundColor(colour);
			graphics.setLineStyle(style);
			graphics.setLineWidth(width);
			graphics.drawOval(ringOf(sample));
			graphics.setLineStyle(SWT.LINE_SOLID);
		}
	}

	private void paintLabel(Graphics graphics, SampleLabels.Placed label) {
		Rectangle area = label.area();
		paintPlate(graphics, area.x - 3, area.y - 1, area.width + 6, area.height + 2);
		graphics.setForegroundColor(line);
		graphics.drawText(label.text(), area.x, area.y);
	}

	private void paintCross(Graphics graphics, MarkedPlace place) {
		int column = (int) Math.round(plan.camera().column(place.xMetres()));
		int row = (int) Math.round(plan.camera().row(place.yMetres()));
		graphics.setLineWidth(2);
		graphics.setForegroundColor(accent);
		graphics.drawLine(column - CROSS, row - CROSS, column + CROSS, row + CROSS);
		graphics.drawLine(column - CROSS, row + CROSS, column + CROSS, row - CROSS);
		graphics.setLineWidth(1);
	}

	private void paintScale(Graphics graphics) {
		ScaleBar bar = ScaleBar.within(plan.camera().pixelsPerMetre(), MOST_BAR);
		Dimension text = FigureUtilities.getTextExtents(bar.label(), getFont());
		int left = bounds.x + EDGE;
		int bottom = bounds.y + bounds.height - EDGE;
		paintPlate(graphics, left - 7, bottom - text.height - 14, Math.max(bar.pixels(), text.width) + 14,
				text.height + 21);
		graphics.setForegroundColor(line);
		graphics.setLineWidth(2);
		graphics.drawLine(left, bottom, left + bar.pixels(), bottom);
		graphics.setLineWidth(1);
		graphics.drawLine(left, bottom - 5, left, bottom);
		graphics.drawLine(left + bar.pixels(), bottom - 5, left + bar.pixels(), bottom);
		graphics.drawText(bar.label(), left + (bar.pixels() - text.width) / 2, bottom - text.height - 6);
	}

	private void paintNorth(Graphics graphics, double bearingDegrees) {
		// the y axis points bearing degrees clockwise of north, so north is as far anticlockwise of up
		double east = -Math.sin(Math.toRadians(bearingDegrees));
		double up = Math.cos(Math.toRadians(bearingDegrees));
		int column = bounds.x + bounds.width - EDGE - ARROW - 8;
		int row = bounds.y + EDGE + ARROW + 8;
		Dimension text = FigureUtilities.getTextExtents("N", getFont());
		paintPlate(graphics, column - ARROW - 9, row - ARROW - 9, 2 * ARROW + 18, 2 * ARROW + 16 + text.height);
		// head, right corner, notch, left corner; aside is to the right of where it points
		double asideEast = up;
		double asideUp = -east;
		int[] arrow = { point(column, ARROW * east), point(row, -ARROW * up),
				point(column, ARROW * (0.55 * asideEast - 0.9 * east)),
				point(row, -ARROW * (0.55 * asideUp - 0.9 * up)),
				point(column, -0.5 * ARROW * east), point(row, 0.5 * ARROW * up),
				point(column, ARROW * (-0.55 * asideEast - 0.9 * east)),
				point(row, -ARROW * (-0.55 * asideUp - 0.9 * up)) };
		graphics.setBackgroundColor(line);
		graphics.fillPolygon(arrow);
		graphics.setForegroundColor(line);
		graphics.drawText("N", column - text.width / 2, row + ARROW + 2);
	}

	private static int point(int from, double by) {
		return (int) Math.round(from + by);
	}

	private void paintPlate(Graphics graphics, int x, int y, int width, int height) {
		graphics.setBackgroundColor(background);
		graphics.setAlpha(215);
		graphics.fillRoundRectangle(new Rectangle(x, y, width, height), 6, 6);
		graphics.setAlpha(255);
	}

	/** What to say where nothing is to be seen; null where something is. */
	String emptyText() {
		PlanScene scene = plan.scene();
		if (plan.session() == null) {
			return Messages.Furniture_noArchiveIsOpenOpen;
		} else if (scene.floor() == null) {
			return Messages.Furniture_thisArchiveHasNoFloors;
		} else if (scene.shown() != null && scene.samples().size() == 0) {
			return scene.errors() == null ? scene.shown().empty() : Messages.Furniture_noTestSampleWasTaken;
		} else if (scene.samples().size() == 0) {
			return Messages.Furniture_noSurveyHasSamplesOn;
		}
		return null;
	}

	private void paintEmpty(Graphics graphics, String text) {
		Dimension size = FigureUtilities.getTextExtents(text, getFont());
		int left = bounds.x + (bounds.width - size.width) / 2;
		int top = bounds.y + (bounds.height - size.height) / 2;
		paintPlate(graphics, left - 8, top - 6, size.width + 16, size.height + 12);
		graphics.setForegroundColor(line);
		graphics.drawText(text, left, top);
	}
}
