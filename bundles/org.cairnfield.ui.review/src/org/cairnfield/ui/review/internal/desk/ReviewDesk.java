package org.cairnfield.ui.review.internal.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;

import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.work.Soon;
import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.swt.widgets.Display;

/**
 * What the views of the review look at together: the split under review, the evidence on its noise, the queue, and the
 * sample in hand. Evidence is computed beside the user interface for the whole split at once, so that the next sample is
 * there when the key is released. For the user interface thread only.
 */
public final class ReviewDesk implements SessionListener {

	/** What is computed in one go. */
	private record Computed(SplitOnMap onMap, EvidenceTable evidence) {
	}

	private static final int FOLLOW_MILLIS = 30;

	private static ReviewDesk workbench;

	private final List<DeskListener> listeners = new ArrayList<>();
	private final LatestWork computing = new LatestWork();
	private final Soon follow = new Soon(FOLLOW_MILLIS, this::selectOnPlan); // a quick hand moves the plan once
	private final VerdictDesk verdicts = new VerdictDesk(this);
	private final VerdictExchange exchange = new VerdictExchange(this);
	private final IPreferenceChangeListener preferences = event -> Display.getDefault().asyncExec(this::settingsChanged);
	private ArchiveSession session;
	private String splitId;
	private MapState state;
	private List<String> splits = List.of();
	private Computed computed;
	private List<QueueRow> rows = List.of();
	private QueueSettings settings = QueueSettings.USUAL;
	private QueueList queue = QueueList.EMPTY;
	private SampleKey current;
	private String problem = "";

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

	void tell(Consumer<DeskListener> call) {
		List.copyOf(listeners).forEach(call);
	}

	/** The archive on show; null for none. */
	public ArchiveSession session() {
		return session;
	}

	/** Verdicts on the split under review. */
	public VerdictDesk verdicts() {
		return verdicts;
	}

	/** Verdicts from other splits and tables, and out to tables. */
	public VerdictExchange exchange() {
		return exchange;
	}

	/** The split under review; null for none. */
	public Split split() {
		return session == null ? null : find(session.archive(), splitId);
	}

	static Split find(Archive archive, String id) {
		return ArchiveIndex.of(archive).split(id).orElse(null);
	}

	/** Takes up another split. @param id null for none */
	public void choose(String id) {
		if (!Objects.equals(id, splitId)) {
			splitId = id;
			clear();
			refresh();
		}
	}

	private void clear() {
		computing.cancel();
		state = null;
		computed = null;
		rows = List.of();
		queue = QueueList.EMPTY;
		current = null;
		problem = "";
		verdicts.clear();
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		splitId = null;
		clear();
		refresh();
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		refresh();
	}

	@Override
	public void structureChanged() {
		refresh();
	}

	@Override
	public void ledgersChanged() {
		verdicts.refresh();
	}

	@Override
	public void stateChanged() {
		if (session != null && !session.isModified()) {
			verdicts.saved();
		}
	}

	private void settingsChanged() {
		if (session != null) {
			verdicts.settingsChanged();
			makeRows();
			tell(DeskListener::splitChanged);
		}
	}

	/** Computes what is out of date. */
	private void refresh() {
		if (session != null && split() == null) {
			splitId = firstSplit();
			clear();
		}
		Split split = split();
		if (split == null) {
			state = null;
			computed = null;
			rows = List.of();
			queue = QueueList.EMPTY;
			current = null;
			tell(DeskListener::splitChanged);
			return;
		}
		verdicts.refresh();
		MapState now = MapState.of(session.archive(), split);
		List<String> all = session.archive().getSplits().stream().map(Split::getId).toList();
		boolean others = !all.equals(splits);
		splits = all;
		if (now.equals(state)) {
			if (others) {
				tell(DeskListener::splitChanged);
			}
			return;
		}
		state = now;
		compute(split);
	}

	/** One with something to decide, if there is. */
	private String firstSplit() {
		List<Split> all = session.archive().getSplits();
		return all.stream().filter(split -> split.getProposals() != null && !split.getProposals().all().isEmpty()).findFirst()
				.or(() -> all.stream().findFirst()).map(Split::getId).orElse(null);
	}

	private void compute(Split split) {
		String id = split.getId();
		Archive still = ArchiveCopy.of(session.archive());
		problem = "";
		computing.start("Evidence for split " + id, workers -> {
			SplitOnMap onMap = SplitOnMap.of(still, find(still, id));
			return new Computed(onMap, EvidenceTable.of(onMap, SplitOnMap.testMap(still, find(still, id)), workers));
		}, this::accept, why -> {
			problem = Problems.text(why);
			tell(DeskListener::splitChanged);
		});
		tell(DeskListener::splitChanged);
	}

	private void accept(Computed now) {
		boolean first = computed == null;
		computed = now;
		verdicts.refresh();
		makeRows();
		tell(DeskListener::splitChanged);
		if (first || evidence(current) == null) {
			QueueRow start = queue.after(null, 1, verdicts::isLeft);
			show(start != null ? start.key() : null);
		} else {
			tell(DeskListener::currentChanged);
		}
	}

	private void makeRows() {
		if (computed == null) {
			return;
		}
		rows = new ArrayList<>();
		ArchiveIndex index = ArchiveIndex.of(session.archive());
		for (Evidence evidence : computed.evidence().all()) {
			rows.add(new QueueRow(evidence, ReviewSettings.bands().of(evidence.strengthR()).map(band -> band.name()).orElse(""),
					index.sample(evidence.sample()).map(ReviewDesk::floor).orElse("")));
		}
		arrange();
	}

	private static String floor(SampleRef ref) {
		Site site = ref.survey().getSite();
		int level = ref.survey().table().floorLevel(ref.row());
		return (site == null ? "" : ModelText.name(site) + ", ") + "floor " + level;
	}

	/** Lists the queue anew, with what was decided since in its place. */
	private void arrange() {
		rows = rows.stream().sorted((a, b) -> settings.order().comparator().compare(a.evidence(), b.evidence())).toList();
		QueueFilter filter = settings.filter();
		queue = QueueList.of(rows, row -> verdicts.isShown(row, settings.shown())
				&& (filter.isEmpty() || filter.accepts(row.text() + ' ' + verdicts.stateText(row.key()))), settings.grouping(),
				settings.closed());
		tell(DeskListener::queueChanged);
	}

	/** Lists the queue in another way. */
	public void arrange(QueueSettings now) {
		settings = now;
		arrange();
	}

	public QueueSettings settings() {
		return settings;
	}

	public QueueList queue() {
		return queue;
	}

	/** All noise samples of the split, in the order of the queue, listed or not. */
	public List<QueueRow> rows() {
		return rows;
	}

	/** The split on the map as it is; null while nothing is known. */
	public SplitOnMap onMap() {
		return computed == null ? null : computed.onMap();
	}

	/** Evidence on all its noise; null while nothing is known. */
	public EvidenceTable evidence() {
		return computed == null ? null : computed.evidence();
	}

	/** Evidence on one sample; null where there is none. */
	public Evidence evidence(SampleKey sample) {
		return computed == null || sample == null ? null : computed.evidence().of(sample).orElse(null);
	}

	/** Whether evidence is being computed. */
	public boolean isBusy() {
		return computing.isBusy();
	}

	/** Why there is no evidence; empty for no reason. */
	public String problem() {
		return problem;
	}

	/** The sample in hand; null for none. */
	public SampleKey current() {
		return current;
	}

	/** Takes up a sample: all views show it, the plan with its carrier. */
	public void show(SampleKey sample) {
		if (!Objects.equals(sample, current)) {
			current = sample;
			tell(DeskListener::currentChanged);
			// evidence first: plan and table take longer, and come once it is painted
			follow.postpone();
		}
	}

	private void selectOnPlan() {
		SampleRef own = ref(current);
		if (own == null) {
			return;
		}
		Evidence evidence = evidence(current);
		SampleRef carrier = evidence == null ? null : ref(evidence.carrier());
		// beside it, so that nobody moves or sets aside the carrier with the sample
		session.select(withSplit(session.selection()).withSamples(List.of(own)).withBeside(carrier == null ? List.of() : List.of(carrier)));
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
		return session == null || sample == null ? null : ArchiveIndex.of(session.archive()).sample(sample).orElse(null);
	}

	/** Takes up the next sample that is left to decide, or the one before that was listed. */
	public void walk(int by) {
		QueueRow row = by > 0 ? queue.after(current, 1, verdicts::isLeft) : queue.after(current, -1, any -> true);
		if (row != null) {
			show(row.key());
		}
	}

	/** Leads the person to where the reason is said. */
	public void askReason() {
		tell(DeskListener::reasonAsked);
	}

	/** Proposals that were approved and stand. */
	public List<Proposal> approved() {
		Split split = split();
		return split == null || split.getProposals() == null ? List.of()
				: split.getProposals().all().stream().filter(proposal -> verdicts.isApproved(proposal.sample())).toList();
	}

	/** Such as "214 of 226 left". */
	public String countText() {
		long made = rows.stream().filter(row -> row.evidence().made()).count();
		long left = rows.stream().filter(verdicts::isLeft).count();
		return made == 0 ? "" : String.format(Locale.ROOT, "%,d of %,d left", left, made);
	}
}
