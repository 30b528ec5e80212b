package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A steward waives a finding, finds the waiver again with reason and name, and takes it back. */
@ExtendWith(PictureOnFailure.class)
@Order(13)
class WaiverStoryTest {

	private static final String REASON = "rehung in October";

	@TempDir
	static Path folder;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void findsAWaiverAgainAndTakesItBack() throws Exception {
		ArchiveSession session = ReviewStage.open(folder, "waived");
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.show("org.cairnfield.ui.findings");
		Stage.waitUntilChecked();
		Hand.activate(Stage.window());
		int open = Ui.ask(() -> session.findings().open().size());
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Hand.click(Ui.ask(() -> findings.getItem(0).getItem(0)));
		Hand.fill(Widgets.byId(Text.class, "findings.reason"), REASON);
		Button waive = Widgets.byId(Button.class, "findings.waive");
		Hand.click(waive);
		Ui.waitUntil("it is waived",
				() -> session.findings().open().size() == open - 1 && session.findings().waivers().size() == 1);
		Stage.waitUntilChecked();
		assertEquals(1, Ui.ask(findings::getSelectionCount), "the next finding");
		assertTrue(Ui.ask(() -> findings.getSelection()[0].getParentItem() != null));
		PictureOnFailure.take("waived");

		Combo grouping = Widgets.byId(Combo.class, "findings.grouping");
		Hand.choose(grouping, "what is waived");
		Ui.waitUntil("the waiver is listed",
				() -> findings.getItemCount() == 1 && findings.getItem(0).getText().startsWith(REASON + " – "));
		Hand.click(Ui.ask(() -> findings.getItem(0)));
		Ui.waitUntil("it can be withdrawn", () -> waive.getText().contains("Withdraw") && waive.isEnabled());
		assertTrue(Ui.ask(() -> !Widgets.byId(Text.class, "findings.reason").isEnabled()));
		Hand.click(waive);
		Ui.waitUntil("it is reported again",
				() -> session.findings().open().size() == open && session.archive().getWaivers().isEmpty());
		Stage.waitUntilChecked();
		assertEquals(0, Ui.ask(findings::getItemCount));
		Hand.press("ctrl+z");
		Ui.waitUntil("the waiver is back",
				() -> session.archive().getWaivers().size() == 1 && findings.getItemCount() == 1);
		Hand.choose(grouping, "by rule");
	}
}
