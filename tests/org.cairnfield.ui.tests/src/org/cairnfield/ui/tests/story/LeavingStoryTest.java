package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.ui.internal.open.Opening;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Every way out of an archive asks about unsaved work, once, and gives the archive back. */
@ExtendWith(PictureOnFailure.class)
@Order(20)
class LeavingStoryTest {

	@TempDir
	static Path all;
	private static int archives;

	private Path folder;
	private Path archive;

	@BeforeEach
	void openOneOfItsOwn() throws Exception {
		folder = Files.createDirectory(all.resolve("story-" + ++archives));
		archive = Demo.copy(folder.resolve("museums"));
		Stage.open(archive);
	}

	@AfterAll
	static void goBackToTheDemo() {
		Stage.openDemo();
	}

	private static void setOneAside() {
		ArchiveSession session = Stage.session();
		Ui.run(() -> session.run(SetSampleStateCommand.setAside(
				List.of(new SampleRef(session.archive().getSites().get(0).getSurveys().get(0), 0)), "a trial")));
		assertTrue(Ui.ask(session::isModified));
	}

	/** What the archive says on disk of the sample. */
	private Optional<String> savedReason() throws Exception {
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.READ)) {
			return Optional.ofNullable(open.archive().getSites().get(0).getSurveys().get(0).table().reason(0));
		}
	}

	private static void answer(String label) {
		Shell question = Widgets.shell("Unsaved changes");
		Hand.click(Widgets.button(label));
		Ui.waitUntil("the question is gone", question::isDisposed);
		Ui.waitUntilIdle();
	}

	@Test
	void exitAsksBeforeUnsavedWorkIsLost() {
		setOneAside();
		Ui.later(() -> {
			try {
				PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("org.eclipse.ui.file.exit",
						null);
			} catch (org.eclipse.core.commands.common.CommandException e) {
				throw new AssertionError(e);
			}
		});
		answer("Cancel");
		assertFalse(Ui.ask(Stage.window()::isDisposed));
		assertTrue(Ui.ask(() -> Stage.session().isModified()), "nothing is lost");
	}

	@Test
	void aRestartAsksBeforeUnsavedWorkIsLost() {
		setOneAside();
		Ui.later(PlatformUI.getWorkbench()::restart);
		answer("Cancel");
		assertFalse(Ui.ask(Stage.window()::isDisposed));
		assertTrue(Ui.ask(() -> Stage.session().isModified()), "nothing is lost");
	}

	@Test
	void theButtonOfTheWindowAsksOnce() {
		setOneAside();
		boolean[] closed = { false };
		Ui.later(() -> {
			Stage.window().close();
			closed[0] = true;
		});
		answer("Cancel");
		Ui.waitUntil("the way out has ended", () -> closed[0]);
		assertFalse(Widgets.isOpen("Unsaved changes"));
		assertFalse(Ui.ask(Stage.window()::isDisposed));
	}

	@Test
	void anotherArchiveIsOpenedOnlyAfterTheQuestion() throws Exception {
		setOneAside();
		ArchiveSession session = Stage.session();
		Ui.later(() -> Opening.open(Opening.demoFolder())); // as the start page does
		answer("Cancel");
		assertEquals(session, Stage.session(), "the person stays");
		Ui.later(Opening::openDemo);
		answer("Save");
		Ui.waitUntil("the demo is on show",
				() -> Sessions.workbench().current().filter(s -> s.folder().equals(Opening.demoFolder())).isPresent());
		assertEquals(Optional.of("a trial"), savedReason());
	}

	@Test
	void whatIsNotToBeSavedLeavesNoDraft() throws Exception {
		setOneAside();
		Ui.waitUntil("a draft is kept", () -> Stage.draftsOf(archive) == 1);
		Ui.later(Opening::closeCurrent);
		answer("Don't save");
		Ui.waitUntil("no archive is on show", () -> Sessions.workbench().current().isEmpty());
		assertEquals(Optional.empty(), savedReason());
		assertEquals(0, Stage.draftsOf(archive));
	}

	@Test
	void anArchiveThatWasLeftCanBeOpenedAgain() throws Exception {
		Stage.openDemo();
		Stage.open(archive);
		assertEquals(Optional.empty(), Ui.ask(() -> Stage.session().readOnlyReason()));
		Path link = Files.createSymbolicLink(folder.resolve("link"), archive);
		Ui.later(() -> Opening.open(link));
		Ui.run(() -> {
		});
		ArchiveSession session = Stage.session();
		assertNotNull(session);
		assertEquals(Optional.empty(), Ui.ask(session::readOnlyReason), "by another name too");
	}

	@Test
	void aHistoryThatIsDueIsPackedWhileTheWindowAnswers() throws Exception {
		setOneAside();
		Stage.save();
		Path earlier = Files.createDirectory(folder.resolve("earlier"));
		StringBuilder names = new StringBuilder();
		for (int i = 0; i <= 1000; i++) {
			names.append(Files.writeString(earlier.resolve("state " + i), "earlier state " + i)).append('\n');
		}
		Process git = new ProcessBuilder("git", "hash-object", "-w", "--stdin-paths").directory(archive.toFile())
				.redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
		try (OutputStream paths = git.getOutputStream()) {
			paths.write(names.toString().getBytes(StandardCharsets.UTF_8));
		}
		assertEquals(0, git.waitFor());
		boolean[] answers = { false };
		Ui.later(Opening::closeCurrent);
		Ui.later(() -> answers[0] = Saving.isBusy());
		Ui.waitUntil("no archive is on show", () -> Sessions.workbench().current().isEmpty() && !Saving.isBusy());
		assertTrue(answers[0], "the window answers while it is packed");
		try (Stream<Path> packs = Files.list(archive.resolve(".git/objects/pack"))) {
			assertTrue(packs.anyMatch(file -> file.toString().endsWith(".pack")));
		}
		new ArchiveStore().open(archive, Mode.EDIT).close();
		Stage.open(archive);
		assertEquals(Optional.empty(), Ui.ask(() -> Stage.session().readOnlyReason()));
		assertEquals(Optional.of("a trial"), savedReason());
	}

	@Test
	void whatCannotBeOpenedLeadsBackToTheArchiveBefore() {
		Ui.later(() -> Opening.open(folder.resolve("nothing-here")));
		Shell problem = Widgets.shell("Opening nothing-here");
		Hand.click(Widgets.button("OK"));
		Ui.waitUntil("the message is gone", problem::isDisposed);
		Ui.waitUntil("the archive is on show again",
				() -> Sessions.workbench().current().filter(s -> s.folder().equals(archive)).isPresent());
		assertEquals(Optional.empty(), Ui.ask(() -> Stage.session().readOnlyReason()));
	}
}
