package org.cairnfield.ui.release.internal;

import java.util.function.Function;

import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** Tables and buttons as the views of this perspective have them. */
final class Forms {

	private Forms() {
	}

	static TableViewer table(Composite parent, int style, String id, String name) {
		TableViewer table = new TableViewer(parent, style | SWT.FULL_SELECTION | SWT.BORDER);
		Marked.named(Marked.id(table.getTable(), id), name).setHeaderVisible(true);
		table.setContentProvider(ArrayContentProvider.getInstance());
		return table;
	}

	@SuppressWarnings("unchecked")
	static <T> void column(TableViewer table, String title, int width, int align, Function<T, String> text) {
		TableViewerColumn column = new TableViewerColumn(table, align);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> text.apply((T) element)));
	}

	static Button button(Composite parent, String text, String id, Runnable action) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.setData("org.cairnfield.id", id);
		button.addListener(SWT.Selection, event -> action.run());
		return button;
	}
}
