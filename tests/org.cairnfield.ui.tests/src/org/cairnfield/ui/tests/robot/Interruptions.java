package org.cairnfield.ui.tests.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.time.Duration;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Does what may open a window, and leaves whatever comes up by Escape: our dialogs, those of the platform, those of the desktop. */
public final class Interruptions {

	private static final Duration PATIENCE = Duration.ofSeconds(120);
	/** Looks between two presses of Escape where a window can be seen. */
	private static final int LOOKS = 20;
	/** Likewise under a dialog of the desktop, which takes its time to come up, or a window without a title. */
	private static final int SELDOM = 50;

	private Interruptions() {
	}

	/**
	 * Does something on the user interface thread and comes back once the workbench is alone on the screen again.
	 *
	 * @param window of the workbench
	 * @return texts of the windows that came up, each once; a dialog of the desktop has none
	 */
	public static List<String> escape(Shell window, Runnable action) {
		AtomicBoolean done = new AtomicBoolean();
		AtomicReference<Throwable> problem = new AtomicReference<>();
		Display.getDefault().asyncExec(() -> {
			try {
				action.run();
			} catch (Throwable e) {
				problem.set(e);
			} finally {
				done.set(true);
			}
		});
		Look look = new Look(window, done);
		long end = System.nanoTime() + PATIENCE.toNanos();
		int answers = 0;
		for (int looks = 1; !look.isOver(); looks++) {
			if (System.nanoTime() > end) {
				fail("it does not come to an end: " + look.seen + "; " + look.focus);
			}
			if (look.others.get() && looks % LOOKS == 0) {
				pressEscape();
			} else if (!look.others.get() && looks % SELDOM == 0) {
				// a thread that is merely busy is about to show a dialog, which would be gone before anybody has seen it
				if (look.answers.get() > answers || isAtTheDesktop()) {
					pressEscape();
				}
				answers = look.answers.get();
			}
			Ui.pause();
		}
		if (problem.get() != null) {
			throw new AssertionError(problem.get().toString(), problem.get());
		}
		return List.copyOf(look.seen);
	}

	/** Whether a dialog of the desktop has the user interface thread. */
	private static boolean isAtTheDesktop() {
		return Arrays.stream(Display.getDefault().getThread().getStackTrace())
				.anyMatch(frame -> frame.getMethodName().matches("gtk_(native_)?dialog_run"));
	}

	/** Looks at the screen without waiting: a dialog of the desktop keeps the user interface thread until it is left. */
	private static final class Look {

		private final Shell window;
		private final AtomicBoolean done;
		private final AtomicBoolean asked = new AtomicBoolean();
		private final AtomicBoolean alone = new AtomicBoolean();
		private final AtomicBoolean others = new AtomicBoolean();
		private final AtomicInteger answers = new AtomicInteger();
		/** Who hears keys, and whether it may. */
		private volatile String focus = "";
		private final Set<String> seen = Collections.synchronizedSet(new LinkedHashSet<>());

		Look(Shell window, AtomicBoolean done) {
			this.window = window;
			this.done = done;
		}

		boolean isOver() {
			boolean over = alone.getAndSet(false);
			if (!over && asked.compareAndSet(false, true)) {
				Display.getDefault().asyncExec(this::look);
			}
			return over;
		}

		private void look() {
			boolean some = false;
			for (Shell shell : Display.getCurrent().getShells()) {
				if (shell != window && shell.isVisible() && !shell.getText().isEmpty()
						&& (shell.getStyle() & SWT.TOOL) == 0) {
					some = true;
					if (seen.add(words(shell))) {
						ScreenReader.ask(shell);
					}
				}
			}
			Shell active = Display.getCurrent().getActiveShell();
			focus = "active: "
					+ (active == null ? "no window"
							: active.getText() + (active.isEnabled() ? "" : ", which takes no input"))
					+ ", focus: " + Display.getCurrent().getFocusControl();
			others.set(some);
			alone.set(!some && done.get());
			answers.incrementAndGet();
			asked.set(false);
		}
	}

	private static String words(Shell shell) {
		StringBuilder words = new StringBuilder(shell.getText());
		collect(shell, words);
		return words.toString();
	}

	private static void collect(Composite composite, StringBuilder words) {
		for (Control child : composite.getChildren()) {
			if (child instanceof Label label && !label.getText().isBlank()) {
				words.append(" | ").append(label.getText());
			} else if (child instanceof Composite below) {
				collect(below, words);
			}
		}
	}

	/** To whichever window has the focus: the program does not see what a dialog of the desktop hears. */
	private static void pressEscape() {
		try {
			Process process = new ProcessBuilder("xdotool", "key", "Escape").redirectErrorStream(true).start();
			String said = new String(process.getInputStream().readAllBytes());
			assertEquals(0, process.waitFor(), said);
		} catch (IOException e) {
			throw new AssertionError("xdotool is needed", e);
		} catch (InterruptedException e) {
			throw new AssertionError(e);
		}
	}
}
