package org.cairnfield.ui.tests.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** Moves the mouse and presses keys of the display itself, through the program xdotool. */
public final class Hand {

	private static final int PATIENCE_SECONDS = 20;
	private static final int SOME_LOOKS = 8;
	/** How long a target that moves, or is covered, is aimed at. */
	private static final int LOOKS = 100;
	private static final Duration AIMING = Duration.ofSeconds(20);

	private static final int PIXELS_PER_POINT = Integer.parseInt(System.getenv().getOrDefault("GDK_SCALE", "1"));

	private Hand() {
	}

	/** Clicks the middle of a control, once it is no longer greyed out and lies under the pointer. */
	public static void click(Control control) {
		Ui.waitUntil("it can be clicked: " + Ui.ask(control::toString), control::isEnabled);
		scrollTo(control);
		click(() -> {
			Rectangle bounds = control.getBounds();
			return control.getParent() == null ? control.toDisplay(bounds.width / 2, bounds.height / 2)
					: control.getParent().toDisplay(bounds.x + bounds.width / 2, bounds.y + bounds.height / 2);
		}, () -> isIn(control, Display.getCurrent().getCursorControl()), control instanceof Button);
	}

	/** Brings a control into sight that lies in a page which scrolls, as a turn of the wheel does. */
	private static void scrollTo(Control control) {
		Ui.run(() -> {
			for (Control each = control; each.getParent() != null; each = each.getParent()) {
				if (each.getParent() instanceof ScrolledComposite page) {
					page.showControl(control);
				}
			}
		});
	}

	/** Clicks a row of a table, which may be filled again meanwhile; waits for the row. */
	public static void click(Table table, int row) {
		Ui.waitUntil("the table has a row " + row, () -> table.getItemCount() > row);
		aimAndClick(table, () -> {
			table.showItem(table.getItem(row));
			if (table.getItem(row).getBounds(0).y < table.getHeaderHeight()) { // half below the header, which counts as shown
				table.setTopIndex(row);
			}
			return table.getItem(row).getBounds(0);
		});
	}

	/** Clicks the item of a tree whose text begins so, see {@link Widgets#item}; the tree may be filled again meanwhile. */
	public static void click(Tree tree, String text) {
		Widgets.item(tree, text);
		click(tree, () -> Widgets.find(tree, text));
	}

	/** @param item asked again and again, since the tree may be filled again; on the user interface thread */
	public static void click(Tree tree, Callable<TreeItem> item) {
		aimAndClick(tree, () -> {
			TreeItem now = item.call();
			tree.showItem(now);
			return now.getBounds(0);
		});
	}

	/** Clicks a control while the program saves, for whose end any other click waits. */
	public static void clickWhileBusy(Control control) {
		for (int looks = 0; !Ui.ask(() -> isIn(control, Display.getCurrent().getCursorControl())); looks++) {
			assertTrue(looks < LOOKS, "it can be reached");
			Point at = Ui.ask(() -> control.toDisplay(control.getSize().x / 2, control.getSize().y / 2));
			Xdotool.run("mousemove", pixels(at.x), pixels(at.y));
			Ui.pause();
		}
		Xdotool.run("click", "1");
	}

	private static void aimAndClick(Control list, Callable<Rectangle> cell) {
		click(() -> {
			Rectangle bounds = cell.call();
			return list.toDisplay(bounds.x + 12, bounds.y + bounds.height / 2);
		}, () -> isIn(list, Display.getCurrent().getCursorControl()), false);
	}

	private static boolean isIn(Control control, Control found) {
		Control each = found;
		while (each != null && each != control) {
			each = each.getParent();
		}
		return each != null;
	}

	/** Clicks the text of an item, after it was brought into view. */
	public static void click(TreeItem item) {
		click(Ui.ask(item::getParent), () -> item);
	}

	/** Likewise for a row of a table. */
	public static void click(TableItem item) {
		Table table = Ui.ask(item::getParent);
		aimAndClick(table, () -> {
			table.showItem(item);
			return item.getBounds(0);
		});
	}

	/**
	 * Clicks a point of the display that may still move, such as that of a sample on the plan or of a bar in a chart.
	 *
	 * @param target where it is now; asked again and again on the user interface thread
	 */
	public static void click(Callable<Point> target) {
		click(target, () -> true, false);
	}

	/** @param again whether it is clicked once more where the program saw nothing of it, as when its window was just coming up */
	private static void click(Callable<Point> target, BooleanSupplier isReached, boolean again) {
		aim(() -> List.of(target.call()), isReached);
		boolean seen = press();
		release();
		if (!seen && again) {
			press();
			release();
		}
	}

	/**
	 * Moves the pointer to where something is, and follows it until it stays where it is, lies under the pointer, and the
	 * program is at rest.
	 *
	 * @param way from where it is to wherever it is to go
	 */
	private static List<Point> aim(Callable<List<Point>> way, BooleanSupplier isReached) {
		long end = System.nanoTime() + AIMING.toNanos();
		for (int looks = 1;; looks++) {
			Ui.waitUntilIdle();
			List<Point> aimed = Ui.ask(way);
			move(aimed.get(0));
			Ui.waitUntilIdle();
			if (aimed.equals(Ui.ask(way)) && Ui.ask(isReached::getAsBoolean)) {
				return aimed;
			}
			if (looks > LOOKS && System.nanoTime() > end) {
				throw new Unreachable(aimed.get(0));
			}
			Ui.pause();
		}
	}

	/** Clicks the tab with that title. */
	public static void click(CTabFolder tabs, String title) {
		scrollTo(tabs);
		click(() -> {
			for (CTabItem tab : tabs.getItems()) {
				if (tab.getText().equals(title)) {
					Rectangle bounds = tab.getBounds();
					return tabs.toDisplay(bounds.x + bounds.width / 2, bounds.y + bounds.height / 2);
				}
			}
			throw new AssertionError("no tab " + title);
		});
	}

	/** Gives a list that drops down the focus and goes through it by the arrow keys. */
	public static void choose(Combo list, String text) {
		Ui.waitUntil("the list has the focus", list::forceFocus);
		int by = Ui.ask(() -> {
			int wanted = list.indexOf(text);
			if (wanted < 0) {
				throw new AssertionError("no " + text + " in " + Arrays.toString(list.getItems()));
			}
			return wanted - list.getSelectionIndex();
		});
		for (int i = 0; i < Math.abs(by); i++) {
			press(by > 0 ? "Down" : "Up");
		}
		Ui.waitUntil(text + " is chosen", () -> list.getText().equals(text));
	}

	/** Moves the pointer, and waits for the program to see it there where it sees the pointer at all. */
	private static void move(Point to) {
		int[] looks = { 0 };
		move(to, () -> {
			boolean isThere = Seen.byTheProgram().pointer().equals(to);
			if (isThere && !Seen.byTheProgram().isOnlyEntered()) {
				return true;
			}
			// over nothing of the program: what has just come up takes a moment to be known as what is under the pointer
			return (isThere || Display.getCurrent().getCursorControl() == null) && ++looks[0] > SOME_LOOKS;
		});
	}

	private static void move(Point to, BooleanSupplier isSeen) {
		if (!Ui.ask(() -> Display.getCurrent().getCursorLocation()).equals(to)) {
			Ui.run(Seen::byTheProgram);
			Xdotool.run("mousemove", pixels(to.x), pixels(to.y));
			Ui.waitAWhile(isSeen);
		}
	}

	/** @return whether the program saw it */
	private static boolean press() {
		int before = Ui.ask(() -> {
			Shell active = Display.getCurrent().getActiveShell();
			if (active != null) {
				ScreenReader.ask(active);
			}
			return Seen.byTheProgram().presses();
		});
		Xdotool.run("mousedown", "1");
		boolean seen = Ui.waitAWhile(() -> Seen.byTheProgram().presses() > before);
		Ui.waitForWork();
		return seen;
	}

	private static void release() {
		int before = Ui.ask(() -> Seen.byTheProgram().releases());
		Xdotool.run("mouseup", "1");
		Ui.waitAWhile(() -> Seen.byTheProgram().releases() > before);
		Ui.waitUntilIdle();
	}

	/**
	 * Presses at the first point of a way, moves over the others, and lets go at the last.
	 *
	 * @param way asked again as long as what is dragged still moves by itself; on the user interface thread
	 */
	public static void drag(Callable<List<Point>> way) {
		List<Point> points = aim(way, () -> true);
		press();
		for (int i = 1; i < points.size(); i++) {
			// in steps, as a hand does
			Point from = points.get(i - 1);
			Point to = points.get(i);
			for (int step = 1; step <= 4; step++) {
				Point next = new Point(from.x + (to.x - from.x) * step / 4, from.y + (to.y - from.y) * step / 4);
				move(next, () -> Seen.byTheProgram().pointer().equals(next)); // whatever it is over
				Ui.waitForWork();
			}
		}
		release();
	}

	/** Drags what is at a point, which may still move, by some points to the right and down. */
	public static void drag(Callable<Point> what, int right, int down) {
		drag(() -> {
			Point from = what.call();
			return List.of(from, new Point(from.x + right, from.y + down));
		});
	}

	/** Types text into what has the focus. */
	public static void type(String text) {
		int before = Ui.ask(() -> Seen.byTheProgram().keysReleased());
		command("type", "--delay", "8", "--", text);
		Ui.waitAWhile(() -> Seen.byTheProgram().keysReleased() >= before + text.length());
		Ui.waitUntilIdle();
	}

	/**
	 * Presses a key or a chord, such as {@code ctrl+z} or {@code Return}. One that the program saw nothing of, because the
	 * focus of the display was just going from window to window, is pressed once more.
	 */
	public static void press(String chord) {
		tap(chord);
		Ui.waitUntilIdle();
	}

	/** The same by a quick hand, which does not wait for what the program does a moment later. */
	public static void tap(String chord) {
		boolean seen = false;
		for (int tries = 0; tries < 2 && !seen; tries++) {
			int before = Ui.ask(() -> Seen.byTheProgram().keys());
			int releasedBefore = Ui.ask(() -> Seen.byTheProgram().keysReleased());
			Xdotool.run("key", chord);
			seen = Ui.waitAWhile(() -> Seen.byTheProgram().keys() > before);
			if (seen) { // the release goes nowhere where the window takes no input meanwhile, as while it saves
				Ui.waitAMoment(() -> Seen.byTheProgram().keysReleased() > releasedBefore);
			}
			Ui.waitForWork();
		}
	}

	/** Presses a key while a menu is open, whose keys the program does not see. */
	public static void pressInMenu(String key) {
		Xdotool.run("key", key);
		Ui.waitUntilIdle();
	}

	/** Names a file in a dialog of the desktop's own, whose keys the program does not see, and agrees. @param title of the dialog */
	public static void nameFile(String title, Path file) {
		command("search", "--sync", "--onlyvisible", "--name", title, "windowactivate", "--sync");
		command("key", "ctrl+a");
		command("type", "--delay", "8", "--", file.toString());
		command("key", "Return");
		Ui.waitUntil(file + " is there", () -> Files.exists(file));
		Ui.waitUntilIdle();
	}

	/** Clicks into a text field, empties it and types. */
	public static void fill(Control field, String text) {
		click(field);
		press("ctrl+a");
		type(text);
	}

	/** Gives a window the focus of the display, which a key event needs. */
	public static void activate(Shell shell) {
		Ui.run(shell::forceActive);
		Ui.waitUntil("the window is active", () -> Display.getCurrent().getActiveShell() == shell);
	}

	/** The display counts in pixels; at 200 % there are two of them to a point. */
	private static String pixels(int points) {
		return Integer.toString(points * PIXELS_PER_POINT);
	}

	/** A program of its own, since a text may hold blanks and quotes. */
	private static void command(String... arguments) {
		List<String> command = new ArrayList<>(List.of("xdotool"));
		command.addAll(Arrays.asList(arguments));
		try {
			Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
			String said = new String(process.getInputStream().readAllBytes());
			assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), () -> command + " does not end");
			assertEquals(0, process.exitValue(), () -> command + ": " + said);
		} catch (IOException e) {
			throw new AssertionError("xdotool is needed", e);
		} catch (InterruptedException e) {
			throw new AssertionError(e);
		}
	}
}
