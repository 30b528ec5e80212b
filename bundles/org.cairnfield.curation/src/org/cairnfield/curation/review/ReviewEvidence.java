package org.cairnfield.curation.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.SampleKey;

/** What is known of the noise of the split under review, and whether that is up to date. */
public final class ReviewEvidence {

	private MapState state;
	private SplitEvidence computed;
	/** Of samples that are not in the map any more. */
	private Map<SampleKey, Evidence> gone = Map.of();
	private boolean waiting;
	private String problem = "";

	ReviewEvidence() {
	}

	void clear() {
		state = null;
		computed = null;
		gone = Map.of();
		waiting = false;
		problem = "";
	}

	/** What is to be computed; empty where nothing has changed since it was asked for last. */
	Optional<EvidenceRequest> request(Archive archive, Split split) {
		MapState now = MapState.of(archive, split);
		if (now.equals(state)) {
			return Optional.empty();
		}
		state = now;
		problem = "";
		waiting = true;
		return Optional.of(new EvidenceRequest(archive, split, now));
	}

	/** @return false for evidence that is out of date, which is dropped */
	boolean accept(SplitEvidence now) {
		boolean due = now.state().equals(state);
		if (due) {
			computed = now;
			waiting = false;
		}
		return due;
	}

	void failed(String why) {
		waiting = false;
		problem = why;
	}

	/** Whether there is any. */
	public boolean isKnown() {
		return computed != null;
	}

	/** Whether newer evidence was asked for and has not come yet. */
	public boolean isWaiting() {
		return waiting;
	}

	/** Why there is none; empty for no reason. */
	public String problem() {
		return problem;
	}

	/** On the noise of the split that is in the map; null while nothing is known. */
	public EvidenceTable table() {
		return computed == null ? null : computed.table();
	}

	/** The split on the map that the evidence was computed from; null while nothing is known. */
	public SplitOnMap onMap() {
		return computed == null ? null : computed.onMap();
	}

	/** Takes note of samples that were set aside, on which nothing was computed. */
	void notice(Standings standings) {
		gone = standings.all().stream()
				.filter(each -> each.state() == ReviewState.SET_ASIDE && computed.table().of(each.sample()).isEmpty())
				.collect(Collectors.toMap(Standing::sample,
						each -> Evidence.gone(each.sample(), each.proposal().orElse(null), each.made())));
	}

	/** On all noise of the split, samples that were set aside included; empty while nothing is known. */
	public List<Evidence> all() {
		return computed == null ? List.of()
				: Stream.concat(computed.table().all().stream(), gone.values().stream()).toList();
	}

	/** Samples that carry a mark. */
	Set<SampleKey> marked() {
		return computed == null ? Set.of() : computed.marked();
	}

	/** On one sample; null where there is none. */
	public Evidence of(SampleKey sample) {
		return computed == null || sample == null ? null : computed.table().of(sample).orElse(gone.get(sample));
	}
}
