package org.cairnfield.curation.remedy;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SamplesCommand;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.SampleEdit;
import org.cairnfield.model.values.SampleTable;

/** Takes single readings out of samples. The history keeps them. */
final class LeaveOutReadingsCommand extends SamplesCommand {

	/** Ids of access points by id of the sample; all samples are of one survey. */
	private final Map<String, Set<String>> accessPoints;

	LeaveOutReadingsCommand(Collection<SampleRef> samples, Map<String, Set<String>> accessPoints) {
		super(samples);
		this.accessPoints = accessPoints;
	}

	@Override
	protected boolean changes(SampleTable table, int row) {
		for (int k = 0; k < table.heard(row); k++) {
			if (goes(table, row, table.accessPoints().get(table.accessPoint(row, k)))) {
				return true;
			}
		}
		return false;
	}

	@Override
	protected void change(SampleEdit edit, SampleTable table, int row) {
		edit.readings(row, table.readings(row).without(accessPoint -> goes(table, row, accessPoint)));
	}

	private boolean goes(SampleTable table, int row, String accessPoint) {
		return accessPoints.getOrDefault(table.id(row), Set.of()).contains(accessPoint);
	}

	@Override
	protected String label(int samples) {
		return Words.bind(Messages.LeaveOutReadingsCommand_leaveOutReadingsOf, Count.of(samples, "sample"));
	}
}
