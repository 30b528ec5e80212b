package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.cairnfield.archive.Draft;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.History;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.ui.internal.draft.DraftKeeper;
import org.cairnfield.ui.internal.intake.IntakeWizard;
import org.cairnfield.ui.internal.open.Opening;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.WorkbenchException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;

/** Where the stories happen: the one workbench that all of them use, one after the other. */
public final class Stage {

	private Stage() {
	}

	/** The archive on show; waits for it. */
	public static ArchiveSession session() {
		Ui.waitUntil("an archive is on show", () -> Sessions.workbench().current().isPresent());
		return Ui.ask(() -> Sessions.workbench().current().get());
	}

	/** Waits until the rules have looked at the last change. */
	public static void waitUntilChecked() {
		ArchiveSession session = session();
		Ui.waitUntilIdle();
		Ui.waitUntil("the rules have looked",
				() -> session.findings().last().isPresent() && !session.findings().isChecking());
	}

	/** Open findings that are errors. */
	public static long errors() {
		return Ui.ask(() -> session().findings().count(Severity.ERROR));
	}

	public static Shell window() {
		return Ui.ask(() -> PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell());
	}

	/** Brings a view up. */
	public static void show(String id) {
		Ui.run(() -> {
			try {
				page().showView(id);
			} catch (PartInitException e) {
				throw new AssertionError(e);
			}
		});
		Ui.waitUntilIdle();
	}

	/** Shows a perspective. */
	public static void perspective(String id) {
		Ui.run(() -> {
			try {
				if (page().getPerspective() != null && page().getPerspective().getId().equals(id)) {
					return;
				}
				PlatformUI.getWorkbench().showPerspective(id, PlatformUI.getWorkbench().getWorkbenchWindows()[0]);
			} catch (WorkbenchException e) {
				throw new AssertionError(id, e);
			}
		});
		Ui.waitUntilIdle();
	}

	/** The part behind a view, which is brought up. */
	public static IViewPart view(String id) {
		show(id);
		return Ui.ask(() -> page().findView(id));
	}

	/** Exchanges with others, and waits until the strip says what came of it. @param outcome how that begins */
	public static void exchange(String outcome) {
		Ui.run(() -> Notices.workbench().remove("exchanged"));
		Ui.waitUntil("it can be exchanged", () -> canRun("org.cairnfield.ui.exchange"));
		command("org.cairnfield.ui.exchange");
		Ui.waitUntil("the strip says: " + outcome,
				() -> Widgets.isThere("notice.exchanged", Link.class, link -> link.getText().startsWith(outcome)));
		assertFalse(Ui.ask(() -> session().isModified()), "what was unsaved is a save point");
	}

	/** Runs a command, as its menu item does. */
	public static void command(String id) {
		Ui.run(() -> commandHere(id));
		Ui.waitUntilIdle();
	}

	/** Whether a command can be run now. */
	public static boolean canRun(String id) {
		return Ui.ask(() -> PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(id).isEnabled());
	}

	/** The same on the user interface thread, for commands that end only when a person has answered. */
	public static void commandHere(String id) {
		try {
			PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(id, null);
		} catch (CommandException e) {
			throw new AssertionError(id, e);
		}
	}

	/** Tells what a drag on the plan does. */
	public static void mode(String mode) {
		Ui.run(() -> {
			Command command = PlatformUI.getWorkbench().getService(ICommandService.class)
					.getCommand("org.cairnfield.ui.plan.mode");
			try {
				PlatformUI.getWorkbench().getService(IHandlerService.class)
						.executeCommand(ParameterizedCommand.generateCommand(command,
								Map.of("org.eclipse.ui.commands.radioStateParameter", mode)), null);
			} catch (CommandException e) {
				throw new AssertionError(mode, e);
			}
		});
		Ui.waitUntilIdle();
	}

	/** Drops files onto the workbench. */
	public static void takeIn(List<Path> files) {
		Ui.later(() -> IntakeWizard.open(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), files));
	}

	/** Leaves the archive on show in one way or another; what a story has left unsaved is thrown away. */
	private static void leave(Runnable way) {
		boolean unsaved = Ui.ask(() -> Sessions.workbench().present().filter(ArchiveSession::isModified).isPresent());
		Ui.later(way);
		if (unsaved) {
			Shell question = Widgets.shell("Unsaved changes");
			Hand.click(Widgets.button("Don't save"));
			Ui.waitUntil("the question is gone", question::isDisposed);
		}
		Ui.run(() -> {
		}); // the way has begun
	}

	/** Opens an archive in place of the one on show, as the start page does; of that, unsaved changes are taken back. */
	public static void open(Path folder) {
		takeBackChanges();
		leave(() -> Opening.open(folder));
		Ui.waitUntil("it is on show",
				() -> Sessions.workbench().current().filter(s -> s.folder().equals(folder)).isPresent());
		Ui.waitUntilIdle();
	}

	/** Opens the demo in place of the one on show, as the first start does; of that, unsaved changes are taken back. */
	public static void openDemo() {
		takeBackChanges();
		leave(Opening::openDemo);
		Ui.waitUntil("the demo is on show",
				() -> Sessions.workbench().current().filter(s -> s.folder().equals(Opening.demoFolder())).isPresent());
		Ui.waitUntilIdle();
	}

	/** Undoes what was not saved, so that nothing is asked when the archive is left. */
	static void takeBackChanges() {
		Ui.run(() -> Sessions.workbench().current().ifPresent(session -> {
			while (session.isModified() && session.commands().canUndo()) {
				session.commands().undo();
			}
		}));
		Ui.waitUntilIdle();
	}

	/** Begins with the demo, which stays as it is where it is on show already, and the perspective of the steward. */
	static void beginWithTheDemo() {
		if (Ui.ask(
				() -> Sessions.workbench().current().filter(s -> s.folder().equals(Opening.demoFolder())).isEmpty())) {
			openDemo();
		}
		perspective("org.cairnfield.ui.curate");
	}

	/** Makes an empty archive, as the command does once the person has chosen a folder in the dialog of the desktop. */
	public static void create(Path folder) {
		leave(() -> Opening.create(folder, folder.getFileName().toString()));
		Ui.waitUntil("the new archive is on show",
				() -> Sessions.workbench().current().filter(s -> s.folder().equals(folder)).isPresent());
		Ui.waitUntilIdle();
	}

	/** Closes the archive on show. */
	public static void close() {
		leave(Opening::closeCurrent);
		Ui.waitUntil("none is on show", () -> Sessions.workbench().current().isEmpty());
		Ui.waitUntilIdle();
	}

	/** Where drafts are kept. */
	public static Path drafts() {
		return Ui.ask(DraftKeeper::folder);
	}

	/** How many drafts of an archive there are; each names its folder. */
	static long draftsOf(Path archive) {
		try (Stream<Path> files = Files.list(Files.createDirectories(DraftKeeper.folder()))) {
			List<Path> whole = files.filter(file -> file.toString().endsWith(".draft")).toList();
			long count = 0;
			for (Path file : whole) {
				count += new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
						.contains("archive\t" + archive + "\n") ? 1 : 0;
			}
			return count;
		} catch (NoSuchFileException e) {
			return -1; // deleted while it was looked at
		} catch (IOException e) {
			throw new AssertionError(e);
		}
	}

	/** Who made the last save point; it comes a moment after what it holds is saved. */
	static String lastInHistory() {
		try (History history = Sessions.workbench().current().get().open().history()) {
			return history.last().person();
		} catch (IOException e) {
			return e.toString(); // being written
		}
	}

	/** What the one draft of an archive would change. */
	static String drafted(OpenArchive archive) {
		try {
			List<Draft> drafts = archive.drafts().all(DraftKeeper.folder());
			return drafts.size() == 1 ? String.join(", ", archive.drafts().difference(drafts.get(0)).summary())
					: drafts.toString();
		} catch (IOException e) {
			return e.toString(); // being written
		}
	}

	/** Saves through the command of the platform. */
	public static void save() {
		Hand.activate(window());
		Hand.press("ctrl+s");
		Ui.waitUntil("all is saved", () -> !Sessions.workbench().current().get().isModified());
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
	}
}
