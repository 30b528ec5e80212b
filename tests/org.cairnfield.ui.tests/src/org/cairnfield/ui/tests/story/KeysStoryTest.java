package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What the buttons do is done by keys, from wherever the person is. */
@ExtendWith(PictureOnFailure.class)
@Order(13)
class KeysStoryTest {

	@TempDir
	static Path folder;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void mendsAndChecksWithoutTheMouse() throws Exception {
		Stage.open(Demo.copy(folder.resolve("by-keys")));
		ArchiveSession session = Stage.session();
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.show("org.cairnfield.ui.findings");
		Stage.waitUntilChecked();
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Hand.activate(Stage.window());
		Hand.click(findings,
				() -> findings.getItem(0).getExpanded() ? findings.getItem(0).getItem(0) : findings.getItem(0));
		Stage.show("org.cairnfield.ui.samples");
		Hand.press("ctrl+r");
		Ui.waitUntil("the remedy is applied", session::isModified);
		Hand.press("ctrl+z");
		Ui.waitUntil("and taken back", () -> !session.isModified());
		Hand.press("ctrl+g");
		Ui.waitUntil("the gates are checked",
				() -> Widgets.isThere("gates.table", Table.class, table -> table.getItemCount() > 5));
		Hand.press("ctrl+shift+g");
		CLabel line = Widgets.find(CLabel.class, "the status line",
				label -> label.getText().contains("cannot be done now"));
		assertTrue(List.of(Ui.ask(line::getText).split("'")).contains("Sign"), () -> "nothing is prepared: " + line);
	}
}
