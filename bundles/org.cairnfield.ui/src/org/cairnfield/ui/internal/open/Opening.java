package org.cairnfield.ui.internal.open;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.fault.LockedException;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.demo.DemoArchive;
import org.cairnfield.ui.internal.draft.Recovery;
import org.cairnfield.ui.internal.notice.DamageDialog;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.DialogParent;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.jobs.IJobChangeListener;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;

/** Opens archives into the workbench and closes them. */
public final class Opening {

	private static final ArchiveStore STORE = new ArchiveStore();

	/** The last opening, perhaps still at it. */
	private static Job running;

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
	public static void open(Path named) {
		Path folder = real(named);
		show(NLS.bind(Messages.Opening_opening, folder.getFileName()), folder, workers -> open(folder, Mode.EDIT));
	}

	/** An archive has one name, whatever links lead to it. */
	private static Path real(Path folder) {
		try {
			return folder.toRealPath();
		} catch (IOException e) {
			return folder.toAbsolutePath().normalize(); // opening it tells what is wrong
		}
	}

	/** Opens the demo; makes it where it is not there yet. */
	public static void openDemo() {
		Path folder = demoFolder();
		boolean made = Files.exists(folder.resolve("archive.xmi"));
		show(made ? Messages.Opening_openingTheDemo : Messages.Opening_makingTheDemoArchive, folder,
				workers -> made ? open(folder, Mode.EDIT)
						: ArchiveSession.of(DemoArchive.create(STORE, folder, workers)));
	}

	/** Where the demo is kept. */
	public static Path demoFolder() {
		return Path.of(System.getProperty("user.home"), "Cairnfield", "marrow-quay");
	}

	/** Makes an empty archive and opens it. */
	public static void create(Path folder, String name) {
		show(NLS.bind(Messages.Opening_making, name), folder, workers -> ArchiveSession.of(STORE.create(folder, name)));
	}

	private static ArchiveSession open(Path folder, Mode mode) throws IOException {
		try {
			return ArchiveSession.of(STORE.open(folder, mode));
		} catch (LockedException e) {
			return ArchiveSession.readOnly(STORE.open(folder, Mode.READ), e.getMessage());
		}
	}

	/** Opens an archive in place of the one on show, unless the person wants to stay there; where that fails, goes back to it. */
	private static void show(String name, Path folder, Work.Task<ArchiveSession> opening) {
		if (running != null && running.getState() != Job.NONE || !Leaving.mayLeave(shell())) {
			return;
		}
		Optional<Path> former = Sessions.workbench().present().map(ArchiveSession::folder)
				.filter(other -> !other.equals(folder));
		Leaving.leave();
		running = Work.start(name, workers -> Recovery.look(unlessCancelled(opening.run(workers), workers)),
				session -> {
					running = null;
					if (session.open().damages().isEmpty()) {
						present(folder, session);
					} else {
						WindowReady.run(() -> askWhetherToPresent(folder, session, former));
					}
				}, problem -> {
					running = null;
					Problems.show(name, problem);
					former.ifPresentOrElse(Opening::open, StartPage::show);
				});
		running.addJobChangeListener(IJobChangeListener.onDone(event -> {
			if (event.getResult().matches(IStatus.CANCEL)) {
				Display.getDefault().asyncExec(() -> former.ifPresentOrElse(Opening::open, StartPage::show));
			}
		}));
	}

	private static void present(Path folder, ArchiveSession session) {
		RecentArchives.opened(folder);
		Sessions.workbench().show(session);
		StartPage.hide();
		focus();
		WindowReady.run(() -> Recovery.offer(session));
	}

	/** Of a damaged archive part is missing, which nobody should take for the whole. */
	private static void askWhetherToPresent(Path folder, ArchiveSession session, Optional<Path> former) {
		if (DamageDialog.isToBeOpened(shell(), session.open().damages())) {
			present(folder, session);
			return;
		}
		try {
			session.open().close();
		} catch (IOException e) {
			Problems.log(NLS.bind(Messages.Opening_theLockOfCouldNot, folder), e);
		}
		former.ifPresentOrElse(Opening::open, StartPage::show);
	}

	/** An archive that nobody waits for any more gives its lock back. */
	private static ArchiveSession unlessCancelled(ArchiveSession session, Workers workers) throws IOException {
		try {
			workers.checkCancelled();
			return session;
		} catch (CancellationException e) {
			session.open().close();
			throw e;
		}
	}

	/** What had the focus may be greyed out while no archive is there; without a focus no key would reach a command. */
	private static void focus() {
		if (shell() != null && shell().getDisplay().getFocusControl() == null) {
			IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
			if (page != null && page.getActivePart() != null) {
				page.getActivePart().setFocus();
			}
		}
	}

	/** Shows no archive, unless the person wants to stay. */
	public static void closeCurrent() {
		if (Sessions.workbench().present().isPresent() && Leaving.mayLeave(shell())) {
			Leaving.leave();
			RecentArchives.closed();
			StartPage.show();
		}
	}

	private static Shell shell() {
		if (!PlatformUI.isWorkbenchRunning() || PlatformUI.getWorkbench().getWorkbenchWindowCount() == 0) {
			return null; // the first archive, which is opened beside the making of the window
		}
		return DialogParent.shell();
	}
}
