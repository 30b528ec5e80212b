package org.cairnfield.ui.charts;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ScrollBar;

/** A chart whose items are rows, which scroll when there are many. */
abstract class RowChart extends Chart {

	private Rows rows = new Rows(0, 1, 0, 0, 0);

	RowChart(Composite parent, int style) {
		super(parent, style | SWT.V_SCROLL);
		ScrollBar bar = getVerticalBar();
		bar.setVisible(false);
		bar.addListener(SWT.Selection, event -> scrollTo(bar.getSelection()));
		addListener(SWT.Resize, event -> measure());
	}

	/** Height of header and of a row on this paper. */
	abstract int header(Paper paper);

	abstract int rowHeight(Paper paper);

	/** Draws the header and the rows that show; the rows first, as the header covers what is scrolled away. */
	abstract void draw(Paper paper, Rows shown);

	@Override
	final void draw(Paper paper) {
		rows = new Rows(header(paper), rowHeight(paper), itemCount(), paper.height, rows.offset());
		int chosen = getChosen();
		if (chosen >= rows.first() && chosen < rows.end()) {
			paper.fill(paper.look.band());
			paper.gc.fillRectangle(0, rows.top(chosen), paper.width, rows.rowHeight());
			if (isFocusControl()) {
				paper.stroke(paper.look.line(), 1);
				paper.gc.drawRectangle(1, rows.top(chosen), paper.width - 3, rows.rowHeight() - 1);
			}
		}
		draw(paper, rows);
	}

	@Override
	public final int itemAt(int x, int y) {
		return isEmpty() ? -1 : rows.at(y);
	}

	@Override
	final int step(int from, int keyCode) {
		int last = itemCount() - 1;
		return switch (keyCode) {
		case SWT.ARROW_DOWN -> Math.min(last, from + 1);
		case SWT.ARROW_UP -> Math.max(0, from < 0 ? last : from - 1);
		case SWT.PAGE_DOWN -> Math.min(last, Math.max(0, from) + rows.page());
		case SWT.PAGE_UP -> Math.max(0, from - rows.page());
		case SWT.HOME -> 0;
		case SWT.END -> last;
		default -> from;
		};
	}

	@Override
	final void reveal(int item) {
		scrollTo(rows.offsetFor(item));
	}

	@Override
	final void changed() {
		super.changed();
		measure();
	}

	private void scrollTo(int offset) {
		Rows next = new Rows(rows.header(), rows.rowHeight(), rows.count(), rows.height(), offset);
		if (next.offset() != rows.offset()) {
			rows = next;
			getVerticalBar().setSelection(next.offset());
			redraw();
		}
	}

	/** Fits the scroll bar to data and size. */
	private void measure() {
		Rectangle area = getClientArea();
		if (isEmpty()) {
			rows = new Rows(0, 1, 0, area.height, 0);
		} else {
			GC gc = new GC(this);
			try {
				Paper paper = new Paper(gc, area.width, area.height, look());
				rows = new Rows(header(paper), rowHeight(paper), itemCount(), area.height, rows.offset());
			} finally {
				gc.dispose();
			}
		}
		ScrollBar bar = getVerticalBar();
		boolean needed = rows.whole() > rows.room() && rows.room() > 0;
		if (needed) {
			bar.setValues(rows.offset(), 0, rows.whole(), rows.room(), rows.rowHeight(), Math.max(1, rows.room()));
		}
		if (bar.getVisible() != needed) {
			bar.setVisible(needed);
		}
	}
}
