package org.cairnfield.ui.tests.robot;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * What the program has seen of mouse and keyboard. The display moves its pointer at once; the event that tells the program
 * comes later, with the next frame. All on the user interface thread.
 */
final class Seen {

	private static final Seen BY_THE_PROGRAM = new Seen();

	private Point pointer = new Point(Integer.MIN_VALUE, Integer.MIN_VALUE);
	private boolean entered;
	private int presses;
	private int releases;
	private int keys;
	private int keysReleased;
	private Display watched;

	private Seen() {
	}

	/** Watches the display from the first call on. */
	static Seen byTheProgram() {
		return BY_THE_PROGRAM.watching();
	}

	private Seen watching() {
		Display display = Display.getCurrent();
		if (display != watched) {
			watched = display;
			Listener listener = this::note;
			for (int type : new int[] { SWT.MouseMove, SWT.MouseEnter, SWT.MouseDown, SWT.MouseUp, SWT.KeyDown,
					SWT.KeyUp, SWT.Traverse }) {
				display.addFilter(type, listener);
			}
		}
		return this;
	}

	private void note(Event event) {
		switch (event.type) {
		case SWT.MouseMove -> at(event);
		case SWT.MouseEnter -> {
			at(event);
			entered = true;
		}
		case SWT.MouseDown -> {
			at(event);
			presses++;
		}
		case SWT.MouseUp -> {
			at(event);
			releases++;
		}
		case SWT.KeyUp -> {
			keys++;
			keysReleased++;
		}
		default -> keys++;
		}
	}

	private void at(Event event) {
		if (event.widget instanceof Control control && !control.isDisposed()) {
			pointer = control.toDisplay(event.x, event.y);
			entered = false;
		}
	}

	/** Where the pointer was at its last event, on the display. */
	Point pointer() {
		return pointer;
	}

	/** Whether it is known from its entering a control only. The move that as a rule comes with that is seen a frame later. */
	boolean isOnlyEntered() {
		return entered;
	}

	int presses() {
		return presses;
	}

	int releases() {
		return releases;
	}

	/** Events of keys of any kind. A binding may keep the press from whoever listens late, but not the release. */
	int keys() {
		return keys;
	}

	int keysReleased() {
		return keysReleased;
	}

	@Override
	public String toString() {
		return "pointer at " + pointer + ", button pressed " + presses + " times, released " + releases
				+ ", keys released " + keysReleased;
	}
}
