package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.testkit.OpenSets;
import org.cairnfield.ui.charts.HeatTable;
import org.cairnfield.ui.internal.open.Opening;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Batch;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A steward takes in the survey after a change of the network, reads what changed, applies what helps, and the lead releases it. */
@ExtendWith(PictureOnFailure.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@Order(14)
class TimelineStoryTest {

	private static final String SET = "twelve-surveys";

	@TempDir
	Path folder;

	@AfterEach
	void goBack() {
		Stage.beginWithTheDemo();
	}

	/** What lies beside the demo: part of the network of one building was replaced over the winter. */
	@Test
	@Order(1)
	void readsWhatTheWinterDidToTheDemo() throws Exception {
		Path archive = folder.resolve("museums");
		Demo.copy(archive);
		Stage.open(archive);
		ArchiveSession session = Stage.session();
		Stage.perspective("org.cairnfield.ui.curate");
		takeIn(List.of(Opening.demoFolder().resolveSibling("sh-next-spring.csv")), "648 samples would be taken in");
		compare("Changed by 2032-04-05: ");
		assertEquals("Sailmakers' Hall", Ui.ask(() -> Widgets.byId(Combo.class, "timeline.site").getText()),
				"the site that was surveyed most often");
		Hand.click(Widgets.byId(Button.class, "timeline.walk"));
		Label walk = Widgets.byId(Label.class, "timeline.walkMessage");
		Ui.waitUntil("the walk is planned", () -> walk.getText().startsWith("40 places, "));
		assertEquals(40, Ui.ask(() -> session.selection().marked().size()), "on the plan");
		assertTrue(Ui.ask(() -> Widgets.byId(Button.class, "timeline.saveWalk").isEnabled()));
		PictureOnFailure.take("next-walk");
		applyWhatHelps(session);
		Hand.choose(Widgets.byId(Combo.class, "timeline.site"), "Tide House");
		Hand.click(Widgets.byId(Button.class, "timeline.compare"));
		Label says = Widgets.byId(Label.class, "timeline.message");
		Ui.waitUntil("nothing has changed there", () -> says.getText().startsWith("No survey tells of a change"));
		Table remedies = Widgets.byId(Table.class, "timeline.remedies");
		assertEquals("Correct the newer device", Ui.ask(() -> remedies.getSelection()[0].getText(1)),
				"autumn's device reads 5 dB less");
	}

	@Test
	@Order(2)
	void findsOutWhyTheMapIsWrongMendsAndReleasesIt() throws Exception {
		List<Path> before = new ArrayList<>();
		for (String day : List.of("2019-11-13", "2019-12-11")) {
			before.addAll(OpenSets.files(SET, day));
		}
		List<Path> after = OpenSets.files(SET, "2020-01-15");
		Path archive = folder.resolve("floor");
		Batch.run("intake", "-q", "--map", before, "--archive", archive);
		Stage.open(archive);
		ArchiveSession session = Stage.session();
		Stage.perspective("org.cairnfield.ui.curate");
		takeIn(after, "980 samples would be taken in");
		assertEquals(1, Ui.ask(() -> session.archive().getSites().size()), "it is of the site that the archive has");
		compare("Changed by 2020-01-15: ");
		String says = Ui.ask(() -> Widgets.byId(Label.class, "timeline.message").getText());
		assertTrue(says.matches(
				"(?s).* access points gone, \\d+ new, \\d+ replaced\\. A map of the surveys before is 1\\d\\.\\d m off there .*"),
				says);
		HeatTable courses = Widgets.byId(HeatTable.class, "timeline.courses");
		assertTrue(Ui.ask(courses::itemCount) > 100);
		Hand.click(courses);
		Hand.press("Home");
		Ui.waitUntil("the access point is chosen everywhere", () -> session.selection().accessPoint() != null);
		PictureOnFailure.take("timeline");
		applyWhatHelps(session);
		Stage.save();
		release(session);
	}

	private static void takeIn(List<Path> files, String told) {
		Hand.activate(Stage.window());
		Stage.takeIn(files);
		Shell wizard = Widgets.shell("Take in survey files");
		Button next = Widgets.button("Next >");
		Ui.waitUntil("the files are read", next::isEnabled);
		Hand.click(next);
		Hand.click(Widgets.button("Next >"));
		Label outcome = Widgets.byId(Label.class, "intake.outcome");
		Ui.waitUntil("the outcome is known", () -> outcome.getText().startsWith(told));
		Hand.click(Widgets.button("Finish"));
		Ui.waitUntil("the wizard is closed", wizard::isDisposed);
		Ui.waitUntilIdle();
	}

	private static void compare(String told) {
		Stage.perspective("org.cairnfield.ui.timeline.perspective");
		Label says = Widgets.byId(Label.class, "timeline.message");
		Hand.activate(Stage.window());
		Hand.click(Widgets.byId(Button.class, "timeline.compare"));
		Ui.waitUntil("it says what changed", () -> says.getText().startsWith(told));
	}

	/** What helps most is chosen; it can be undone and done again, and is not proposed twice. */
	private static void applyWhatHelps(ArchiveSession session) {
		Label says = Widgets.byId(Label.class, "timeline.message");
		Table remedies = Widgets.byId(Table.class, "timeline.remedies");
		Label advice = Widgets.byId(Label.class, "timeline.advice");
		assertTrue(Ui.ask(advice::getText).startsWith("Helps most: "), Ui.ask(advice::getText));
		assertEquals(1, Ui.ask(remedies::getSelectionCount), "what helps most is chosen");
		Button apply = Widgets.byId(Button.class, "timeline.apply");
		Hand.click(apply);
		Ui.waitUntil("it is done", () -> says.getText().contains("compare again"));
		assertFalse(Ui.ask(apply::isEnabled), "what was measured was the map before");
		Hand.press("ctrl+z");
		Ui.waitUntil("it is undone", () -> session.commands().getRedoCommand() != null);
		Hand.press("ctrl+shift+z");
		Ui.waitUntil("it is done again", () -> session.commands().getRedoCommand() == null);
		Hand.click(Widgets.byId(Button.class, "timeline.compare"));
		Ui.waitUntil("nothing is left to do", () -> advice.getText().startsWith("Nothing helps"));
	}

	private static void release(ArchiveSession session) throws Exception {
		Stage.perspective("org.cairnfield.ui.release.perspective");
		Hand.activate(Stage.window());
		Hand.click(Widgets.byId(Button.class, "gates.ask"));
		Table gates = Widgets.byId(Table.class, "gates.table");
		Ui.waitUntil("the gates have answered", () -> gates.getItemCount() >= 7);
		ReleaseStoryTest.overruleAll(gates);
		Hand.click(Widgets.byId(Button.class, "gates.prepare"));
		Hand.click(Widgets.byId(Button.class, "gates.sign"));
		Table releases = Widgets.byId(Table.class, "releases.table");
		Ui.waitUntil("the release is listed", () -> releases.getItemCount() == 1);
		assertEquals("1.0.0", new ReleaseBook(session.open(), Clock.systemUTC()).list().get(0).version().toString());
	}
}
