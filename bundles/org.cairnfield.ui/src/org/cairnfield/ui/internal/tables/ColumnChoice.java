package org.cairnfield.ui.internal.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.cairnfield.ui.prefs.Preferences;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;

/** Which columns of a table are in sight; kept for the person. The first one always is. */
final class ColumnChoice {

	private static final String PARTED_BY = "\t";
	private static final String WIDTH = "org.cairnfield.width";
	private static final int USUAL_WIDTH = 100;

	private final Control table;
	private final String key;

	/** @param id of the table */
	ColumnChoice(Control table, String id) {
		this.table = table;
		this.key = "columns." + id;
	}

	/** Hides what was hidden when the table was last seen. */
	void restore() {
		List<String> hidden = Arrays.asList(Preferences.get(key, "").split(PARTED_BY));
		List<Item> columns = columns();
		for (int i = 1; i < columns.size(); i++) {
			if (!columns.get(i).getText().isEmpty() && hidden.contains(columns.get(i).getText())) {
				show(columns.get(i), false);
			}
		}
	}

	/** A menu of the columns that have a title, below another menu; none where there is nothing to choose. */
	Optional<MenuItem> menu(Menu above) {
		List<Item> columns = columns();
		if (columns.size() < 2) {
			return Optional.empty();
		}
		MenuItem cascade = new MenuItem(above, SWT.CASCADE);
		cascade.setText(Messages.ColumnChoice_columns);
		Menu menu = new Menu(above);
		cascade.setMenu(menu);
		cascade.addListener(SWT.Dispose, event -> menu.dispose());
		for (Item column : columns.subList(1, columns.size())) {
			if (!column.getText().isEmpty()) {
				MenuItem item = new MenuItem(menu, SWT.CHECK);
				item.setText(column.getText().replace("&", "&&"));
				item.setSelection(width(column) > 0);
				item.addListener(SWT.Selection, event -> {
					show(column, width(column) == 0);
					keep();
				});
			}
		}
		return Optional.of(cascade);
	}

	private void keep() {
		Preferences.put(key, columns().stream().filter(column -> width(column) == 0).map(Item::getText)
				.collect(Collectors.joining(PARTED_BY)));
	}

	private List<Item> columns() {
		return new ArrayList<>(
				Arrays.asList(table instanceof Tree tree ? tree.getColumns() : ((Table) table).getColumns()));
	}

	private static int width(Item column) {
		return column instanceof TreeColumn of ? of.getWidth() : ((TableColumn) column).getWidth();
	}

	private static void show(Item column, boolean shown) {
		int now = width(column);
		if (shown == now > 0) {
			return;
		}
		int then = !shown ? 0 : column.getData(WIDTH) instanceof Integer width ? width : USUAL_WIDTH;
		column.setData(WIDTH, now);
		if (column instanceof TreeColumn of) {
			of.setResizable(shown);
			of.setWidth(then);
		} else {
			((TableColumn) column).setResizable(shown);
			((TableColumn) column).setWidth(then);
		}
	}
}
