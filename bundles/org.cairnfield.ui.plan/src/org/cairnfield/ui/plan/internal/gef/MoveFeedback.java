package org.cairnfield.ui.plan.internal.gef;

import org.cairnfield.ui.plan.internal.raster.Ink;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;

/** A line from where a sample was to where it is dragged, and how far that is. */
final class MoveFeedback extends Figure {

	private static final int RADIUS = 5;
	private static final int TEXT_GAP = 12;

	private final Color accent;
	private final Color line;
	private final Color background;
	private Point start = new Point();
	private Point end = new Point();
	private String text = "";

	MoveFeedback(Ink ink) {
		accent = Colours.of(ink.accent());
		line = Colours.of(ink.line());
		background = Colours.of(ink.background());
	}

	void show(Point from, Point to, String label) {
		start = from;
		end = to;
		text = label;
		Rectangle area = new Rectangle(from, to).expand(RADIUS + 2, RADIUS + 2);
		if (getFont() != null) {
			Dimension size = FigureUtilities.getTextExtents(text, getFont());
			area.union(new Rectangle(to.x + TEXT_GAP, to.y + TEXT_GAP, size.width + 8, size.height + 4));
		}
		setBounds(area);
		repaint();
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		graphics.setForegroundColor(accent);
		graphics.setLineWidth(1);
		graphics.drawLine(start, end);
		graphics.setLineWidth(2);
		graphics.drawOval(end.x - RADIUS, end.y - RADIUS, 2 * RADIUS, 2 * RADIUS);
		Dimension size = FigureUtilities.getTextExtents(text, getFont());
		graphics.setBackgroundColor(background);
		graphics.fillRectangle(end.x + TEXT_GAP, end.y + TEXT_GAP, size.width + 8, size.height + 4);
		graphics.setForegroundColor(line);
		graphics.drawText(text, end.x + TEXT_GAP + 4, end.y + TEXT_GAP + 2);
	}
}
