package org.cairnfield.curation.review;

import java.util.Set;
import java.util.stream.Collectors;

import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.values.SampleKey;

/** Evidence on the noise of a split. Immutable. */
public final class SplitEvidence {

	private final MapState state;
	private final SplitOnMap onMap;
	private final EvidenceTable table;
	private final Set<SampleKey> marked;

	SplitEvidence(MapState state, SplitOnMap onMap, EvidenceTable table) {
		this.state = state;
		this.onMap = onMap;
		this.table = table;
		marked = table.all().stream().filter(e -> !e.marks().isEmpty()).map(Evidence::sample)
				.collect(Collectors.toSet());
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

	/** Samples that carry a mark. */
	Set<SampleKey> marked() {
		return marked;
	}
}
