package org.cairnfield.ui.internal.exchange;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.ui.internal.open.Opening;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.work.Work;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

/** Copies an archive from a remote and opens it in place of the one on show. */
public final class RemoteCopy {

	private RemoteCopy() {
	}

	/** Asks where from and where to. */
	public static void ask(Shell shell) {
		ask(shell, null, "");
	}

	private static void ask(Shell shell, CopyDialog.Wish before, String problem) {
		CopyDialog.Wish wish = new CopyDialog(shell, before, problem).wish();
		if (wish != null) {
			Work.start(NLS.bind(Messages.RemoteCopy_copying, wish.url()),
					workers -> new ArchiveStore().copy(wish.url(), wish.folder(), workers.progress()), Opening::open,
					failure -> ask(shell.isDisposed() ? null : shell, wish, Problems.text(failure)));
		}
	}
}
