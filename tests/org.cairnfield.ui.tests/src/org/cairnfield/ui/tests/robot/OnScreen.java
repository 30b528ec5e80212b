package org.cairnfield.ui.tests.robot;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;

/** The screen in words, for the report of a story that failed. */
final class OnScreen {

	private static final int MOST_LINES = 150;
	private static final int MOST_ROWS = 4;
	private static final int LONGEST = 160;

	private final List<String> lines = new ArrayList<>();

	private OnScreen() {
	}

	/** Windows from the topmost, with what can be read in them. */
	static String describe() {
		return Ui.ask(() -> {
			OnScreen screen = new OnScreen();
			Display display = Display.getCurrent();
			screen.add("active window: "
					+ (display.getActiveShell() == null ? "none" : display.getActiveShell().getText()));
			screen.add("focus: " + (display.getFocusControl() == null ? "none" : text(display.getFocusControl())));
			screen.add("pointer: " + display.getCursorLocation()
					+ (display.getCursorControl() == null ? "" : " over " + text(display.getCursorControl())));
			screen.add("of the robot the program saw: " + Seen.byTheProgram());
			for (Job job : Job.getJobManager().find(Work.FAMILY)) {
				screen.add("running: " + job);
			}
			Shell[] shells = display.getShells();
			for (int i = shells.length - 1; i >= 0; i--) {
				if (shells[i].isVisible()) {
					screen.add("window \"" + shells[i].getText() + "\" " + shells[i].getBounds());
					screen.collect(shells[i], "  ");
				}
			}
			return String.join("\n", screen.lines.subList(0, Math.min(MOST_LINES, screen.lines.size())));
		});
	}

	private void collect(Composite composite, String indent) {
		for (Control child : composite.getChildren()) {
			if (!child.isVisible() || child instanceof Shell) {
				continue;
			}
			if (!(child instanceof Composite) || child instanceof Combo || child instanceof Table
					|| child instanceof Tree) {
				if (!words(child).isBlank()) {
					add(indent + text(child));
				}
			} else {
				collect((Composite) child, indent);
			}
		}
	}

	private static String text(Control control) {
		Object id = control.getData("org.cairnfield.id");
		return control.getClass().getSimpleName() + (id == null ? "" : " " + id)
				+ (control.isEnabled() ? "" : " (disabled)") + ": " + words(control);
	}

	private static String words(Control control) {
		if (control instanceof Label label) {
			return label.getText();
		} else if (control instanceof Button button) {
			return button.getText() + (button.getSelection() ? " [x]" : "");
		} else if (control instanceof Text text) {
			return text.getText();
		} else if (control instanceof Link link) {
			return link.getText();
		} else if (control instanceof Combo combo) {
			return combo.getText();
		} else if (control instanceof Table table) {
			StringBuilder rows = new StringBuilder(table.getItemCount() + " rows");
			for (int i = 0; i < Math.min(MOST_ROWS, table.getItemCount()); i++) {
				rows.append(" | ").append(table.getItem(i).getText());
			}
			return rows.toString();
		} else if (control instanceof Tree tree) {
			StringBuilder rows = new StringBuilder(tree.getItemCount() + " top rows");
			for (int i = 0; i < Math.min(MOST_ROWS, tree.getItemCount()); i++) {
				rows.append(" | ").append(tree.getItem(i).getText());
			}
			return rows.toString();
		}
		return "";
	}

	private void add(String line) {
		String one = line.replace('\n', ' ');
		lines.add(one.length() > LONGEST ? one.substring(0, LONGEST) + " …" : one);
	}
}
