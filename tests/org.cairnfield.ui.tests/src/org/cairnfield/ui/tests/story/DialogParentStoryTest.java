package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A dialog belongs to the window also while no window is active, as just after another dialog; else Escape does not leave it. */
@ExtendWith(PictureOnFailure.class)
@Order(8)
class DialogParentStoryTest {

	@BeforeEach
	void selectASite() {
		Stage.beginWithTheDemo();
		ArchiveSession session = Stage.session();
		Ui.run(() -> session.select(session.selection().withScope(session.archive().getSites().get(0))));
		Ui.waitUntilIdle();
	}

	@Test
	void isLeftByEscapeWhateverIsActiveBefore() {
		openAndLeave("org.cairnfield.ui.review.policy", "Review policy");
		openAndLeave("org.cairnfield.ui.copyRemote", "Copy an archive from a remote");
		openAndLeave("org.cairnfield.ui.locateSite", "Place on Earth of Lantern Store");
		openAndLeave("org.cairnfield.ui.takeIn", "Take in survey files");
	}

	private static void openAndLeave(String command, String title) {
		Shell other = Ui.ask(() -> {
			Shell shell = new Shell(Display.getCurrent());
			shell.setText("elsewhere");
			shell.open();
			return shell;
		});
		Hand.activate(other);
		Ui.later(() -> {
			other.dispose();
			Stage.commandHere(command);
		});
		Shell dialog = Widgets.shell(title);
		assertEquals(Stage.window(), Ui.ask(dialog::getParent));
		Hand.activate(dialog);
		Hand.tap("Escape");
		Ui.waitUntil("it is left", dialog::isDisposed);
	}
}
