package org.cairnfield.ui.tests.robot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** Finds widgets that can be seen, by role and by what they are called. */
public final class Widgets {

	private Widgets() {
	}

	/** The control that calls itself so, see {@code org.cairnfield.id}; waits until it can be seen. */
	public static <T extends Control> T byId(Class<T> role, String id) {
		return find(role, "the control " + id, control -> id.equals(control.getData("org.cairnfield.id")));
	}

	/** Whether a control that calls itself so can be seen and passes a test; on the user interface thread. */
	public static <T extends Control> boolean isThere(String id, Class<T> role, Predicate<T> test) {
		List<T> found = new ArrayList<>();
		for (Shell shell : Display.getCurrent().getShells()) {
			collect(shell, role, control -> id.equals(control.getData("org.cairnfield.id")) && test.test(control),
					found);
		}
		return !found.isEmpty();
	}

	/** The button with that label, mnemonics left out. */
	public static Button button(String label) {
		return find(Button.class, "the button " + label, button -> button.getText().replace("&", "").equals(label));
	}

	/** The window whose title begins so. */
	public static Shell shell(String title) {
		List<Shell> found = new ArrayList<>();
		Ui.waitUntil("there is a window " + title, () -> {
			found.clear();
			for (Shell shell : Display.getCurrent().getShells()) {
				if (shell.isVisible() && shell.getText().startsWith(title)) {
					found.add(shell);
				}
			}
			return !found.isEmpty();
		});
		return found.get(0);
	}

	/** Whether a window with such a title is open. */
	public static boolean isOpen(String title) {
		return Ui.ask(() -> {
			for (Shell shell : Display.getCurrent().getShells()) {
				if (shell.isVisible() && shell.getText().startsWith(title)) {
					return true;
				}
			}
			return false;
		});
	}

	/** A control of a kind that passes a test; waits until there is one that can be seen. */
	public static <T extends Control> T find(Class<T> role, String what, Predicate<T> test) {
		List<T> found = new ArrayList<>();
		Ui.waitUntil(what + " can be seen", () -> {
			found.clear();
			for (Shell shell : Display.getCurrent().getShells()) {
				collect(shell, role, test, found);
			}
			return !found.isEmpty();
		});
		return found.get(0);
	}

	private static <T extends Control> void collect(Control control, Class<T> role, Predicate<T> test, List<T> found) {
		if (!control.isVisible()) {
			return;
		}
		if (role.isInstance(control) && test.test(role.cast(control))) {
			found.add(role.cast(control));
		}
		if (control instanceof Composite composite) {
			for (Control child : composite.getChildren()) {
				collect(child, role, test, found);
			}
		}
	}

	/** The item of a tree whose text begins so, at any depth that is expanded; waits for it. */
	public static TreeItem item(Tree tree, String text) {
		TreeItem[] found = new TreeItem[1];
		Ui.waitUntil("the tree has an item " + text, () -> {
			found[0] = find(tree, text);
			return found[0] != null;
		});
		return found[0];
	}

	/** The same without waiting, on the user interface thread; null where there is none. */
	public static TreeItem find(Tree tree, String text) {
		return item(tree.getItems(), text);
	}

	private static TreeItem item(TreeItem[] items, String text) {
		for (TreeItem item : items) {
			if (item.getText().startsWith(text)) {
				return item;
			}
			TreeItem below = item.getExpanded() ? item(item.getItems(), text) : null;
			if (below != null) {
				return below;
			}
		}
		return null;
	}
}
