package org.cairnfield.ui.tests.robot;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** Reads and chooses entries of real menus. They are filled only when they are about to be seen, so all of it shows them first. */
public final class Menus {

	private Menus() {
	}

	/** Texts on the way to each entry that does something, whether it can be chosen now or not. */
	public static List<List<String>> entries(Menu menu) {
		return Ui.ask(() -> {
			List<List<String>> entries = new ArrayList<>();
			collect(menu, List.of(), entries);
			return entries;
		});
	}

	private static void collect(Menu menu, List<String> way, List<List<String>> entries) {
		menu.notifyListeners(SWT.Show, new Event());
		for (MenuItem item : menu.getItems()) {
			List<String> path = new ArrayList<>(way);
			path.add(text(item));
			if (item.getMenu() != null) {
				collect(item.getMenu(), path, entries);
			} else if ((item.getStyle() & SWT.SEPARATOR) == 0) {
				entries.add(path);
			}
		}
		menu.notifyListeners(SWT.Hide, new Event());
	}

	/** Chooses an entry as a click on it does; on the user interface thread. @return whether it could be chosen */
	public static boolean choose(Menu menu, List<String> path) {
		menu.notifyListeners(SWT.Show, new Event());
		try {
			for (MenuItem item : menu.getItems()) {
				if (text(item).equals(path.get(0)) && item.isEnabled()) {
					if (item.getMenu() != null) {
						return choose(item.getMenu(), path.subList(1, path.size()));
					}
					if ((item.getStyle() & (SWT.CHECK | SWT.RADIO)) != 0) {
						item.setSelection((item.getStyle() & SWT.RADIO) != 0 || !item.getSelection());
					}
					item.notifyListeners(SWT.Selection, new Event());
					return true;
				}
			}
			return false;
		} finally {
			if (!menu.isDisposed()) {
				menu.notifyListeners(SWT.Hide, new Event());
			}
		}
	}

	/** Without mnemonic, key, and what an entry is about at the moment, as in "Undo: …". */
	private static String text(MenuItem item) {
		return item.getText().replaceAll("&(.)", "$1").replaceFirst("(\t|: ).*", "");
	}
}
