package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A release that a gate holds back goes all the same, by name and for a reason; then it is what it was. */
@ExtendWith(PictureOnFailure.class)
@Order(6)
class ReleaseStoryTest {

	@TempDir
	Path folder;

	@AfterEach
	void goBack() {
		Stage.beginWithTheDemo(); // the archive of the story goes with its folder
	}

	@Test
	void releasesWithAReasonAndVerifies() throws Exception {
		Path archive = folder.resolve("museums");
		Demo.copy(archive);
		Stage.open(archive);
		ArchiveSession session = Stage.session();
		String digest = Ui.ask(() -> session.open().digest());
		Stage.perspective("org.cairnfield.ui.release.perspective");
		Hand.activate(Stage.window());
		Hand.click(Widgets.byId(Button.class, "gates.ask"));
		Table gates = Widgets.byId(Table.class, "gates.table");
		Ui.waitUntil("the gates have answered", () -> gates.getItemCount() >= 7);
		Button prepare = Widgets.byId(Button.class, "gates.prepare");
		assertFalse(Ui.ask(prepare::isEnabled), "gates hold it back");
		overruleAll(gates);
		Text notes = Widgets.byId(Text.class, "gates.notes");
		Hand.fill(notes, "For the first tour");
		Hand.click(prepare);
		Hand.fill(notes, "");
		PictureOnFailure.take("gates-prepared");
		Hand.click(Widgets.byId(Button.class, "gates.discard"));
		Ui.waitUntil("what was prepared is gone", () -> !Files.exists(archive.resolve("releases/1.0.0.json")));
		assertFalse(Ui.ask(Widgets.byId(Button.class, "gates.sign")::isEnabled), "there is nothing to sign");
		assertEquals("For the first tour", Ui.ask(notes::getText), "the words are kept");
		Hand.click(prepare);
		Hand.click(Widgets.byId(Button.class, "gates.sign"));
		Table releases = Widgets.byId(Table.class, "releases.table");
		Ui.waitUntil("the release is listed", () -> releases.getItemCount() == 1);
		List<ReleasedState> made = new ReleaseBook(session.open(), Clock.systemUTC()).list();
		assertEquals("1.0.0", made.get(0).version().toString());
		assertEquals(digest, made.get(0).manifest().digest(), "it holds the content as it was");
		assertTrue(made.get(0).manifest().gates().stream()
				.anyMatch(gate -> !gate.met() && gate.reason().equals("first map, for a trial only")),
				"and the reason for ever");
		Hand.click(Widgets.byId(Button.class, "releases.verify"));
		Text about = Widgets.byId(Text.class, "releases.about");
		Ui.waitUntil("it is verified", () -> about.getText().contains("✔ ") && !about.getText().contains("✖"));
		assertTrue(Files.exists(archive.resolve("releases/1.0.0.json")));
		Hand.click(releases, 0);
		Path page = folder.resolve("report.html");
		Hand.clickWhileBusy(Widgets.byId(Button.class, "releases.report"));
		Hand.nameFile("Report", page);
		Ui.waitUntil("the report of the release is written", () -> about.getText().startsWith("The report is in "));
		String html = Files.readString(page);
		assertTrue(html.contains("1.0.0") && html.contains(digest.substring(0, 12)), "it is of the release");
	}

	/** Lets every gate through that holds the release back, for one reason. */
	static void overruleAll(Table gates) {
		Label state = Widgets.byId(Label.class, "gates.state");
		for (int row = 0; row < Ui.ask(gates::getItemCount); row++) {
			int at = row;
			if (Ui.ask(() -> gates.getItem(at).getText(3).contains("NOT"))) {
				Hand.click(gates, at);
				Hand.fill(Widgets.byId(Text.class, "gates.reason"), "first map, for a trial only");
				Hand.click(Widgets.byId(Button.class, "gates.overrule"));
			}
		}
		Ui.waitUntil("all gates are open", () -> state.getText().startsWith("All gates are met"));
	}
}
