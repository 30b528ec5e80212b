package org.cairnfield.ui.tests.wander;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.story.Stage;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.PlatformUI;

/** What can be seen and used at this moment; waits for nothing. */
final class Sight {

	/** Where controls are whose names begin so. */
	private static final Map<String, String> VIEWS = Map.ofEntries(entry("explorer", "org.cairnfield.ui.explorer"),
			entry("samples", "org.cairnfield.ui.samples"), entry("findings", "org.cairnfield.ui.findings"),
			entry("history", "org.cairnfield.ui.history"),
			entry("plan", "org.cairnfield.ui.plan.view"), entry("split", "org.cairnfield.ui.review.split"),
			entry("review", "org.cairnfield.ui.review.queue"), entry("gates", "org.cairnfield.ui.release.gates"),
			entry("releases", "org.cairnfield.ui.release.releases"),
			entry("measures", "org.cairnfield.ui.release.measures"),
			entry("timeline", "org.cairnfield.ui.timeline"), entry("study", "org.cairnfield.ui.release.study"),
			entry("properties", "org.eclipse.ui.views.PropertySheet"), entry("steps", "org.cairnfield.ui.firstSteps"));

	private Sight() {
	}

	/** The window of the workbench. */
	static Shell window() {
		return Ui.ask(() -> PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell());
	}

	/** The window that takes input: a dialog that is open, or the workbench's. */
	static Shell front() {
		return Ui.ask(() -> {
			Shell window = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell();
			for (Shell shell : Display.getCurrent().getShells()) {
				if (shell != window && shell.isVisible() && shell.isEnabled() && !shell.getText().isEmpty()) {
					return shell;
				}
			}
			return window;
		});
	}

	/** Controls of the front window that can be seen and used. */
	static <T extends Control> List<T> all(Class<T> role, Predicate<T> test) {
		Shell front = front();
		return Ui.ask(() -> {
			List<T> found = new ArrayList<>();
			collect(front, role, test, found);
			return found;
		});
	}

	private static <T extends Control> void collect(Control control, Class<T> role, Predicate<T> test, List<T> found) {
		if (!control.isVisible() || !control.isEnabled()) {
			return;
		}
		if (role.isInstance(control) && test.test(role.cast(control)) && !isCovered(control)) {
			found.add(role.cast(control));
		}
		if (control instanceof Composite composite) {
			for (Control child : composite.getChildren()) {
				collect(child, role, test, found);
			}
		}
	}

	/** Whether the middle of a control lies outside what is seen of a parent, or beneath another control, as in a view that is too small. */
	private static boolean isCovered(Control control) {
		Rectangle bounds = control.getBounds();
		Point middle = new Point(bounds.x + bounds.width / 2, bounds.y + bounds.height / 2);
		for (Control at = control; !(at instanceof Shell) && at.getParent() != null; at = at.getParent()) {
			Composite parent = at.getParent();
			if (!parent.getClientArea().contains(middle)) {
				return true;
			}
			for (Control other : parent.getChildren()) { // from the top down
				if (other == at) {
					break;
				}
				if (other.isVisible() && other.getBounds().contains(middle)) {
					return true;
				}
			}
			middle = new Point(middle.x + parent.getBounds().x, middle.y + parent.getBounds().y);
		}
		return false;
	}

	/**
	 * A control; its view is brought up where it is not in sight.
	 *
	 * @throws NotNow where it cannot be used
	 */
	static <T extends Control> T control(Class<T> role, String id) {
		Predicate<T> isIt = control -> id.equals(control.getData("org.cairnfield.id"));
		List<T> found = all(role, isIt);
		String view = VIEWS.get(id.substring(0, id.indexOf('.')));
		if (found.isEmpty() && view != null && front() == window()) {
			Stage.show(view);
			found = all(role, isIt);
		}
		if (found.isEmpty()) {
			throw new NotNow(id);
		}
		return found.get(0);
	}

	/** Clicks a button that calls itself so. */
	static void push(String id) {
		Hand.click(control(Button.class, id));
	}

	/** Fills a field that calls itself so, and says which value with Return. */
	static void enter(String id, String text) {
		Hand.fill(control(Control.class, id), text);
		Hand.press("Return");
	}

	/** A row in sight. */
	static TableItem row(String id, Dice dice) {
		Table table = control(Table.class, id);
		return dice.oneOf(Ui.ask(() -> {
			List<TableItem> rows = new ArrayList<>();
			Rectangle area = table.getClientArea();
			for (int i = table.getTopIndex(); i < table.getItemCount(); i++) {
				TableItem item = table.getItem(i);
				if (item.getText().isEmpty() || !area.intersects(item.getBounds())) {
					break;
				}
				rows.add(item);
			}
			return rows;
		}));
	}

	/** A row of a tree in sight. */
	static TreeItem branch(String id, Dice dice) {
		Tree tree = control(Tree.class, id);
		return dice.oneOf(Ui.ask(() -> {
			List<TreeItem> rows = new ArrayList<>();
			collect(tree.getItems(), tree.getClientArea(), rows);
			return rows;
		}));
	}

	private static void collect(TreeItem[] items, Rectangle area, List<TreeItem> rows) {
		for (TreeItem item : items) {
			if (area.intersects(item.getBounds())) {
				rows.add(item);
			}
			if (item.getExpanded()) {
				collect(item.getItems(), area, rows);
			}
		}
	}

	/** Runs a command that can be run now; it may ask something. */
	static void command(String id) {
		if (!Stage.canRun(id)) {
			throw new NotNow(id);
		}
		Ui.later(() -> Stage.commandHere(id));
		Ui.run(() -> {
		}); // it has begun, or asks
		Ui.waitUntilIdle();
	}

	/** Clicks a tab of the workbench. */
	static void clickATab(Dice dice) {
		List<CTabFolder> folders = all(CTabFolder.class, folder -> folder.getItemCount() > 1);
		CTabFolder folder = dice.oneOf(folders);
		CTabItem item = Ui.ask(() -> folder.getItem(dice.below(folder.getItemCount())));
		Hand.click(() -> {
			if (!item.isShowing()) {
				throw new NotNow("the tab is not in sight");
			}
			Rectangle bounds = item.getBounds();
			return folder.toDisplay(bounds.x + Math.min(20, bounds.width / 2), bounds.y + bounds.height / 2);
		});
	}
}
