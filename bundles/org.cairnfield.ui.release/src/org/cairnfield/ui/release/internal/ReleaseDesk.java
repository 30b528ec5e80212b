package org.cairnfield.ui.release.internal;

import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.release.Bump;
import org.cairnfield.curation.release.Gate;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.GateResult;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleaseManifest;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Survey;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.save.Damaged;
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
	private List<String> changes = List.of();
	private List<ReleaseManifest> prepared = List.of();
	private GateCheck check;
	private SideBySide side;
	private List<String> compared = List.of();
	private Job asking;
	private Job measuring;
	private String problem = "";
	private String measuringProblem = "";

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
		releases = List.of(); // none of them is of this archive
		bump = null;
		changes = List.of();
		prepared = List.of();
		compared = List.of();
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

	@Override
	public void stateChanged() {
		if (session != null && !session.isModified()) {
			load(); // what is saved has changed
		}
	}

	/** What was asked is no longer so. */
	void forget() {
		check = null;
		side = null;
		problem = "";
		measuringProblem = "";
		overruled.clear();
		stop(asking);
		stop(measuring);
		asking = null;
		measuring = null;
		tell();
	}

	private static void stop(Job job) {
		if (job != null) {
			job.cancel();
		}
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
		record Read(List<ReleasedState> releases, Bump bump, List<String> changes, List<ReleaseManifest> prepared) {
		}
		Work.start(Messages.ReleaseDesk_readingTheReleases,
				workers -> new Read(book.list(), book.propose(), book.changes(), book.prepared()), read -> {
					if (of == session) {
						releases = read.releases;
						bump = read.bump;
						changes = read.changes;
						prepared = read.prepared;
						tell();
					}
				}, failed -> {
					releases = List.of();
					bump = null;
					changes = List.of();
					prepared = List.of();
					problem = Problems.text(failed);
					tell();
				});
	}

	/** Checks the gates of the content as it is now. */
	void ask() {
		ArchiveSession of = session;
		if (!Damaged.mayGoOn(null, of, Messages.ReleaseDesk_gates)) {
			return;
		}
		Archive copy = ArchiveCopy.of(of.archive());
		ReleaseBook book = book();
		problem = "";
		Job[] own = new Job[1];
		own[0] = Work.start(Messages.ReleaseDesk_checkingTheGates,
				workers -> book.ask(copy, PackRequest.USUAL, workers), result -> {
					if (asking == own[0]) {
						asking = null;
						check = result;
						measureNow(compared);
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

	/**
	 * Measures the content as it is now, and releases with it.
	 *
	 * @param versions of the releases
	 */
	void measure(List<String> versions) {
		if (Damaged.mayGoOn(null, session, Messages.ReleaseDesk_measure)) {
			measureNow(versions);
		}
	}

	private void measureNow(List<String> versions) {
		compared = versions;
		ArchiveSession of = session;
		Archive copy = ArchiveCopy.of(of.archive());
		ReleaseBook book = book();
		Measures known = check == null ? null : check.measures();
		measuringProblem = "";
		stop(measuring);
		Job[] own = new Job[1];
		own[0] = Work.start(Messages.ReleaseDesk_measuringTheMap,
				workers -> book.measure(copy, known, versions, PackRequest.USUAL, workers), result -> {
					if (measuring == own[0]) {
						measuring = null;
						side = result;
						tell();
					}
				}, failed -> {
					if (measuring == own[0]) {
						measuring = null;
						measuringProblem = Problems.text(failed);
						tell();
					}
				});
		measuring = own[0];
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

	/** What changed since the last release, as far as it is saved. */
	List<String> changes() {
		return changes;
	}

	/** What somebody has prepared, perhaps on another day, and nobody signed for yet; the highest version first. */
	List<ReleaseManifest> prepared() {
		return prepared;
	}

	/** Somebody has just prepared a release. */
	void prepared(ReleaseManifest manifest) {
		List<ReleaseManifest> now = new ArrayList<>(List.of(manifest));
		prepared.stream().filter(other -> !other.version().equals(manifest.version())).forEach(now::add);
		prepared = now;
		tell();
	}

	/** Somebody has just thrown that away. */
	void discarded(ReleaseManifest manifest) {
		prepared = prepared.stream().filter(other -> !other.version().equals(manifest.version())).toList();
		tell();
	}

	/** A release was signed: the next version is another. */
	void signed() {
		prepared = List.of();
		bump = null;
		load();
	}

	/** What the gates said, overruled ones marked; empty until they are asked, and after each change. */
	Optional<GateCheck> check() {
		return Optional.ofNullable(check).map(asked -> asked.overruled(overruled));
	}

	/** The map, and releases compared with it, as measured; empty until somebody measures, and after each change. */
	Optional<SideBySide> side() {
		return Optional.ofNullable(side);
	}

	boolean isMeasuring() {
		return measuring != null;
	}

	/** Why nothing could be measured; empty if it could. */
	String measuringProblem() {
		return measuringProblem;
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
