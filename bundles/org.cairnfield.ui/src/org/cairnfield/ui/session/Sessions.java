package org.cairnfield.ui.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.PastState;

/** Which archive the workbench shows. One at a time; a part asks here and listens here. */
public final class Sessions {

	private static final Sessions WORKBENCH = new Sessions();

	private final List<SessionListener> listeners = new ArrayList<>();
	private ArchiveSession shown;
	/** The present, unsaved changes and all, while a past state is on show. */
	private ArchiveSession present;

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

	/** The archive as it is now, unsaved changes and all, also while a past state is on show. */
	public Optional<ArchiveSession> present() {
		return Optional.ofNullable(present != null ? present : shown);
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

	/** Shows a past state of the archive on show in place of the present one, which stays open. */
	public void showPast(PastState state) {
		if (shown != null) {
			shown.settle();
			present = shown.past().isEmpty() ? shown : present;
			show(ArchiveSession.of(shown.open(), state));
		}
	}

	/** Back from a past state. */
	public void backToPresent() {
		if (present != null) {
			ArchiveSession now = present;
			present = null;
			show(now);
		}
	}

	/** Shows an archive anew after its model was read again. */
	public void showAgain(OpenArchive open) {
		present = null;
		show(ArchiveSession.of(open));
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
