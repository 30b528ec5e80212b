package org.cairnfield.curation.review;

import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.split.SplitOnMap;

/** Evidence on the noise of a split. Immutable. */
public final class SplitEvidence {

	private final MapState state;
	private final SplitOnMap onMap;
	private final EvidenceTable table;

	SplitEvidence(MapState state, SplitOnMap onMap, EvidenceTable table) {
		this.state = state;
		this.onMap = onMap;
		this.table = table;
	}

	/** What it was computed from. */
	MapState state() {
		return state;
	}

	/** The split on the map that it was computed from. */
	public SplitOnMap onMap() {
		return onMap;
	}

	public EvidenceTable table() {
		return table;
	}
}
