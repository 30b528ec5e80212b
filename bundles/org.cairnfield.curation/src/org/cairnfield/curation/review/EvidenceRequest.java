package org.cairnfield.curation.review;

import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.ArchiveIndex;

/** Asks for the evidence on the noise of a split, as the archive is now. Computes it on any thread. */
public final class EvidenceRequest {

	private final Archive still;
	private final String split;
	private final MapState state;

	EvidenceRequest(Archive archive, Split split, MapState state) {
		this.still = ArchiveCopy.of(archive);
		this.split = split.getId();
		this.state = state;
	}

	/** Id of the split. */
	public String split() {
		return split;
	}

	/** Costs a pass over the whole map, and some seconds for a large one. */
	public SplitEvidence compute(Workers workers) {
		Split own = ArchiveIndex.of(still).split(split).orElseThrow();
		SplitOnMap onMap = SplitOnMap.of(still, own);
		return new SplitEvidence(state, onMap, EvidenceTable.of(onMap, workers));
	}
}
