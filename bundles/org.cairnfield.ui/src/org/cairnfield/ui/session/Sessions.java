package org.cairnfield.ui.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Which archive the workbench shows. One at a time; a part asks here and listens here. */
public final class Sessions {

	private static final Sessions WORKBENCH = new Sessions();

	private final List<SessionListener> listeners = new ArrayList<>();
	private ArchiveSession shown;

	private Sessions() {
	}

	/** Those of the workbench. */
	public static Sessions workbench() {
		return WORKBENCH;
	}

	/** The archive on show. */
	public Optional<ArchiveSession> current() {
		return Optional.ofNullable(shown);
	}

	/** Shows an archive, or none (null). Who shows the next closes the last. */
	public void show(ArchiveSession session) {
		if (shown != null) {
			shown.dispose();
		}
		shown = session;
		if (session != null) {
			session.listeners(this::tell);
		}
		tell(listener -> listener.sessionChanged(session));
		if (session != null) {
			session.findings().checkSoon();
		}
	}

	/** Hears all that happens from now on, and at once which archive is on show. */
	public void add(SessionListener listener) {
		listeners.add(listener);
		listener.sessionChanged(shown);
	}

	public void remove(SessionListener listener) {
		listeners.remove(listener);
	}

	private void tell(Consumer<SessionListener> call) {
		for (SessionListener listener : List.copyOf(listeners)) {
			call.accept(listener);
		}
	}
}
