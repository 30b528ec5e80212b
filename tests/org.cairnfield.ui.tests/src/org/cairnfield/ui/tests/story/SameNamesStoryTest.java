package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Two sites have numbered their access points alike; the steward is asked, and says that each has its own. */
@ExtendWith(PictureOnFailure.class)
@Order(13)
class SameNamesStoryTest {

	private static final String SURVEY = """
			x,y,floor,building,A1,A2
			1,2,0,Boat Shed,-50,-60
			3,2,0,Boat Shed,-55,-58
			1,2,0,Net Loft,-51,-61
			3,2,0,Net Loft,-57,-59
			""";

	@TempDir
	static Path folder;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	private static boolean has(ArchiveSession session, String address) {
		return session.archive().getAccessPoints().stream()
				.anyMatch(accessPoint -> accessPoint.getAddress().equals(address));
	}

	@Test
	void isAskedWhetherEqualNamesAreOneSender() throws Exception {
		ArchiveSession session = ReviewStage.open(folder, "same-names");
		Path file = Files.writeString(folder.resolve("numbered.csv"), SURVEY);
		Hand.activate(Stage.window());
		Stage.takeIn(List.of(file));
		Shell wizard = Widgets.shell("Take in survey files");
		Hand.click(Widgets.button("Next >"));
		Hand.click(Widgets.button("Next >"));
		Label question = Widgets.byId(Label.class, "intake.sameNames");
		Ui.waitUntil("the question is asked",
				() -> question.isVisible() && question.getText().contains("Boat Shed, Net Loft"));
		Button finish = Widgets.button("Finish");
		assertFalse(Ui.ask(finish::isEnabled), "nothing is taken in without an answer");
		Hand.click(Widgets.byId(Button.class, "intake.sameNames.perSite"));
		Ui.waitUntil("it can be taken in", finish::isEnabled);
		Hand.click(finish);
		Ui.waitUntil("the wizard is closed", wizard::isDisposed);
		Ui.waitUntil("each site has its own", () -> has(session, "Boat Shed/A1") && has(session, "Net Loft/A1"));
		assertTrue(Ui.ask(() -> !has(session, "A1")));
		Stage.waitUntilChecked();
	}
}
