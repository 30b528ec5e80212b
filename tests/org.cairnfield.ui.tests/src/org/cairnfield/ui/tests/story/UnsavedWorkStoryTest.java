package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.child.ChildWorkbench;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Nothing is lost: neither when a person closes the window in a hurry, nor when the program dies. */
@ExtendWith(PictureOnFailure.class)
@Order(3)
class UnsavedWorkStoryTest {

	@TempDir
	Path folder;

	@AfterEach
	void goBack() {
		Stage.beginWithTheDemo(); // the archive of the story goes with its folder
	}

	private static String reasonOfTheFirst(ArchiveSession session) {
		return Ui.ask(() -> session.archive().getSites().get(0).getSurveys().get(0).table().reason(0));
	}

	@Test
	void asksBeforeUnsavedWorkIsLost() {
		ArchiveSession session = Stage.session();
		Shell window = Stage.window();
		Ui.run(() -> session.run(SetSampleStateCommand.setAside(
				List.of(new SampleRef(session.archive().getSites().get(0).getSurveys().get(0), 0)), "a trial")));
		Ui.waitUntil("the title tells of unsaved changes", () -> window.getText().startsWith("*"));
		Ui.later(window::close);
		Shell question = Widgets.shell("Unsaved changes");
		Hand.click(Widgets.button("Cancel"));
		Ui.waitUntil("the question is gone", question::isDisposed);
		assertFalse(Ui.ask(window::isDisposed));
		assertEquals("a trial", reasonOfTheFirst(session));
		Hand.activate(window);
		Hand.press("ctrl+z");
		Ui.waitUntil("the title is calm again", () -> !window.getText().startsWith("*"));
	}

	@Test
	void theWayOutIsOpenWhileAFailureToSaveIsShown() {
		Ui.later(() -> Saving.whileBusy("Trying to save", () -> {
			throw new IOException("the disk is full");
		}));
		Shell problem = Widgets.shell("Trying to save");
		assertFalse(Ui.ask(Saving::isBusy));
		Hand.click(Widgets.button("OK"));
		Ui.waitUntil("the message is gone", problem::isDisposed);
	}

	@Test
	void bringsBackWhatAKilledWorkbenchHadNotSaved() throws Exception {
		Path archive = folder.resolve("doomed");
		Demo.copy(archive);
		Path home = folder.resolve("home");
		Process child = ChildWorkbench.start(home, archive, "heard through an open window");
		try {
			Ui.waitUntil("the child has kept a draft", () -> !drafts(home).isEmpty() || !child.isAlive());
			assertTrue(child.isAlive(), "the child ended by itself");
		} finally {
			child.destroyForcibly();
			assertTrue(child.waitFor(20, TimeUnit.SECONDS));
		}
		Path own = Stage.drafts();
		Files.createDirectories(own);
		for (Path draft : drafts(home)) { // a restarted workbench of the same person would find it where it is
			Files.copy(draft, own.resolve(draft.getFileName()));
		}
		Stage.open(archive);
		ArchiveSession session = Stage.session();
		assertEquals(null, reasonOfTheFirst(session), "what was not saved is not there by itself");
		Table offers = Widgets.byId(Table.class, "recovery.table");
		assertEquals("1 sample set aside", Ui.ask(() -> offers.getItem(0).getText(2)));
		PictureOnFailure.take("recovery");
		Hand.click(Widgets.byId(Button.class, "recovery.bringBack"));
		Ui.waitUntil("the change is back", () -> "heard through an open window".equals(
				session.archive().getSites().get(0).getSurveys().get(0).table().reason(0)));
		assertTrue(Ui.ask(session::isModified));
		Hand.activate(Stage.window());
		Hand.press("ctrl+z");
		Ui.waitUntil("and can be undone",
				() -> session.archive().getSites().get(0).getSurveys().get(0).table().isKept(0));
		Ui.run(() -> session.commands().redo());
		Stage.save();
		assertFalse(Ui.ask(session::isModified));
	}

	private static List<Path> drafts(Path home) {
		if (!Files.isDirectory(home)) {
			return List.of();
		}
		try (Stream<Path> all = Files.walk(home)) {
			return all.filter(file -> file.getFileName().toString().endsWith(".draft")).toList(); // whole ones only
		} catch (IOException e) {
			throw new AssertionError(e);
		}
	}
}
