package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;

import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A first day: the workbench comes up on the demo, the rules find faults, one is remedied, undone, remedied again, recorded,
 * compared, and the state before is restored. Each step begins where the one before ended.
 */
@ExtendWith(PictureOnFailure.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@Order(1)
class FirstStartStoryTest {

	private static final String AGAIN = "th-spring-again";

	@Test
	@Order(1)
	void opensTheDemoOnAFreshMachine() {
		ArchiveSession session = Stage.session();
		assertEquals("Marrow Quay Museums", Ui.ask(() -> session.archive().getName()));
		assertTrue(Files.exists(session.folder().resolve("archive.xmi")));
		Tree tree = Widgets.byId(Tree.class, "explorer.tree");
		for (String site : List.of("Sailmakers' Hall", "Tide House", "Lantern Store")) {
			Widgets.item(tree, site);
		}
	}

	@Test
	@Order(2)
	void tellsWhatTheRulesFound() {
		Stage.waitUntilChecked();
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Widgets.item(findings, "A survey taken in twice");
		Widgets.item(findings, "x and y exchanged");
		Label counts = Widgets.byId(Label.class, "findings.counts");
		assertTrue(Ui.ask(counts::getText).matches("[1-9]\\d* errors, .*"), () -> Ui.ask(counts::getText));
	}

	@Test
	@Order(3)
	void remediesUndoesAndRemediesAgain() {
		long errors = Stage.errors();
		selectDuplicate();
		Hand.click(Widgets.byId(Button.class, "findings.remedy"));
		Stage.waitUntilChecked();
		assertEquals(0, kept(AGAIN), "the duplicate survey is set aside");
		assertEquals(errors - 1, Stage.errors());
		Hand.press("ctrl+z");
		Stage.waitUntilChecked();
		assertTrue(kept(AGAIN) > 100, "undo brings it back");
		assertEquals(errors, Stage.errors());
		Hand.press("ctrl+shift+z");
		Stage.waitUntilChecked();
		assertEquals(0, kept(AGAIN), "redo sets it aside again");
	}

	private static void selectDuplicate() {
		Hand.activate(Stage.window());
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Widgets.item(findings, "A survey taken in twice");
		Hand.click(findings, () -> Widgets.find(findings, "A survey taken in twice").getItem(0));
	}

	@Test
	@Order(4)
	void recordsComparesAndRestores() {
		Stage.show("org.cairnfield.ui.history");
		Hand.fill(Widgets.byId(Text.class, "history.note"), "duplicate of the Tide House set aside");
		Hand.click(Widgets.byId(Button.class, "history.make"));
		Table points = Widgets.byId(Table.class, "history.points");
		Ui.waitUntil("the save point is listed", () -> points.getItemCount() == 2);
		assertFalse(Ui.ask(() -> Stage.session().isModified()));
		Hand.click(points, 0);
		Tree changes = Widgets.byId(Tree.class, "history.changes");
		TreeItem survey = Widgets.item(changes, "Survey " + AGAIN);
		String change = Ui.ask(survey::getText);
		assertTrue(change.contains("set aside"), change);
		Hand.click(points, 1);
		Hand.click(Widgets.byId(Button.class, "history.restore"));
		Hand.click(Widgets.find(Button.class, "the button of the question",
				button -> button.getText().equals("&Restore")));
		Ui.waitUntil("a save point of its own records the restoring", () -> points.getItemCount() == 3);
		Stage.waitUntilChecked();
		assertTrue(kept(AGAIN) > 100, "the state before is back");
	}

	private static int kept(String surveyName) {
		return Ui.ask(() -> {
			for (var site : Stage.session().archive().getSites()) {
				for (Survey survey : site.getSurveys()) {
					if (survey.getName().equals(surveyName)) {
						SampleTable table = survey.table();
						return table.keptCount();
					}
				}
			}
			throw new AssertionError("no survey " + surveyName);
		});
	}
}
