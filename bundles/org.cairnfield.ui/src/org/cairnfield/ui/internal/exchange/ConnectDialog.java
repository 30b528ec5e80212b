package org.cairnfield.ui.internal.exchange;

import java.io.IOException;

import org.cairnfield.archive.Exchange;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks for the remote through which people exchange an archive, after a word of caution. */
final class ConnectDialog extends RemoteDialog {

	private final ArchiveSession session;
	private Text url;

	ConnectDialog(Shell parent, ArchiveSession session) {
		super(parent, NLS.bind(Messages.ConnectDialog_connectToARemote, ModelText.name(session.archive())), "connect",
				Messages.ConnectDialog_connect);
		this.session = session;
	}

	@Override
	void createFields(Composite page) {
		url = field(page, Messages.ConnectDialog_folderOrUrl, "url", Messages.ConnectDialog_browse);
		url.setMessage(Messages.ConnectDialog_aSharedFolderOrSsh);
		Connection.workbench().remote().ifPresent(remote -> url.setText(remote.text()));
	}

	@Override
	String advice() {
		return NLS.bind(Messages.ConnectDialog_aFolderThatDoesNot, Exchange.CAUTION);
	}

	@Override
	boolean isFilled() {
		return !url.getText().isBlank();
	}

	@Override
	void check() throws ArchiveException {
		RemoteUrl.parse(url.getText());
	}

	@Override
	void perform() throws IOException {
		session.open().exchange().connect(RemoteUrl.parse(url.getText()));
		Connection.workbench().lookAgain();
	}
}
