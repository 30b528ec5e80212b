package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Whose name the work carries stands in the window, and one click changes it. */
@ExtendWith(PictureOnFailure.class)
@Order(20)
class PersonStoryTest {

	private String before;

	@BeforeEach
	void remember() {
		before = Ui.ask(() -> Preferences.get(Preferences.PERSON, ""));
		Ui.run(() -> Preferences.put(Preferences.PERSON, "A. Steward"));
	}

	@AfterEach
	void becomeOneselfAgain() {
		Ui.run(() -> Preferences.put(Preferences.PERSON, before));
	}

	@Test
	void theWindowNamesThePersonAndOneClickChangesIt() throws Exception {
		Link shown = Widgets.byId(Link.class, "status.person");
		Ui.waitUntil("the window names the person", () -> shown.getText().contains("A. Steward"));
		PictureOnFailure.take("person");
		Hand.activate(Stage.window());
		Hand.click(shown);
		Shell preferences = Widgets.shell("Preferences");
		Text name = Widgets.byId(Text.class, "person.name");
		assertEquals("A. Steward", Ui.ask(name::getText));
		Hand.fill(name, "T. Lead & Sons");
		Hand.click(Widgets.button("Apply and Close"));
		Ui.waitUntil("the dialog is gone", preferences::isDisposed);
		Ui.waitUntil("the window names the next person", () -> shown.getText().contains("T. Lead && Sons"));
	}
}
