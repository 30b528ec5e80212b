package org.cairnfield.ui.internal.tables;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** Says a text that its column is too narrow for, when the pointer rests on it. */
final class CutText {

	private final Control table;
	private String said;

	CutText(Control table) {
		this.table = table;
		table.addListener(SWT.MouseMove, this::moved);
	}

	private void moved(Event event) {
		String own = table.getToolTipText();
		if (own != null && !own.equals(said)) {
			return; // the table has something to say itself
		}
		String now = cutAt(new Point(event.x, event.y));
		if (now == null ? own != null : !now.equals(own)) {
			said = now;
			table.setToolTipText(now);
		}
	}

	private String cutAt(Point at) {
		if (table instanceof Tree tree) {
			TreeItem item = tree.getItem(at);
			for (int c = 0; item != null && c < tree.getColumnCount(); c++) {
				if (item.getBounds(c).contains(at)) {
					return cut(item.getText(c), item.getTextBounds(c), item.getBounds(c));
				}
			}
		} else {
			TableItem item = ((Table) table).getItem(at);
			for (int c = 0; item != null && c < ((Table) table).getColumnCount(); c++) {
				if (item.getBounds(c).contains(at)) {
					return cut(item.getText(c), item.getTextBounds(c), item.getBounds(c));
				}
			}
		}
		return null;
	}

	/** The text, if there is no room for it; null if there is. */
	private String cut(String text, Rectangle words, Rectangle cell) {
		if (text.isEmpty()) {
			return null;
		}
		GC gc = new GC(table);
		int wide = gc.textExtent(text).x;
		gc.dispose();
		return words.x + wide > cell.x + cell.width ? text.replace("&", "&&") : null;
	}
}
