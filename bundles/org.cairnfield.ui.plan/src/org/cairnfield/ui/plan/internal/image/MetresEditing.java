package org.cairnfield.ui.plan.internal.image;

import java.util.function.BiConsumer;
import java.util.function.Function;

import org.cairnfield.ui.plan.internal.image.ControlPoints.Entry;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TextCellEditor;

/** Lets a person type metres into a cell; what is no number is not taken. */
final class MetresEditing extends EditingSupport {

	private final TextCellEditor editor;
	private final Function<Entry, String> text;
	private final BiConsumer<Entry, Double> edit;

	MetresEditing(TableViewer table, Function<Entry, String> text, BiConsumer<Entry, Double> edit) {
		super(table);
		editor = new TextCellEditor(table.getTable());
		this.text = text;
		this.edit = edit;
	}

	@Override
	protected CellEditor getCellEditor(Object element) {
		return editor;
	}

	@Override
	protected boolean canEdit(Object element) {
		return true;
	}

	@Override
	protected Object getValue(Object element) {
		return text.apply((Entry) element);
	}

	@Override
	protected void setValue(Object element, Object value) {
		String typed = value.toString().strip().replace('\u2212', '-').replace(',', '.');
		if (typed.isEmpty()) {
			edit.accept((Entry) element, null);
			return;
		}
		try {
			double metres = Double.parseDouble(typed);
			if (Double.isFinite(metres)) {
				edit.accept((Entry) element, metres);
			}
		} catch (NumberFormatException e) {
			// the cell keeps what it had
		}
	}
}
