package org.cairnfield.ui.show;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Lines of text in columns, to read and to copy. The last column takes the room that is left. */
public final class TextTable {

	private final Table table;
	private List<String[]> lines = List.of();

	/** @param id that it calls itself by */
	public TextTable(Composite parent, String id, String[] titles, int[] widths) {
		table = new Table(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.VIRTUAL);
		table.setData("org.cairnfield.id", id);
		table.setHeaderVisible(true);
		for (int i = 0; i < titles.length; i++) {
			TableColumn column = new TableColumn(table, SWT.LEFT);
			column.setText(titles[i]);
			column.setWidth(widths[i]);
		}
		int last = titles.length - 1;
		int others = IntStream.of(widths).sum() - widths[last];
		table.addListener(SWT.Resize,
				event -> table.getColumn(last).setWidth(Math.max(widths[last], table.getClientArea().width - others)));
		table.addListener(SWT.SetData, event -> {
			if (event.index >= 0 && event.index < lines.size()) { // below 0: an item that is gone again
				((TableItem) event.item).setText(lines.get(event.index));
			}
		});
	}

	/** The widget. */
	public Table control() {
		return table;
	}

	/** Shows other lines. */
	public void show(List<String[]> now) {
		lines = now;
		table.setItemCount(0);
		table.setItemCount(lines.size());
	}

	/** As text with tabs, for a spreadsheet or a message. */
	public void copy() {
		Clipboard clipboard = new Clipboard(table.getDisplay());
		clipboard.setContents(
				new Object[] { lines.stream().map(line -> String.join("\t", line)).collect(Collectors.joining("\n")) },
				new Transfer[] { TextTransfer.getInstance() });
		clipboard.dispose();
	}
}
