package org.cairnfield.ui.internal.exchange;

import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.remote.RemoteUrl;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks which remote to copy an archive from, and where to. */
final class CopyDialog extends RemoteDialog {

	/** What was entered. */
	record Wish(RemoteUrl url, Path folder) {
	}

	private final Wish before;
	private final String problem;
	private Text url;
	private Text folder;
	private String proposed = "";
	private Wish wish;

	/** @param before what was entered at the last try, or null; @param problem what came of it, or empty */
	CopyDialog(Shell parent, Wish before, String problem) {
		super(parent, Messages.CopyDialog_copyAnArchiveFromA, "copy", Messages.CopyDialog_copyAndOpen);
		this.before = before;
		this.problem = problem;
	}

	/** What was entered; null where the person has changed their mind. */
	Wish wish() {
		return open() == OK ? wish : null;
	}

	@Override
	void createFields(Composite page) {
		url = field(page, Messages.CopyDialog_remoteFolderOrUrl, "url", Messages.CopyDialog_browse);
		url.setMessage(Messages.CopyDialog_aSharedFolderOrSsh);
		folder = field(page, Messages.CopyDialog_intoTheFolder, "folder", Messages.CopyDialog_browse2);
		url.addListener(SWT.Modify, event -> propose());
		if (before != null) {
			url.setText(before.url().text());
			folder.setText(before.folder().toString());
		}
	}

	/** A folder called like the remote, as long as none was entered. */
	private void propose() {
		if (folder.getText().equals(proposed)) {
			String name = url.getText().strip().replaceFirst("[/\\\\]+$", "").replaceFirst(".*[/\\\\:]", "")
					.replaceFirst("\\.git$", "");
			proposed = name.isEmpty() ? ""
					: Path.of(System.getProperty("user.home"), "Cairnfield") + File.separator + name;
			folder.setText(proposed);
		}
	}

	@Override
	String advice() {
		return Messages.CopyDialog_theFolderAppearsWhenThe;
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		explain(problem);
		return contents;
	}

	@Override
	boolean isFilled() {
		return !url.getText().isBlank() && folder != null && !folder.getText().isBlank();
	}

	@Override
	void check() throws ArchiveException {
		entered();
	}

	@Override
	void perform() throws ArchiveException {
		wish = entered();
	}

	private Wish entered() throws ArchiveException {
		try {
			return new Wish(RemoteUrl.parse(url.getText()), Path.of(folder.getText().strip()).toAbsolutePath());
		} catch (InvalidPathException e) {
			throw new ArchiveException(NLS.bind(Messages.CopyDialog_cannotBeAFolder, folder.getText()),
					Messages.CopyDialog_nameAnotherOne, e);
		}
	}
}
