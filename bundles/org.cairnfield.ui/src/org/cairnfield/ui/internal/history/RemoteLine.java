package org.cairnfield.ui.internal.history;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.cairnfield.archive.Exchanged;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.ui.internal.exchange.Connection;
import org.cairnfield.ui.internal.exchange.ConnectionListener;
import org.cairnfield.ui.internal.exchange.model.ExchangeText;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.work.Work;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Says how far the archive and its remote are apart, and looks at the remote, which changes nothing. */
final class RemoteLine implements ConnectionListener {

	private final Label text;
	private final Button look;
	private final Runnable reload;
	private final Runnable list;
	private Exchanged seen;
	private boolean looking;

	/**
	 * @param parent a row with room for a text and a button
	 * @param reload reads the history again
	 * @param list   lists it again, with what would come in
	 */
	RemoteLine(Composite parent, Runnable reload, Runnable list) {
		this.reload = reload;
		this.list = list;
		text = new Label(parent, SWT.RIGHT);
		text.setData("org.cairnfield.id", "history.remote");
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(100, SWT.DEFAULT)
				.applyTo(text);
		look = new Button(parent, SWT.PUSH);
		look.setText(Messages.RemoteLine_checkTheRemote);
		look.setData("org.cairnfield.id", "history.look");
		look.setToolTipText(Messages.RemoteLine_listsWhatWouldComeIn);
		look.addListener(SWT.Selection, event -> look());
		Connection.workbench().add(this);
		show();
	}

	/** Save points that would come in, the latest first; none before somebody has looked. */
	List<SavePoint> coming() {
		List<SavePoint> coming = new ArrayList<>(seen == null ? List.of() : seen.received());
		Collections.reverse(coming);
		return coming;
	}

	/** What an exchange would do with a save point. */
	String word(SavePoint point) {
		return seen == null ? ""
				: seen.received().contains(point) ? "incoming" : seen.sent().contains(point) ? "outgoing" : "";
	}

	@Override
	public void connectionChanged() {
		looking = false;
		forget();
	}

	@Override
	public void exchanged() {
		forget();
		reload.run();
	}

	/** What was seen holds no longer: something was recorded since. */
	void forget() {
		boolean listed = seen != null;
		seen = null;
		show();
		if (listed) {
			list.run();
		}
	}

	private void show() {
		boolean possible = Connection.workbench().obstacle().isEmpty();
		look.setEnabled(possible && !looking);
		text.setText(Connection.workbench().remote()
				.map(remote -> looking ? Messages.RemoteLine_looking
						: seen == null ? NLS.bind(Messages.RemoteLine_connectedTo, remote.text()) : apart())
				.orElse(Messages.RemoteLine_connectedToNoRemote).replace("&", "&&"));
		text.setToolTipText(Connection.workbench().remote().map(remote -> text.getText() + "\n" + remote.text())
				.orElse(Messages.RemoteLine_archiveConnectToARemote));
	}

	private String apart() {
		boolean unsaved = Sessions.workbench().current().filter(ArchiveSession::isModified).isPresent();
		return ExchangeText.apart(seen) + (unsaved ? Messages.RemoteLine_unsavedChangesAreNotCounted : "");
	}

	private void look() {
		ArchiveSession at = Sessions.workbench().current().orElseThrow();
		looking = true;
		show();
		Work.start(Messages.RemoteLine_checkingTheRemote, workers -> at.open().exchange().look(workers.progress()),
				found -> {
					if (!text.isDisposed() && looking && at == Sessions.workbench().current().orElse(null)) {
						looking = false;
						seen = found;
						show();
						list.run();
					}
				}, problem -> {
					if (!text.isDisposed()) {
						looking = false;
						show();
						Problems.show(Messages.RemoteLine_theRemoteCouldNotBe, problem);
					}
				});
	}

	void dispose() {
		Connection.workbench().remove(this);
	}
}
