package org.cairnfield.ui.review.internal.desk;

import org.cairnfield.curation.decide.GiveVerdictsCommand;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.review.EvidenceRequest;
import org.cairnfield.curation.review.QueueSettings;
import org.cairnfield.curation.review.ReviewSession;
import org.cairnfield.curation.review.ReviewedArchive;
import org.cairnfield.curation.review.Reviewer;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.work.LatestWork;
import org.cairnfield.ui.work.Soon;
import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.emf.common.command.Command;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Joins the review to the workbench: reports what happens to the archive on show, computes evidence beside the user
 * interface, lets plan and table follow the sample in hand, and passes on to the views what has changed. For the user
 * interface thread only.
 */
public final class ReviewDesk implements SessionListener {

	/** An archive on show, as the review uses it. */
	private record Shown(ArchiveSession session) implements ReviewedArchive {

		@Override
		public Archive archive() {
			return session.archive();
		}

		@Override
		public Optional<String> readOnlyReason() {
			return session.readOnlyReason();
		}

		@Override
		public boolean run(Command command) {
			return session.run(command);
		}
	}

	private static final int FOLLOW_MILLIS = 30;

	private static ReviewDesk workbench;

	private final List<DeskListener> listeners = new ArrayList<>();
	private final LatestWork computing = new LatestWork();
	private final Soon follow = new Soon(FOLLOW_MILLIS, this::selectOnPlan); // a quick hand moves the plan once
	private final VerdictExchange exchange = new VerdictExchange(this::review);
	private final IPreferenceChangeListener preferences = event -> Display.getDefault().asyncExec(() -> {
		settingsChanged();
		tell(DeskListener::splitChanged); // how proposals are made
	});
	private ArchiveSession session;
	private String policyProblem = "";
	private ReviewSession review = review(ReviewedArchive.none());

	private ReviewDesk() {
		ReviewSettings.node().addPreferenceChangeListener(preferences);
		ReviewSettings.personNode().addPreferenceChangeListener(preferences);
		Sessions.workbench().add(this);
	}

	/** That of the workbench; it lives as long. */
	public static ReviewDesk workbench() {
		if (workbench == null) {
			workbench = new ReviewDesk();
		}
		return workbench;
	}

	public void add(DeskListener listener) {
		listeners.add(listener);
	}

	public void remove(DeskListener listener) {
		listeners.remove(listener);
	}

	private void tell(Consumer<DeskListener> call) {
		List.copyOf(listeners).forEach(call);
	}

	/** Hears the review, and passes it on. */
	private final class Passing implements DeskListener {

		@Override
		public void evidenceWanted(EvidenceRequest request) {
			compute(request);
		}

		@Override
		public void splitChanged() {
			tell(DeskListener::splitChanged);
		}

		@Override
		public void queueChanged() {
			tell(DeskListener::queueChanged);
		}

		@Override
		public void verdictsChanged() {
			tell(DeskListener::verdictsChanged);
		}

		@Override
		public void currentChanged() {
			tell(DeskListener::currentChanged);
			// evidence first: plan and table take longer, and come once it is painted
			follow.postpone();
		}
	}

	private ReviewSession review(ReviewedArchive archive) {
		return new ReviewSession(archive, reviewer(), Clock.systemUTC(), new Passing());
	}

	/** The person at the workbench, and the policy of the archive; the usual one where that cannot be read. */
	private Reviewer reviewer() {
		policyProblem = "";
		ReviewPolicy policy = ReviewPolicy.USUAL;
		if (session != null) {
			try {
				policy = new ReleaseBook(session.open(), Clock.systemUTC()).gates().policy(session.archive());
			} catch (IOException | ReviewRefused e) {
				policyProblem = Problems.text(e);
			}
		}
		return new Reviewer(ReviewSettings.person(), policy);
	}

	/** The archive on show; null for none. */
	public ArchiveSession session() {
		return session;
	}

	/** The review of the archive on show; where there is none, of an archive without splits. */
	public ReviewSession review() {
		return review;
	}

	/** Verdicts from other splits and tables, and out to tables. */
	public VerdictExchange exchange() {
		return exchange;
	}

	/** The split under review; null for none. */
	public Split split() {
		return review.split();
	}

	/** Takes up another split. */
	public void choose(String id) {
		review.choose(id);
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		computing.cancel();
		session = now;
		QueueSettings settings = review.queue().settings();
		review = review(now == null ? ReviewedArchive.none() : new Shown(now));
		review.arrange(settings);
		review.archiveChanged();
		sayPolicyProblem();
	}

	private void sayPolicyProblem() {
		if (!policyProblem.isEmpty()) {
			review.refuse(policyProblem);
		}
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		review.archiveChanged();
	}

	@Override
	public void structureChanged() {
		settingsChanged();
		review.archiveChanged();
	}

	@Override
	public void ledgersChanged() {
		review.ledgersChanged();
	}

	@Override
	public void teamChanged() {
		review.archiveChanged();
	}

	@Override
	public void stateChanged() {
		if (session != null && !session.isModified()) {
			review.savePointMade();
		}
	}

	private void settingsChanged() {
		Reviewer now = reviewer();
		if (!now.equals(review.reviewer())) {
			review.setReviewer(now);
		}
		sayPolicyProblem();
	}

	private void compute(EvidenceRequest request) {
		ReviewSession of = review;
		computing.start(NLS.bind(Messages.ReviewDesk_evidenceForSplit, request.split()), request::compute, of::accept,
				why -> of.evidenceFailed(Problems.text(why)));
	}

	private void selectOnPlan() {
		SampleRef own = ref(review.current());
		if (own == null) {
			return;
		}
		// beside it, so that nobody moves or sets aside the others with the sample
		session.select(withSplit(session.selection()).withSamples(List.of(own))
				.withBeside(PlanCompanions.of(review.evidence().of(review.current()), this::ref)));
		PlanZoom.toSelection();
	}

	/** The plan shows clusters of the split that is the scope, or else of the latest; the scope moves only where it must. */
	private ArchiveSelection withSplit(ArchiveSelection selection) {
		List<Split> all = session.archive().getSplits();
		Split shown = selection.scope() instanceof Split scope ? scope : all.get(all.size() - 1);
		return shown == split() ? selection : selection.withScope(split());
	}

	/** Where a sample is in the archive now; null where it is gone. */
	public SampleRef ref(SampleKey sample) {
		return session == null || sample == null ? null
				: ArchiveIndex.of(session.archive()).sample(sample).orElse(null);
	}

	/** Leads the person to where the reason is given. */
	public void askReason() {
		tell(DeskListener::reasonAsked);
	}

	/** Undoes the last change of the archive if it is one of verdicts; a sample whose verdict goes is taken in hand again. */
	public void undo() {
		if (session == null || session.readOnlyReason().isPresent() || !session.commands().canUndo()) {
			return;
		}
		Command last = session.commands().getUndoCommand();
		if (last instanceof GiveVerdictsCommand) {
			session.commands().undo();
			review.undone(last.getLabel());
		} else {
			review.refuse(NLS.bind(Messages.ReviewDesk_theLastChangeIsNo, last.getLabel()));
		}
	}
}
