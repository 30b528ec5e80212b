package org.cairnfield.ui.tests.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.TreeItem;

/** Moves the mouse and presses keys of the display itself, through the program xdotool. */
public final class Hand {

	private static final int PATIENCE_SECONDS = 20;
	/** How long a target that moves, or is covered, is aimed at. */
	private static final Duration AIMING = Duration.ofSeconds(4);

	private Hand() {
	}

	/** Clicks the middle of a control, once it is no longer greyed out and lies under the pointer. */
	public static void click(Control control) {
		Ui.waitUntil("it can be clicked: " + Ui.ask(control::toString), control::isEnabled);
		click(() -> {
			Rectangle bounds = control.getBounds();
			return control.getParent() == null ? control.toDisplay(bounds.width / 2, bounds.height / 2)
					: control.getParent().toDisplay(bounds.x + bounds.width / 2, bounds.y + bounds.height / 2);
		}, () -> isIn(control, Display.getCurrent().getCursorControl()), control instanceof Button);
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
		click(() -> {
			item.getParent().showItem(item);
			Rectangle bounds = item.getBounds(0);
			return item.getParent().toDisplay(bounds.x + 12, bounds.y + bounds.height / 2);
		}, () -> isIn(item.getParent(), Display.getCurrent().getCursorControl()), false);
	}

	/** Likewise for a row of a table. */
	public static void click(TableItem item) {
		click(() -> {
			item.getParent().showItem(item);
			Rectangle bounds = item.getBounds(0);
			return item.getParent().toDisplay(bounds.x + 12, bounds.y + bounds.height / 2);
		}, () -> isIn(item.getParent(), Display.getCurrent().getCursorControl()), false);
	}

	/**
	 * Follows a target that still moves, such as one in a window that is being placed, and clicks it when it is reached.
	 *
	 * @param again whether it is clicked once more where the program saw nothing of it, as when its window was just coming up
	 */
	private static void click(Callable<Point> target, BooleanSupplier isReached, boolean again) {
		long end = System.nanoTime() + AIMING.toNanos();
		do {
			Point at = Ui.ask(target);
			move(at);
			Ui.waitUntilIdle();
			if (at.equals(Ui.ask(target)) && Ui.ask(isReached::getAsBoolean)) {
				break;
			}
			Ui.pause();
		} while (System.nanoTime() < end);
		boolean seen = press();
		release();
		if (!seen && again) {
			press();
			release();
		}
	}

	/** Clicks the tab with that title. */
	public static void click(CTabFolder tabs, String title) {
		click(Ui.ask(() -> {
			for (CTabItem tab : tabs.getItems()) {
				if (tab.getText().equals(title)) {
					Rectangle bounds = tab.getBounds();
					return tabs.toDisplay(bounds.x + bounds.width / 2, bounds.y + bounds.height / 2);
				}
			}
			throw new AssertionError("no tab " + title);
		}));
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
		assertEquals(text, Ui.ask(list::getText));
	}

	/** Clicks a point of the display. */
	public static void click(Point at) {
		move(at);
		Ui.waitUntilIdle();
		press();
		release();
	}

	/** Moves the pointer, and waits for the program to see it there where it sees the pointer at all. */
	private static void move(Point to) {
		if (!Ui.ask(() -> Display.getCurrent().getCursorLocation()).equals(to)) {
			Ui.run(Seen::byTheProgram);
			command("mousemove", "--sync", text(to.x), text(to.y));
			Ui.waitAWhile(() -> Display.getCurrent().getCursorControl() == null || Seen.byTheProgram().pointer().equals(to));
		}
	}

	/** @return whether the program saw it */
	private static boolean press() {
		int before = Ui.ask(() -> Seen.byTheProgram().presses());
		command("mousedown", "1");
		Ui.waitAWhile(() -> Seen.byTheProgram().presses() > before);
		boolean seen = Ui.ask(() -> Seen.byTheProgram().presses() > before);
		Ui.waitUntilIdle();
		return seen;
	}

	private static void release() {
		int before = Ui.ask(() -> Seen.byTheProgram().releases());
		command("mouseup", "1");
		Ui.waitAWhile(() -> Seen.byTheProgram().releases() > before);
		Ui.waitUntilIdle();
	}

	/** Presses at the first point, moves over the others, and lets go at the last. */
	public static void drag(Point... way) {
		move(way[0]);
		Ui.waitUntilIdle();
		press();
		for (int i = 1; i < way.length; i++) {
			// in steps, as a hand does
			Point from = way[i - 1];
			for (int step = 1; step <= 4; step++) {
				move(new Point(from.x + (way[i].x - from.x) * step / 4, from.y + (way[i].y - from.y) * step / 4));
				Ui.waitUntilIdle();
			}
		}
		release();
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
		for (int tries = 0; tries < 2; tries++) {
			int before = Ui.ask(() -> Seen.byTheProgram().keys());
			int releasedBefore = Ui.ask(() -> Seen.byTheProgram().keysReleased());
			command("key", chord);
			Ui.waitAWhile(() -> Seen.byTheProgram().keysReleased() > releasedBefore);
			Ui.waitUntilIdle();
			if (Ui.ask(() -> Seen.byTheProgram().keys()) > before) {
				return;
			}
		}
	}

	/** Presses a key while a menu is open, whose keys the program does not see. */
	public static void pressInMenu(String key) {
		command("key", key);
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

	private static String text(int number) {
		return Integer.toString(number);
	}

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
