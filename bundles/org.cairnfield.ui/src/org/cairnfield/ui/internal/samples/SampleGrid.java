package org.cairnfield.ui.internal.samples;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;

import org.cairnfield.ui.charts.colour.Palette;
import org.cairnfield.ui.internal.samples.model.Arrangement;
import org.cairnfield.ui.internal.samples.model.CellText;
import org.cairnfield.ui.internal.samples.model.Picks;
import org.cairnfield.ui.internal.samples.model.SampleColumn;
import org.cairnfield.ui.show.Marked;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The rows and columns of an arrangement of samples, and what is picked of them. */
final class SampleGrid implements RowWindow.Rows, RowWindow.Gestures {

	/** Typical contents, by which columns get their first widths. */
	private static final Map<SampleColumn, String> TYPICAL = new EnumMap<>(Map.ofEntries(
			Map.entry(SampleColumn.ID, "TH-SPRING-AGAIN-0000"), Map.entry(SampleColumn.SURVEY, "sh-spring-again"),
			Map.entry(SampleColumn.SITE, "Sailmakers' Hall"), Map.entry(SampleColumn.KIND, "training"),
			Map.entry(SampleColumn.FLOOR, "floor"), Map.entry(SampleColumn.X, "1000.00"),
			Map.entry(SampleColumn.Y, "1000.00"),
			Map.entry(SampleColumn.TIME, "2031-04-07 07:30:00"),
			Map.entry(SampleColumn.DEVICE, Messages.SampleGrid_wristGuideA),
			Map.entry(SampleColumn.HEARD, "heard"),
			Map.entry(SampleColumn.STRONGEST, "00:00:5E:00:53:00 −60, 00:00:5E:00:53:00 −60, 00:00:5E:00:53:00 −60"),
			Map.entry(SampleColumn.STATE, Messages.SampleGrid_setAsideCourierS),
			Map.entry(SampleColumn.FINDINGS, Messages.SampleGrid_1Warning),
			Map.entry(SampleColumn.CLUSTER, "cluster"), Map.entry(SampleColumn.ROLE, "border")));

	private final RowWindow window;
	private final Picks picks = new Picks();
	private final Runnable picked;
	private final Consumer<SampleColumn> sort;
	private Arrangement arrangement = Arrangement.NONE;

	/**
	 * @param picked called when the person picks
	 * @param sort   hears the header that was clicked
	 */
	SampleGrid(Composite parent, Runnable picked, Consumer<SampleColumn> sort) {
		this.picked = picked;
		this.sort = sort;
		window = new RowWindow(parent);
		Marked.named(Marked.id(window.table(), "samples.table"), Messages.SampleGrid_samples);
		makeColumns();
		window.open(this, this);
	}

	private void makeColumns() {
		Table table = window.table();
		GC gc = new GC(table);
		int air = gc.textExtent("MM").x;
		for (SampleColumn column : SampleColumn.values()) {
			TableColumn made = new TableColumn(table, column.isNumber() ? SWT.RIGHT : SWT.LEFT);
			made.setText(column.title());
			made.setMoveable(true);
			made.setData(column);
			made.setWidth(Math.max(gc.textExtent(column.title()).x + air, gc.textExtent(TYPICAL.get(column)).x) + air);
			made.addListener(SWT.Selection, e -> sort.accept(column));
		}
		gc.dispose();
	}

	RowWindow window() {
		return window;
	}

	Picks picks() {
		return picks;
	}

	Arrangement arrangement() {
		return arrangement;
	}

	/**
	 * Shows other rows, or the same otherwise.
	 *
	 * @param same whether indices mean the same samples as before, so that picks stay
	 */
	void show(Arrangement other, boolean same) {
		arrangement = other;
		if (same) {
			picks.arrange(other);
		} else {
			picks.reset(other);
			window.scrollTo(0);
		}
		Table table = window.table();
		table.setSortColumn(other.sortedBy() == null ? null : table.getColumn(other.sortedBy().ordinal()));
		table.setSortDirection(other.sortedBy() == null ? SWT.NONE : other.isDescending() ? SWT.DOWN : SWT.UP);
		window.refresh();
	}

	/** The column at a place in the table; x where there is none. */
	SampleColumn columnAt(int x, int y) {
		TableItem item = window.table().getItem(new Point(x, y));
		for (SampleColumn column : SampleColumn.values()) {
			if (item != null && item.getBounds(column.ordinal()).contains(x, y)) {
				return column;
			}
		}
		return SampleColumn.X;
	}

	/** Picks these, by index, without telling anybody, and shows the first that is in the table. */
	void pick(int[] indices) {
		picks.set(indices);
		int focus = picks.focusPosition();
		if (indices.length > 0 && focus >= 0) {
			window.reveal(focus);
		}
		window.refreshSelection();
	}

	@Override
	public int size() {
		return arrangement.size();
	}

	@Override
	public void fill(TableItem item, int position) {
		int index = arrangement.index(position);
		SampleColumn[] columns = SampleColumn.values();
		String[] texts = new String[columns.length];
		for (int c = 0; c < texts.length; c++) {
			texts[c] = CellText.of(arrangement.content(), columns[c], index);
		}
		item.setText(texts);
		boolean kept = arrangement.content().table(index).isKept(arrangement.content().rows().row(index));
		item.setForeground(kept ? null : new Color(Palette.of(item.getDisplay()).muted()));
	}

	@Override
	public boolean isChosen(int position) {
		return picks.isChosen(position);
	}

	@Override
	public void pick(int position, int state) {
		if ((state & SWT.SHIFT) != 0) {
			picks.extend(position);
		} else if ((state & SWT.MOD1) != 0) {
			picks.toggle(position);
		} else {
			picks.choose(position);
		}
		changed();
	}

	@Override
	public void pickAll() {
		picks.all();
		changed();
	}

	@Override
	public int focus() {
		return picks.focusPosition();
	}

	private void changed() {
		window.refreshSelection();
		picked.run();
	}
}
