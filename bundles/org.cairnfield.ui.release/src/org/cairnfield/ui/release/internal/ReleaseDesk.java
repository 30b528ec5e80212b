package org.cairnfield.ui.release.internal;

import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.release.Bump;
import org.cairnfield.curation.release.Gate;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.GateResult;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.exchange.pack.PackSettings;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Survey;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.jobs.Job;

/** What the views of the Release perspective share: the releases there are, and what the gates say of the content. */
final class ReleaseDesk implements SessionListener {

	/** Hears when any of it has changed. */
	interface Listener {
		void deskChanged();
	}

	private static final ReleaseDesk WORKBENCH = new ReleaseDesk();

	private final List<Listener> listeners = new ArrayList<>();
	private final Map<Gate, GateResult.Overrule> overruled = new EnumMap<>(Gate.class);
	private ArchiveSession session;
	private List<ReleasedState> releases = List.of();
	private Bump bump;
	private GateCheck check;
	private Job asking;
	private String problem = "";

	private ReleaseDesk() {
	}

	static ReleaseDesk workbench() {
		return WORKBENCH;
	}

	void add(Listener listener) {
		if (listeners.isEmpty()) {
			listeners.add(listener);
			Sessions.workbench().add(this); // tells at once
		} else {
			listeners.add(listener);
			listener.deskChanged();
		}
	}

	void remove(Listener listener) {
		listeners.remove(listener);
		if (listeners.isEmpty()) {
			Sessions.workbench().remove(this);
		}
	}

	private void tell() {
		List.copyOf(listeners).forEach(Listener::deskChanged);
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		forget();
		load();
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		forget();
	}

	@Override
	public void structureChanged() {
		forget();
	}

	@Override
	public void ledgersChanged() {
		forget();
	}

	/** What was asked is no longer so. */
	private void forget() {
		check = null;
		problem = "";
		overruled.clear();
		if (asking != null) {
			asking.cancel();
			asking = null;
		}
		tell();
	}

	/** Reads the releases anew. */
	void load() {
		ArchiveSession of = session;
		if (of == null) {
			releases = List.of();
			bump = null;
			tell();
			return;
		}
		ReleaseBook book = book();
		record Read(List<ReleasedState> releases, Bump bump) {
		}
		Work.start("Reading the releases", workers -> new Read(book.list(), book.propose()), read -> {
			if (of == session) {
				releases = read.releases;
				bump = read.bump;
				tell();
			}
		}, failed -> {
			releases = List.of(); // before the first save point there is no history
			bump = null;
			tell();
		});
	}

	/** Asks the gates of the content as it is now. */
	void ask() {
		ArchiveSession of = session;
		Archive copy = ArchiveCopy.of(of.archive());
		ReleaseBook book = book();
		problem = "";
		Job[] own = new Job[1];
		own[0] = Work.start("Asking the gates", workers -> book.ask(copy, PackSettings.USUAL, workers), result -> {
			if (asking == own[0]) {
				asking = null;
				check = result;
				tell();
			}
		}, failed -> {
			if (asking == own[0]) {
				asking = null;
				problem = Problems.text(failed);
				tell();
			}
		});
		asking = own[0];
		tell();
	}

	/** Lets a gate through, by name and for a reason that the release carries for ever. */
	void overrule(Gate gate, String reason) {
		overruled.put(gate, new GateResult.Overrule(Preferences.person().name(), reason));
		tell();
	}

	Optional<ArchiveSession> session() {
		return Optional.ofNullable(session);
	}

	ReleaseBook book() {
		return new ReleaseBook(session.open(), Clock.systemUTC());
	}

	List<ReleasedState> releases() {
		return releases;
	}

	/** The version that comes next, and why; empty before the first save point. */
	Optional<Bump> bump() {
		return Optional.ofNullable(bump);
	}

	/** What the gates said, overruled ones marked; empty until they are asked, and after each change. */
	Optional<GateCheck> check() {
		return Optional.ofNullable(check).map(asked -> asked.overruled(overruled));
	}

	boolean isAsking() {
		return asking != null;
	}

	/** Why the gates could not be asked; empty if they could. */
	String problem() {
		return problem;
	}

	/** Whether anything may be released just now. */
	boolean mayChange() {
		return session != null && session.readOnlyReason().isEmpty();
	}
}
