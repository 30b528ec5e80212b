package org.cairnfield.ui.internal.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.work.Work;

/** Which remote the archive on show is connected to; known a moment after it is shown. For the user interface thread only. */
public final class Connection implements SessionListener {

	private static final Connection WORKBENCH = new Connection();

	private final List<ConnectionListener> listeners = new ArrayList<>();
	private ArchiveSession session;
	private RemoteUrl remote;
	private String problem;

	private Connection() {
		Sessions.workbench().add(this);
	}

	/** That of the archive on show. */
	public static Connection workbench() {
		return WORKBENCH;
	}

	/** Where the archive is exchanged; empty where it is connected to no remote. */
	public Optional<RemoteUrl> remote() {
		return Optional.ofNullable(remote);
	}

	/** Why there can be no exchange now, for a person; empty if there can. */
	public Optional<String> obstacle() {
		if (session == null) {
			return Optional.of(Messages.Connection_noArchiveIsOpen);
		} else if (session.past().isPresent()) {
			return Optional.of(Messages.Connection_goBackToThePresent);
		} else if (!session.open().damages().isEmpty()) {
			return Optional.of(Messages.Connection_theArchiveIsDamaged);
		} else if (session.readOnlyReason().isPresent()) {
			return Optional.of(Messages.Connection_theArchiveIsReadOnly);
		} else if (problem != null) {
			return Optional.of(problem);
		}
		return remote == null ? Optional.of(Messages.Connection_connectTheArchiveFirst) : Optional.empty();
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		remote = null;
		problem = null;
		tell();
		if (now != null) {
			lookAgain();
		}
	}

	/** The archive was exchanged, and is on show as before. */
	void exchanged() {
		List.copyOf(listeners).forEach(ConnectionListener::exchanged);
	}

	/** The archive was connected. */
	void lookAgain() {
		ArchiveSession of = session;
		Work.start(Messages.Connection_lookingUpTheRemote, workers -> of.open().exchange().remote(), found -> {
			if (of == session) {
				remote = found.orElse(null);
				problem = null;
				tell();
			}
		}, e -> {
			if (of == session) {
				problem = Problems.text(e);
				tell();
			}
		});
	}

	public void add(ConnectionListener listener) {
		listeners.add(listener);
	}

	public void remove(ConnectionListener listener) {
		listeners.remove(listener);
	}

	private void tell() {
		List.copyOf(listeners).forEach(ConnectionListener::connectionChanged);
	}
}
