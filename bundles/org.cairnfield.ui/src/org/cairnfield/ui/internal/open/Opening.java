package org.cairnfield.ui.internal.open;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.fault.LockedException;
import org.cairnfield.curation.demo.DemoArchive;
import org.cairnfield.ui.internal.draft.Drafts;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.work.Work;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

/** Opens archives into the workbench and closes them. */
public final class Opening {

	private static final ArchiveStore STORE = new ArchiveStore();

	private Opening() {
	}

	/**
	 * Opens the archive that was asked for, or else the last one, or else the demo; what was closed stays closed.
	 *
	 * @return whether one is on its way
	 */
	public static boolean atStart(Optional<Path> wanted) {
		Optional<Path> folder = wanted.or(RecentArchives::lastOpen);
		if (folder.isPresent()) {
			open(folder.get());
		} else if (RecentArchives.isFirstStart()) {
			openDemo();
		} else {
			return false;
		}
		return true;
	}

	/** What to do where no archive is open. */
	public static void showStartPage() {
		StartPage.show();
	}

	/** Opens an archive in place of the one on show. */
	public static void open(Path folder) {
		show("Opening " + folder.getFileName(), folder, workers -> open(folder, Mode.EDIT));
	}

	/** Opens the demo; makes it where it is not there yet. */
	public static void openDemo() {
		Path folder = demoFolder();
		boolean made = Files.exists(folder.resolve("archive.xmi"));
		show(made ? "Opening the demo" : "Making the demo archive", folder, workers -> made ? open(folder, Mode.EDIT)
				: ArchiveSession.of(DemoArchive.create(STORE, folder, workers)));
	}

	/** Where the demo is kept. */
	public static Path demoFolder() {
		return Path.of(System.getProperty("user.home"), "Cairnfield", "marrow-quay");
	}

	/** Makes an empty archive and opens it. */
	public static void create(Path folder, String name) {
		show("Making " + name, folder, workers -> ArchiveSession.of(STORE.create(folder, name)));
	}

	private static ArchiveSession open(Path folder, Mode mode) throws IOException {
		try {
			return ArchiveSession.of(STORE.open(folder, mode));
		} catch (LockedException e) {
			return ArchiveSession.readOnly(STORE.open(folder, Mode.READ), e.getMessage());
		}
	}

	private static void show(String name, Path folder, Work.Task<ArchiveSession> opening) {
		leaveFor(folder);
		Work.start(name, opening, session -> {
			RecentArchives.opened(folder);
			Sessions.workbench().show(session);
			StartPage.hide();
		}, problem -> {
			Problems.show(name, problem);
			StartPage.show();
		});
	}

	/** An archive that is opened again must first give its lock back. */
	private static void leaveFor(Path folder) {
		Sessions.workbench().current().filter(session -> session.folder().equals(folder.toAbsolutePath().normalize()))
				.ifPresent(session -> {
					Sessions.workbench().show(null);
					close(session);
				});
	}

	/** Shows no archive, and gives the lock of the last back. */
	public static void closeCurrent() {
		Sessions.workbench().current().ifPresent(session -> {
			Sessions.workbench().show(null);
			close(session);
			RecentArchives.closed();
			StartPage.show();
		});
	}

	/** Gives the lock back. */
	public static void close(ArchiveSession session) {
		try {
			session.open().close();
		} catch (IOException e) {
			Problems.log("The lock of " + session.folder() + " could not be given back", e);
		}
	}

	/** Asks where there is unsaved work. False: the person wants to stay. */
	public static boolean mayLeave(Shell shell) {
		Sessions.workbench().backToPresent();
		Optional<ArchiveSession> session = Sessions.workbench().current().filter(ArchiveSession::isModified);
		if (session.isEmpty()) {
			return true;
		}
		int answer = MessageDialog.open(MessageDialog.QUESTION_WITH_CANCEL, shell, "Unsaved changes",
				"There are changes that were not saved.", 0, "Save", "Do not save", "Cancel");
		if (answer == 1) {
			Drafts.forget(session.get());
		}
		return answer == 0 ? Saving.save(session.get()) : answer == 1;
	}
}
