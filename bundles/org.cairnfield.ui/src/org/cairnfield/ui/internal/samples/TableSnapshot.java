package org.cairnfield.ui.internal.samples;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.samples.ClusterMarks;
import org.cairnfield.curation.samples.FindingMarks;
import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Labels;
import org.cairnfield.ui.session.ArchiveSession;

/**
 * The samples of the scope as they are now: gathered from the model on the user interface thread, made into the content of a
 * table on any.
 */
final class TableSnapshot {

	private final SampleRows rows;
	private final List<Finding> findings;
	private final Labels labels;
	private final Map<String, String> addresses = new HashMap<>();

	/** To be made on the user interface thread. */
	TableSnapshot(ArchiveSession session) {
		rows = SampleRows.of(session.archive(), session.selection().scope());
		findings = session.findings().open();
		List<Split> splits = session.archive().getSplits();
		Split newest = splits.isEmpty() ? null : splits.get(splits.size() - 1);
		labels = newest == null || newest.getLabels() == null ? Labels.NONE : newest.getLabels();
		for (AccessPoint accessPoint : session.archive().getAccessPoints()) {
			addresses.put(accessPoint.getId(), ModelText.address(accessPoint));
		}
	}

	/** The samples; their indices are those of the content. */
	SampleRows rows() {
		return rows;
	}

	/** On any thread. */
	SampleContent content() {
		return new SampleContent(rows, FindingMarks.of(rows, findings), ClusterMarks.of(rows, labels),
				Map.copyOf(addresses));
	}
}
