package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The history says who did what, can be gone back in after a question, and the way back leads forth again. */
@ExtendWith(PictureOnFailure.class)
@Order(22)
class RestoreStoryTest {

	private static final String WIDE = """
			id,time,device,building,floor,x,y,00:00:5E:00:53:70,00:00:5E:00:53:71
			BS-1,2031-11-20T09:00:00Z,Wrist guide A,Boat Shed,0,1,1,-61,-70
			BS-2,2031-11-20T09:00:05Z,Wrist guide A,Boat Shed,0,3,1,-64,-72
			BS-3,2031-11-20T09:00:10Z,Wrist guide A,Boat Shed,0,5,1,-66,-71
			""";

	@TempDir
	static Path all;
	private static int archives;

	private Path folder;
	private Path archive;
	private String person;

	@BeforeEach
	void openOneOfItsOwn() throws Exception {
		folder = Files.createDirectory(all.resolve("story-" + ++archives));
		archive = folder.resolve("museums");
		try (OpenArchive made = new ArchiveStore().open(Demo.copy(archive), Mode.EDIT)) {
			Survey survey = made.archive().getSites().get(0).getSurveys().get(0);
			survey.getSamples().setTable(survey.table().edit().reason(0, "spoilt").reason(1, "spoilt").done());
			made.savePoint(Person.named("M. Q."), null);
		}
		person = Ui.ask(() -> Preferences.get(Preferences.PERSON, ""));
		Stage.open(archive);
	}

	@AfterEach
	void becomeOneselfAgain() {
		Ui.run(() -> Preferences.put(Preferences.PERSON, person));
	}

	@AfterAll
	static void goBackToTheDemo() {
		Stage.openDemo();
	}

	private static void setAside(int sample) {
		ArchiveSession session = Stage.session();
		Ui.run(() -> session.run(SetSampleStateCommand.setAside(
				List.of(new SampleRef(session.archive().getSites().get(0).getSurveys().get(0), sample)), "a trial")));
	}

	private static boolean isKept(int sample) {
		return Ui.ask(() -> Stage.session().archive().getSites().get(0).getSurveys().get(0).table().isKept(sample));
	}

	private static List<SavePoint> points() throws Exception {
		try (var history = Stage.session().open().history()) {
			return history.list(20);
		}
	}

	@Test
	void restoringSaysWhatItDoesAndCanBeUndone() throws Exception {
		Stage.show("org.cairnfield.ui.history");
		int before = points().size();
		setAside(7);
		Table table = Widgets.byId(Table.class, "history.points");
		Ui.waitUntil("the save points are listed", () -> table.getItemCount() == before);
		Hand.activate(Stage.window());
		Hand.click(table, 1);
		Hand.click(Widgets.byId(Button.class, "history.restore"));
		Shell question = Widgets.shell("Restore save point");
		Label consequence = Widgets.find(Label.class, "the question",
				label -> label.getText().contains("2 samples set aside"));
		assertTrue(Ui.ask(consequence::getText).contains("unsaved changes"), () -> Ui.ask(consequence::getText));
		PictureOnFailure.take("restore");
		Hand.click(Widgets.button("Cancel"));
		Ui.waitUntil("the question is gone", question::isDisposed);
		assertFalse(isKept(0), "nothing was done");
		assertEquals(before, points().size());
		Hand.click(Widgets.byId(Button.class, "history.restore"));
		Widgets.shell("Restore save point");
		Hand.click(Widgets.button("Save and go on"));
		Ui.waitUntil("it says so", () -> Widgets.isThere("notice.restored", Link.class,
				link -> link.getText().startsWith("Restored save point")));
		assertTrue(isKept(0) && isKept(7), "it is as it was");
		assertEquals(before + 2, points().size(), "the unsaved change, and the restoring");
		Link notice = Widgets.byId(Link.class, "notice.restored");
		Hand.activate(Stage.window());
		Ui.waitUntil("the notice has the focus", notice::forceFocus);
		Hand.press("Return");
		Ui.waitUntil("the state before is back", () -> Widgets.isThere("notice.restored", Link.class,
				link -> link.getText().startsWith("The previous state")));
		assertFalse(isKept(0));
		assertFalse(isKept(7), "what was unsaved too");
		assertEquals(before + 3, points().size());
	}

	@Test
	void theHistoryIsListedAsFarAsItCanBeRead() throws Exception {
		List<SavePoint> before = points();
		assertTrue(before.size() > 1, before.toString());
		String oldest = before.get(before.size() - 1).id();
		Stage.close();
		Files.delete(archive.resolve(".git/objects").resolve(oldest.substring(0, 2)).resolve(oldest.substring(2)));
		Stage.open(archive);
		Stage.show("org.cairnfield.ui.history");
		Table table = Widgets.byId(Table.class, "history.points");
		Ui.waitUntil("what can be read is listed, and a line where it ends",
				() -> table.getItemCount() == before.size());
		List<String> changes = Ui.ask(() -> Arrays.stream(table.getItems()).map(row -> row.getText(3)).toList());
		assertEquals(before.get(0).summary(), changes.get(0));
		assertTrue(changes.get(changes.size() - 1).contains(oldest), changes.toString());
		Hand.activate(Stage.window());
		Hand.click(table, before.size() - 1);
		assertFalse(Ui.ask(Widgets.byId(Button.class, "history.restore")::isEnabled), "there is nothing to go back to");
		PictureOnFailure.take("history-broken");
	}

	@Test
	void anIntakeIsASavePointOfItsOwn() throws Exception {
		int before = points().size();
		setAside(7);
		Path file = Files.writeString(folder.resolve("boat-shed.csv"), WIDE);
		Hand.activate(Stage.window());
		Stage.takeIn(List.of(file));
		Shell wizard = Widgets.shell("Take in survey files");
		Hand.click(Widgets.button("Next >"));
		Widgets.byId(Table.class, "intake.place.files");
		Hand.click(Widgets.button("Next >"));
		Widgets.byId(Label.class, "intake.outcome");
		Hand.click(Widgets.button("Finish"));
		Widgets.shell("Unsaved changes");
		Hand.click(Widgets.button("Save and take in"));
		Ui.waitUntil("the wizard is closed", wizard::isDisposed);
		Ui.waitUntilIdle();
		List<SavePoint> points = points();
		assertEquals(before + 2, points.size());
		assertTrue(points.get(0).message().contains("boat-shed.csv")
				&& points.get(0).summary().contains("3 samples added"), points.get(0).message());
		assertTrue(points.get(1).summary().contains("1 sample set aside"), points.get(1).message());
		assertFalse(Ui.ask(() -> Stage.session().isModified()));
		int sites = Ui.ask(() -> Stage.session().archive().getSites().size());
		Hand.activate(Stage.window());
		Hand.press("ctrl+z");
		Ui.waitUntil("the intake is undone", () -> Stage.session().archive().getSites().size() == sites - 1);
		assertFalse(isKept(7));
		Hand.press("ctrl+shift+z");
		Ui.waitUntil("and is done again", () -> !Stage.session().isModified());
	}

	@Test
	void eachPersonIsNamedForTheirOwnWork() throws Exception {
		Ui.run(() -> Preferences.put(Preferences.PERSON, "A. Steward"));
		setAside(7);
		Stage.save();
		Ui.run(() -> Preferences.put(Preferences.PERSON, "T. Lead"));
		setAside(8);
		Stage.show("org.cairnfield.ui.history");
		Hand.activate(Stage.window());
		Hand.click(Widgets.byId(Button.class, "history.make"));
		Ui.waitUntil("it is said",
				() -> Widgets.isThere("notice.recorded", Link.class, link -> link.getText().contains("A. Steward")));
		List<SavePoint> points = points();
		assertEquals(List.of("T. Lead", "A. Steward", "M. Q."),
				points.stream().limit(3).map(SavePoint::person).toList());
		assertTrue(
				points.get(0).summary().startsWith("1 sample set aside")
						&& points.get(1).summary().startsWith("1 sample set aside"),
				points.toString());
	}

	@Test
	void unsavedWorkIsSavedUnderItsNameBeforeAnotherPersonGoesOn() throws Exception {
		Ui.run(() -> Preferences.put(Preferences.PERSON, "A. Steward"));
		setAside(7);
		Ui.later(() -> {
			PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(Stage.window(),
					"org.cairnfield.ui.person", null, null);
			dialog.open();
		});
		Hand.fill(Widgets.byId(Text.class, "person.name"), "T. Lead");
		Shell preferences = Widgets.shell("Preferences");
		Hand.click(Widgets.button("Apply and Close"));
		Widgets.shell("Unsaved changes");
		Hand.click(Widgets.button("Save as A. Steward"));
		Ui.waitUntil("the preferences are closed", preferences::isDisposed);
		assertFalse(Ui.ask(() -> Stage.session().isModified()));
		assertEquals("T. Lead", Ui.ask(() -> Preferences.person().name()));
		assertEquals("A. Steward", Ui.ask(() -> Stage.session().open().savedBy().orElse("")));
	}
}
