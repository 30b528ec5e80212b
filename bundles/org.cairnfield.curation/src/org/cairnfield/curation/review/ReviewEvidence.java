package org.cairnfield.curation.review;

import java.util.Optional;

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
	private boolean waiting;
	private String problem = "";

	ReviewEvidence() {
	}

	void clear() {
		state = null;
		computed = null;
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

	/** On all noise of the split; null while nothing is known. */
	public EvidenceTable table() {
		return computed == null ? null : computed.table();
	}

	/** The split on the map that the evidence was computed from; null while nothing is known. */
	public SplitOnMap onMap() {
		return computed == null ? null : computed.onMap();
	}

	/** On one sample; null where there is none. */
	public Evidence of(SampleKey sample) {
		return computed == null || sample == null ? null : computed.table().of(sample).orElse(null);
	}
}
