package org.cairnfield.ui.review.internal.queue;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.review.QueueList;
import org.cairnfield.curation.review.QueueRow;
import org.cairnfield.ui.charts.colour.Palette;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The lines of the queue. Only those on the screen are made, so that thousands cost nothing. */
final class QueueTable {

	private final ReviewDesk desk;
	private final Table table;

	QueueTable(Composite parent, ReviewDesk desk) {
		this.desk = desk;
		table = Marked.named(Marked.id(new Table(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.VIRTUAL),
				"review.queue"), Messages.QueueTable_noiseSamplesToReview);
		table.setHeaderVisible(true);
		for (QueueColumn each : QueueColumn.values()) {
			TableColumn column = new TableColumn(table, each.alignment());
			column.setText(each.title());
			column.setWidth(each.width());
			column.setToolTipText(each.tip());
			column.setMoveable(true);
			if (each.order() != null) {
				column.addListener(SWT.Selection,
						event -> desk.review().arrange(desk.review().queue().settings().withOrder(each.order())));
			}
		}
		table.setColumnOrder(QueueColumn.LEFT_TO_RIGHT.stream().mapToInt(QueueColumn::ordinal).toArray());
		table.addListener(SWT.SetData, event -> fill((TableItem) event.item, event.index));
		table.addListener(SWT.Selection, event -> chosen());
		table.addListener(SWT.DefaultSelection, event -> toggle(table.getSelectionIndex()));
		table.addListener(SWT.MouseDown, this::clicked);
		table.addListener(SWT.MouseMove, this::tip);
	}

	Table control() {
		return table;
	}

	private List<QueueList.Line> lines() {
		return desk.review().queue().list().lines();
	}

	private void fill(TableItem item, int index) {
		// while it is emptied the table of GTK asks for items that are no more
		if (index < 0 || index >= lines().size()) {
			return;
		}
		QueueList.Line line = lines().get(index);
		if (line.isHeading()) {
			item.setText(0, (line.open() ? "▾ " : "▸ ") + line.heading() + "  (" + line.rows() + ')');
			item.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
			return;
		}
		QueueRow row = line.row();
		item.setFont(null); // it may have been a heading
		item.setText(QueueColumn.texts(row, desk.review().standings()));
		item.setForeground(isSettled(row) ? muted() : null);
	}

	/** What is decided steps back; its state says so in words. */
	private boolean isSettled(QueueRow row) {
		Standing standing = desk.review().standings().of(row.key());
		return standing != null && (standing.state().isDecided() || standing.state() == ReviewState.SET_ASIDE);
	}

	private Color muted() {
		return new Color(Palette.of(table.getDisplay()).muted());
	}

	private void chosen() {
		int index = table.getSelectionIndex();
		if (index >= 0 && index < lines().size() && !lines().get(index).isHeading()) {
			desk.review().show(lines().get(index).row().key());
		}
	}

	private void clicked(Event event) {
		TableItem item = table.getItem(new Point(event.x, event.y));
		if (item != null && event.button == 1) {
			toggle(table.indexOf(item));
		}
	}

	/** The row under the mouse in full, on its name only: a tip at the figures would cover the rows below, which are compared with it. */
	private void tip(Event event) {
		TableItem item = table.getItem(new Point(event.x, event.y));
		int index = item == null || !item.getBounds(0).contains(event.x, event.y) ? -1 : table.indexOf(item);
		String tip = null;
		if (index >= 0 && index < lines().size() && !lines().get(index).isHeading()) {
			QueueRow row = lines().get(index).row();
			String state = desk.review().standings().text(row.key());
			tip = row.summary() + (state.isEmpty() ? "" : '\n' + state);
		}
		if (!Objects.equals(tip, table.getToolTipText())) {
			table.setToolTipText(tip);
		}
	}

	/** Opens or closes a group. */
	private void toggle(int index) {
		if (index < 0 || index >= lines().size() || !lines().get(index).isHeading()) {
			return;
		}
		String heading = lines().get(index).heading();
		Set<String> closed = new HashSet<>(desk.review().queue().settings().closed());
		if (!closed.remove(heading)) {
			closed.add(heading);
		}
		table.getDisplay().asyncExec(() -> {
			if (!table.isDisposed()) {
				desk.review().arrange(desk.review().queue().settings().withClosed(closed));
				table.setSelection(index);
			}
		});
	}

	/** All lines anew. Where there are as many as before, those on the screen are asked for again, which costs far less. */
	void refill() {
		table.setRedraw(false);
		if (table.getItemCount() == lines().size()) {
			table.clearAll();
		} else {
			table.setItemCount(0); // else GTK selects another line where the selected one goes
			table.setItemCount(lines().size());
		}
		table.setSortColumn(null);
		for (QueueColumn each : QueueColumn.values()) {
			if (each.order() == desk.review().queue().settings().order()) {
				table.setSortColumn(table.getColumn(each.ordinal()));
			}
		}
		table.setSortDirection(SWT.NONE);
		table.setRedraw(true);
		select();
	}

	/** The lines that are on the screen say where they stand now. */
	void restate() {
		int count = table.getItemCount();
		if (count > 0) {
			table.clearAll();
		}
	}

	/** Selects the sample in hand. */
	void select() {
		int index = desk.review().queue().list().lineOf(desk.review().current());
		if (index < 0) {
			table.deselectAll();
		} else if (index != table.getSelectionIndex() || table.getSelectionCount() == 0) {
			table.setSelection(index);
		}
	}
}
