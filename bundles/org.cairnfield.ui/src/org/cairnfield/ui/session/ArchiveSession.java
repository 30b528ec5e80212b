package org.cairnfield.ui.session;

import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.curation.team.CommentBook;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

/**
 * An archive on show: its model, the one stack of its changes, what is selected and what the rules find. For the user
 * interface thread only.
 */
public final class ArchiveSession {

	private final OpenArchive open;
	private final PastState past;
	private final String readOnly;
	private final Archive archive;
	private final BasicCommandStack commands = new BasicCommandStack();
	private final Findings findings;
	private final CommentBook comments;
	private final Watch watch = new Watch();
	private Consumer<Consumer<SessionListener>> listeners = call -> {
	};
	private ArchiveSelection selection;
	private Set<Survey> changedSurveys = new LinkedHashSet<>();
	private boolean structureChanged;
	private boolean ledgersChanged;
	private boolean teamChanged;
	private boolean rulesMayCare;
	private boolean told = true;

	private ArchiveSession(OpenArchive open, PastState past, String readOnly, Archive archive) {
		this.open = open;
		this.past = past;
		this.readOnly = readOnly;
		this.archive = archive;
		selection = ArchiveSelection.of(archive);
		findings = new Findings(this);
		comments = new CommentBook(archive, Clock.systemUTC());
		commands.addCommandStackListener(event -> tell(SessionListener::stateChanged));
		archive.eAdapters().add(watch);
	}

	/** Of an archive as it is now. */
	public static ArchiveSession of(OpenArchive open) {
		return new ArchiveSession(open, null, open.readOnlyReason().orElse(null), open.archive());
	}

	/** Of an archive that is only to be looked at. */
	public static ArchiveSession readOnly(OpenArchive open, String reason) {
		return new ArchiveSession(open, null, reason, open.archive());
	}

	/** Of a past state; nothing can be changed. */
	public static ArchiveSession of(OpenArchive open, PastState past) {
		SavePoint point = past.savePoint();
		String reason = past.releases().isEmpty()
				? NLS.bind(Messages.ArchiveSession_thisIsTheStateOf, point.shortId(), point.summary())
				: NLS.bind(Messages.ArchiveSession_thisIsRelease, String.join(", ", past.releases()), point.shortId());
		return new ArchiveSession(open, past, reason, past.archive());
	}

	public Archive archive() {
		return archive;
	}

	/** The folder that it is kept in. */
	public Path folder() {
		return open.folder();
	}

	/** The archive on disk. */
	public OpenArchive open() {
		return open;
	}

	/** The past state that is shown; empty for the present one. */
	public Optional<PastState> past() {
		return Optional.ofNullable(past);
	}

	/** Why nothing can be changed; empty if it can. */
	public Optional<String> readOnlyReason() {
		return Optional.ofNullable(readOnly);
	}

	/** Whether something was changed and not saved. */
	public boolean isModified() {
		return past == null && commands.isSaveNeeded() && open.isModified();
	}

	/** What was done, and can be undone. Use {@link #run} to add to it. */
	public CommandStack commands() {
		return commands;
	}

	/**
	 * Makes a change that can be undone.
	 *
	 * @return false where there was nothing to change, or nothing may be changed
	 */
	public boolean run(Command command) {
		if (readOnlyReason().isPresent() || !command.canExecute()) {
			return false;
		}
		commands.execute(command);
		return true;
	}

	/** What the person looks at. */
	public ArchiveSelection selection() {
		return selection;
	}

	/** Looks at something else; all parts hear of it before this returns. */
	public void select(ArchiveSelection now) {
		ArchiveSelection before = selection;
		if (!before.equals(now)) {
			selection = now;
			tell(listener -> listener.selectionChanged(before, now));
		}
	}

	/** What the rules say. */
	public Findings findings() {
		return findings;
	}

	/** What people have said about parts of it. */
	public CommentBook comments() {
		return comments;
	}

	/** Before it is saved or left: edits that are half done become changes. */
	public void settle() {
		tell(SessionListener::settle);
	}

	/** What was done so far is on disk. */
	public void saved() {
		commands.saveIsDone();
		comments.saved();
		tell(SessionListener::stateChanged);
	}

	void listeners(Consumer<Consumer<SessionListener>> calls) {
		listeners = calls;
	}

	void tell(Consumer<SessionListener> call) {
		listeners.accept(call);
	}

	/** It is no longer on show. */
	void dispose() {
		archive.eAdapters().remove(watch);
		findings.cancel();
		listeners(call -> {
		});
	}

	private void changed(Notification change) {
		if (change.isTouch() || change.getEventType() == Notification.REMOVING_ADAPTER
				|| change.getEventType() == Notification.RESOLVE) {
			return;
		}
		if (change.getNotifier() instanceof Samples samples && samples.eContainer() instanceof Survey survey) {
			changedSurveys.add(survey);
		} else if (isOfLedger(change)) {
			ledgersChanged = true;
		} else if (isOfTeam(change)) {
			teamChanged = true;
		} else {
			structureChanged = true;
		}
		rulesMayCare |= !isOfLedger(change) && !isOfSplit(change) && !isOfTeam(change);
		if (told) {
			told = false;
			Display.getCurrent().asyncExec(this::tellChanges);
		}
	}

	/** Verdicts come one a second while somebody reviews. */
	private static boolean isOfLedger(Notification change) {
		return change.getNotifier() instanceof Ledger || change.getFeature() == ModelPackage.Literals.ARCHIVE__LEDGERS;
	}

	private static boolean isOfSplit(Notification change) {
		return change.getNotifier() instanceof Split || change.getFeature() == ModelPackage.Literals.ARCHIVE__SPLITS;
	}

	/** Who reviews what, and what people say to each other. */
	private static boolean isOfTeam(Notification change) {
		return change.getFeature() == ModelPackage.Literals.ARCHIVE__ASSIGNMENTS
				|| change.getFeature() == ModelPackage.Literals.ARCHIVE__COMMENTS;
	}

	/** Once for all changes of one command. */
	private void tellChanges() {
		told = true;
		Set<Survey> surveys = changedSurveys;
		boolean structure = structureChanged;
		boolean ledgers = ledgersChanged;
		boolean team = teamChanged;
		changedSurveys = new LinkedHashSet<>();
		structureChanged = false;
		ledgersChanged = false;
		teamChanged = false;
		if (structure) {
			forgetWhatIsGone();
			tell(SessionListener::structureChanged);
		}
		if (!surveys.isEmpty()) {
			tell(listener -> listener.samplesChanged(surveys));
		}
		if (ledgers) {
			tell(SessionListener::ledgersChanged);
		}
		if (team) {
			tell(SessionListener::teamChanged);
		}
		tell(SessionListener::stateChanged);
		if (rulesMayCare) { // no rule looks at splits, verdicts, assignments and comments
			rulesMayCare = false;
			findings.checkSoon();
		}
	}

	/** An undone intake takes surveys, floors and access points away. */
	private void forgetWhatIsGone() {
		ArchiveSelection now = selection;
		if (!isThere(now.scope())) {
			now = now.withScope(archive);
		}
		if (now.floor() == null || !isThere(now.floor())) {
			now = now.withFloor(ArchiveSelection.of(archive).floor());
		}
		if (now.accessPoint() != null && !isThere(now.accessPoint())) {
			now = now.withAccessPoint(null);
		}
		if (!now.samples().stream().allMatch(sample -> isThere(sample.survey()))) {
			now = now.withSamples(now.samples().stream().filter(sample -> isThere(sample.survey())).toList());
		}
		if (!now.beside().stream().allMatch(companion -> isThere(companion.sample().survey()))) {
			now = now.withBeside(List.of());
		}
		if (!now.marked().stream().allMatch(place -> isThere(place.floor()))) {
			now = now.withMarked(List.of());
		}
		select(now);
	}

	private boolean isThere(EObject object) {
		for (EObject at = object; at != null; at = at.eContainer()) {
			if (at == archive) {
				return true;
			}
		}
		return false;
	}

	private final class Watch extends EContentAdapter {
		@Override
		public void notifyChanged(Notification change) {
			super.notifyChanged(change);
			changed(change);
		}
	}
}
