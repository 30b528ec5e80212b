package org.cairnfield.ui.plan.internal.gef;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;

import org.cairnfield.ui.plan.internal.raster.Ink;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;

/**
 * A place of an access point with the end of the address where there is room for it: a triangle on its tip where it seems to be, a square
 * with a cross where it is known to be.
 */
final class PlaceFigure extends Figure {

	private static final int HALF = 6;
	private static final int GAP = 3;

	private final Supplier<Ink> ink;
	private final boolean known;
	private int column;
	private int row;
	private String text = "";
	private boolean chosen;
	private Rectangle labelled;

	PlaceFigure(Supplier<Ink> ink, boolean known) {
		this.ink = ink;
		this.known = known;
	}

	void show(int atColumn, int atRow, String label, boolean isChosen) {
		column = atColumn;
		row = atRow;
		text = label;
		chosen = isChosen;
		labelled = null;
		setBounds(symbol());
	}

	Rectangle symbol() {
		return new Rectangle(column - HALF - 1, row - HALF - 1, 2 * HALF + 3, 2 * HALF + 3);
	}

	Optional<Rectangle> label(Predicate<Rectangle> isFree) {
		labelled = getFont() == null ? null
				: sides().stream().filter(isFree).findFirst().orElse(chosen ? sides().get(0) : null);
		setBounds(labelled == null ? symbol() : symbol().getUnion(labelled));
		repaint();
		return Optional.ofNullable(labelled);
	}

	/** Right, left, below, above. */
	private List<Rectangle> sides() {
		Dimension size = FigureUtilities.getTextExtents(text, getFont());
		int aside = HALF + GAP;
		return List.of(new Rectangle(column + aside, row - size.height / 2, size.width, size.height),
				new Rectangle(column - aside - size.width, row - size.height / 2, size.width, size.height),
				new Rectangle(column - size.width / 2, row + aside - 1, size.width, size.height),
				new Rectangle(column - size.width / 2, row - aside - size.height, size.width, size.height));
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return Math.abs(x - column) <= HALF + 1 && Math.abs(y - row) <= HALF + 1;
	}

	/** The square with a cross, in the colours and the width set. */
	static void paintKnown(Graphics graphics, int column, int row) {
		int half = HALF - 1;
		graphics.fillRectangle(column - half, row - half, 2 * half, 2 * half);
		graphics.drawRectangle(column - half, row - half, 2 * half, 2 * half);
		graphics.drawLine(column - half, row - half, column + half, row + half);
		graphics.drawLine(column - half, row + half, column + half, row - half);
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		Color line = Colours.of(ink.get().line());
		Color accent = Colours.of(ink.get().accent());
		Color background = Colours.of(ink.get().background());
		graphics.setAntialias(SWT.ON);
		graphics.setBackgroundColor(chosen && !known ? accent : background);
		graphics.setForegroundColor(chosen ? accent : line);
		graphics.setLineWidth(chosen ? 2 : 1);
		if (known) {
			paintKnown(graphics, column, row);
		} else {
			int[] corners = { column - HALF, row - HALF, column + HALF, row - HALF, column, row + HALF };
			graphics.fillPolygon(corners);
			graphics.drawPolygon(corners);
		}
		if (labelled != null) {
			graphics.setAlpha(200);
			graphics.setBackgroundColor(background);
			graphics.fillRectangle(labelled);
			graphics.setAlpha(255);
			graphics.setForegroundColor(line);
			graphics.drawText(text, labelled.x, labelled.y);
		}
	}
}
