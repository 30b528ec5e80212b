package org.cairnfield.ui.tests.wander;

import java.util.List;

import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Ui;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Dialogs that came up, and what they ask. */
final class Dialogs {

	private static final int MOST = 8;

	private Dialogs() {
	}

	/** Answers what is asked until the workbench takes input again; dialogs that open files are left. */
	static void answerAll(Dice dice) {
		for (int i = 0; i < MOST && Sight.front() != Sight.window(); i++) {
			answer(dice);
		}
		for (int i = 0; i < MOST && Sight.front() != Sight.window(); i++) {
			Hand.activate(Sight.front());
			Hand.press("Escape");
		}
		for (int i = 0; i < MOST && Sight.front() != Sight.window(); i++) { // as by the button of its frame
			Shell front = Sight.front();
			Ui.later(() -> {
				if (!front.isDisposed()) { // it may have gone by itself
					front.close();
				}
			});
			Ui.run(() -> {
			});
			Ui.waitUntilIdle();
		}
	}

	/** One answer to the front dialog: a button, or Escape. */
	static void answer(Dice dice) {
		if (Recovering.isOffered()) {
			Recovering.accept();
			return;
		}
		Shell front = Sight.front();
		String said = words(front);
		if (said.contains("Something went wrong that should not") || said.contains("nternal error")) {
			throw new AssertionError("a dialog says: " + said);
		}
		List<Button> buttons = Sight.all(Button.class, button -> !button.getText().isEmpty() && !opensFiles(button));
		if (dice.onceIn(3) || buttons.isEmpty()) {
			Hand.activate(front);
			Hand.press("Escape");
		} else {
			Hand.click(dice.oneOf(buttons));
		}
		Ui.waitUntilIdle();
	}

	/** The desktop's own dialogs cannot be seen by the robot. */
	private static boolean opensFiles(Button button) {
		return button.getText().contains("…") || button.getText().contains("...");
	}

	/** Title and texts of a dialog. */
	static String words(Shell shell) {
		return Ui.ask(() -> {
			StringBuilder words = new StringBuilder(shell.getText());
			collect(shell, words);
			return words.toString();
		});
	}

	private static void collect(Composite composite, StringBuilder words) {
		for (Control child : composite.getChildren()) {
			String text = child instanceof Label label ? label.getText()
					: child instanceof Text field ? field.getText() : "";
			if (!text.isBlank() && child.isVisible()) {
				words.append(" | ").append(text);
			}
			if (child instanceof Composite below) {
				collect(below, words);
			}
		}
	}
}
