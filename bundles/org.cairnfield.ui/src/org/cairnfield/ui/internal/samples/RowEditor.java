package org.cairnfield.ui.internal.samples;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

import org.cairnfield.ui.internal.samples.model.SampleColumn;
import org.cairnfield.ui.show.Marked;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableEditor;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/**
 * Fields over the floor, x and y of one row. Enter takes them over, Esc gives up, Tab goes from one to the next; scrolling or
 * going elsewhere gives up too.
 */
final class RowEditor {

	private static final SampleColumn[] EDITED = { SampleColumn.FLOOR, SampleColumn.X, SampleColumn.Y };

	/** Takes over what was written. */
	interface Taker {
		/** @return whether it was sound; what is wrong has been said otherwise */
		boolean take(String floor, String xMetres, String yMetres);
	}

	private final Table table;
	private final Map<SampleColumn, Text> fields = new EnumMap<>(SampleColumn.class);
	private final Taker taker;
	private final Runnable closed;

	private RowEditor(Table table, Taker taker, Runnable closed) {
		this.closed = closed;
		this.table = table;
		this.taker = taker;
	}

	static boolean edits(SampleColumn column) {
		return column == SampleColumn.FLOOR || column == SampleColumn.X || column == SampleColumn.Y;
	}

	/**
	 * @param first  the field to begin in
	 * @param closed called when the fields are gone
	 */
	static RowEditor open(Table table, TableItem item, SampleColumn first, Taker taker, Runnable closed) {
		RowEditor editor = new RowEditor(table, taker, closed);
		for (SampleColumn column : EDITED) {
			editor.add(item, column);
		}
		Text begun = editor.fields.get(edits(first) ? first : SampleColumn.X);
		table.showColumn(table.getColumn(first.ordinal()));
		begun.setFocus();
		begun.selectAll();
		return editor;
	}

	private void add(TableItem item, SampleColumn column) {
		Text field = new Text(table, SWT.SINGLE | SWT.RIGHT | SWT.BORDER);
		field.setText(item.getText(column.ordinal()));
		field.setData("org.cairnfield.id", "samples.edit." + column.name().toLowerCase(Locale.ROOT));
		Marked.named(field, NLS.bind(Messages.RowEditor_of, column.title(), item.getText(0)));
		TableEditor place = new TableEditor(table);
		place.grabHorizontal = true;
		place.minimumWidth = 70;
		place.minimumHeight = field.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
		place.setEditor(field, item, column.ordinal());
		field.addListener(SWT.Dispose, e -> place.dispose());
		field.addListener(SWT.Traverse, e -> {
			if (e.detail == SWT.TRAVERSE_ESCAPE) {
				e.doit = false;
				close();
				table.setFocus();
			} else if (e.detail == SWT.TRAVERSE_RETURN) {
				e.doit = false;
				take();
			} else if (e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
				e.doit = false;
				neighbour(column, e.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : EDITED.length - 1).setFocus();
			}
		});
		field.addListener(SWT.FocusIn, e -> field.selectAll());
		field.addListener(SWT.FocusOut, e -> table.getDisplay().asyncExec(this::closeUnlessFocused));
		fields.put(column, field);
	}

	private Text neighbour(SampleColumn column, int steps) {
		for (int i = 0; i < EDITED.length; i++) {
			if (EDITED[i] == column) {
				return fields.get(EDITED[(i + steps) % EDITED.length]);
			}
		}
		throw new IllegalArgumentException(column + " is not edited");
	}

	private void take() {
		if (taker.take(text(SampleColumn.FLOOR), text(SampleColumn.X), text(SampleColumn.Y))) {
			close();
			table.setFocus();
		}
	}

	private String text(SampleColumn column) {
		return fields.get(column).getText().strip();
	}

	private void closeUnlessFocused() {
		if (!isOpen()) {
			return;
		}
		Control focused = table.getDisplay().getFocusControl();
		if (focused != null && !fields.containsValue(focused)) {
			close();
		}
	}

	boolean isOpen() {
		return fields.values().stream().anyMatch(field -> !field.isDisposed());
	}

	void close() {
		if (isOpen()) {
			fields.values().forEach(Text::dispose);
			closed.run();
		}
	}
}
