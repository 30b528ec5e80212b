package org.cairnfield.ui.internal.history;

import java.util.List;

import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.ui.internal.history.model.Branches;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The first column of the history: a dot a save point, with lines to those that it came from. What is not here yet is hollow. */
final class BranchColumn {

	private static final int STEP = 12;
	private static final int MARGIN = 10;
	private static final int RADIUS = 3;
	private static final int MOST_LANES = 8;

	private final Table table;
	private final TableColumn column;
	private List<Branches.Line> lines = List.of();
	private int coming;

	BranchColumn(TableViewer viewer) {
		table = viewer.getTable();
		TableViewerColumn made = new TableViewerColumn(viewer, SWT.NONE);
		made.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> ""));
		column = made.getColumn();
		column.setWidth(2 * MARGIN);
		column.setToolTipText(Messages.BranchColumn_linesOfWorkTheyPart);
		table.addListener(SWT.PaintItem, this::paint);
	}

	/** @param ahead those at the head of the list that are not here yet */
	void show(List<SavePoint> points, List<SavePoint> ahead) {
		lines = Branches.of(points);
		coming = ahead.size();
		int lanes = Math.min(MOST_LANES, lines.stream().mapToInt(Branches.Line::width).max().orElse(1));
		column.setWidth(2 * MARGIN + (lanes - 1) * STEP);
	}

	private void paint(Event event) {
		int row = event.index != table.indexOf(column) ? -1 : table.indexOf((TableItem) event.item);
		if (row < 0 || row >= lines.size()) {
			return;
		}
		Rectangle cell = ((TableItem) event.item).getBounds(event.index);
		Branches.Line line = lines.get(row);
		GC gc = event.gc;
		gc.setAntialias(SWT.ON);
		int middle = cell.y + cell.height / 2;
		int bottom = cell.y + cell.height;
		int x = x(cell, line.lane());
		line.past().forEach(lane -> gc.drawLine(x(cell, lane), cell.y, x(cell, lane), bottom));
		if (line.isBelow()) {
			gc.drawLine(x, cell.y, x, middle);
		}
		line.down().forEach(lane -> gc.drawLine(x, middle, x(cell, lane), bottom));
		gc.setBackground(row < coming ? table.getBackground() : gc.getForeground());
		gc.fillOval(x - RADIUS, middle - RADIUS, 2 * RADIUS + 1, 2 * RADIUS + 1);
		gc.drawOval(x - RADIUS, middle - RADIUS, 2 * RADIUS, 2 * RADIUS);
	}

	private static int x(Rectangle cell, int lane) {
		return cell.x + MARGIN + lane * STEP;
	}
}
