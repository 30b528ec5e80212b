package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** After a crash the program offers what was unsaved, exactly that, wherever the person is, and until it is decided. */
@ExtendWith(PictureOnFailure.class)
@Order(21)
class RecoveryStoryTest {

	@TempDir
	static Path all;
	private static int archives;

	private Path archive;

	@BeforeEach
	void makeAnArchive() throws Exception {
		archive = Demo.copy(all.resolve("museums-" + ++archives));
	}

	@AfterEach
	void decideLater() {
		if (Widgets.isOpen("Unsaved work")) {
			Hand.click(Widgets.byId(Button.class, "recovery.keep"));
		}
	}

	@AfterAll
	static void goBackToTheDemo() {
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.openDemo();
	}

	/** What a session leaves that ends without a word: a draft, with samples of the first survey set aside. */
	private void crash(String person, int samples) throws Exception {
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT)) {
			Survey survey = open.archive().getSites().get(0).getSurveys().get(0);
			for (int i = 0; i < samples; i++) {
				survey.getSamples().setTable(survey.table().edit().reason(i, "before the crash").done());
			}
			assertTrue(open.drafts().write(Stage.drafts(), person));
		}
	}

	private static String reason(int sample) {
		return Ui.ask(() -> Stage.session().archive().getSites().get(0).getSurveys().get(0).table().reason(sample));
	}

	private static void setAside(int sample) {
		ArchiveSession session = Stage.session();
		Ui.run(() -> session.run(SetSampleStateCommand.setAside(
				List.of(new SampleRef(session.archive().getSites().get(0).getSurveys().get(0), sample)), "a trial")));
	}

	@Test
	void whatWasUndoneIsInNoDraft() {
		Stage.open(archive);
		setAside(5);
		Ui.waitUntil("a draft is kept", () -> Stage.draftsOf(archive) == 1);
		Hand.activate(Stage.window());
		Hand.press("ctrl+z");
		Ui.waitUntil("it is undone", () -> !Stage.session().isModified());
		assertEquals(0, Stage.draftsOf(archive));
		Hand.press("ctrl+shift+z");
		Ui.waitUntil("what is done again is kept again", () -> Stage.draftsOf(archive) == 1);
	}

	@Test
	void whatWasUndoneOfSeveralChangesIsInNoDraft() throws Exception {
		Stage.open(archive);
		setAside(5);
		setAside(6);
		Ui.waitUntil("a draft is kept", () -> Stage.draftsOf(archive) == 1);
		Ui.run(() -> Stage.session().commands().undo());
		try (OpenArchive later = new ArchiveStore().open(archive, Mode.READ)) { // reads what a start after a crash would
			Ui.waitUntil("the draft has one change only", () -> "1 sample set aside".equals(Stage.drafted(later)));
		}
	}

	@Test
	void offersInEveryPerspectiveWhatSeveralSessionsLeft() throws Exception {
		crash("A. Steward", 2);
		crash("B. Steward", 3);
		Stage.perspective("org.cairnfield.ui.release.perspective");
		Stage.open(archive);
		Shell dialog = Widgets.shell("Unsaved work");
		Table offers = Widgets.byId(Table.class, "recovery.table");
		assertEquals(2, Ui.ask(offers::getItemCount));
		assertEquals(List.of("B. Steward", "3 samples set aside"), List.of(text(offers, 0, 1), text(offers, 0, 2)));
		assertEquals(List.of("A. Steward", "2 samples set aside"), List.of(text(offers, 1, 1), text(offers, 1, 2)));
		PictureOnFailure.take("recovery");
		assertFalse(Ui.ask(() -> Widgets.isThere("notice.recovery", Link.class, any -> true)),
				"nothing is kept for later before the person decides");
		Hand.click(Widgets.byId(Button.class, "recovery.keep"));
		Ui.waitUntil("the dialog is gone", dialog::isDisposed);
		Link notice = Widgets.byId(Link.class, "notice.recovery");
		assertTrue(Ui.ask(notice::getText).startsWith("2 pieces of unsaved work"), () -> Ui.ask(notice::getText));
		PictureOnFailure.take("recovery-notice");
		assertNull(reason(0));
		setAside(9);
		Ui.waitUntil("own work is kept beside them", () -> Stage.draftsOf(archive) == 3);
		Ui.run(() -> Stage.session().commands().undo());
		Ui.waitUntil("and no more", () -> Stage.draftsOf(archive) == 2);
		follow("notice.recovery");
		Table again = Widgets.byId(Table.class, "recovery.table");
		assertEquals(2, Ui.ask(again::getItemCount));
	}

	private static String text(Table table, int row, int column) {
		return Ui.ask(() -> table.getItem(row).getText(column));
	}

	/** Follows the first link of a notice by the keyboard. */
	private static void follow(String notice) {
		Link link = Widgets.byId(Link.class, notice);
		Hand.activate(Stage.window());
		Ui.waitUntil("the notice has the focus", link::forceFocus);
		Hand.press("Return");
	}

	@Test
	void whatIsBroughtBackAndUndoneIsStillOffered() throws Exception {
		String me = Ui.ask(() -> Preferences.person().name());
		crash(me, 2);
		Stage.open(archive);
		Shell dialog = Widgets.shell("Unsaved work");
		Hand.click(Widgets.byId(Button.class, "recovery.bringBack"));
		Ui.waitUntil("the dialog is gone", dialog::isDisposed);
		Ui.waitUntil("it is back", () -> Stage.session().isModified());
		assertEquals("before the crash", reason(1));
		assertFalse(Ui.ask(() -> Widgets.isThere("notice.recovery", Link.class, any -> true)));
		Ui.waitUntil("it is kept by this session too", () -> Stage.draftsOf(archive) == 2);
		Hand.activate(Stage.window());
		Hand.press("ctrl+z");
		Ui.waitUntil("it is undone", () -> !Stage.session().isModified());
		Stage.open(archive);
		Table offers = Widgets.byId(Table.class, "recovery.table");
		assertEquals(1, Ui.ask(offers::getItemCount));
		Hand.click(Widgets.byId(Button.class, "recovery.bringBack"));
		Ui.waitUntil("it is back", () -> Stage.session().isModified());
		Stage.save();
		assertEquals(0, Stage.draftsOf(archive), "saved, it need not be kept");
	}

	@Test
	void theWorkOfAnotherPersonIsRecordedUnderThatName() throws Exception {
		crash("A. Steward", 2);
		Stage.open(archive);
		Label about = Widgets.byId(Label.class, "recovery.about");
		assertTrue(Ui.ask(about::getText).contains("A. Steward"), () -> Ui.ask(about::getText));
		Hand.click(Widgets.byId(Button.class, "recovery.bringBack"));
		Ui.waitUntil("it is recorded",
				() -> "before the crash".equals(Stage.session().archive().getSites().get(0).getSurveys()
						.get(0).table().reason(1)) && !Stage.session().isModified());
		Ui.waitUntil("under that name", () -> "A. Steward".equals(Stage.lastInHistory()));
	}

	@Test
	void isDeletedOnlyAtThePersonsWord() throws Exception {
		crash("A. Steward", 1);
		Stage.open(archive);
		Widgets.shell("Unsaved work");
		Hand.click(Widgets.byId(Button.class, "recovery.delete"));
		Widgets.shell("Delete unsaved work");
		Hand.press("Escape");
		assertEquals(1, Stage.draftsOf(archive));
		Hand.click(Widgets.byId(Button.class, "recovery.delete"));
		Shell question = Widgets.shell("Delete unsaved work");
		Hand.click(Widgets.find(Button.class, "the button Delete of the question",
				button -> button.getShell() == question && button.getText().equals("&Delete")));
		Ui.waitUntil("it is deleted", () -> Stage.draftsOf(archive) == 0);
		Ui.waitUntil("nothing is offered", () -> !Widgets.isThere("notice.recovery", Link.class, any -> true));
	}
}
