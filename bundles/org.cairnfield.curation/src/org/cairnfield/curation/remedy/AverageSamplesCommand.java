package org.cairnfield.curation.remedy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SamplesCommand;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.Readings;
import org.cairnfield.model.values.SampleEdit;
import org.cairnfield.model.values.SampleTable;

/** Gives the first of several samples the mean levels of all, and sets the others aside. The history keeps its own levels. */
final class AverageSamplesCommand extends SamplesCommand {

	private final String reason;
	/** By row of a sample that stays, the rows that it stands for, its own among them. */
	private final Map<Integer, List<Integer>> groups = new HashMap<>();

	/** @param groups of samples, all of one survey */
	AverageSamplesCommand(List<List<SampleRef>> groups, String reason) {
		super(groups.stream().flatMap(List::stream).toList());
		this.reason = reason;
		groups.forEach(group -> this.groups.put(group.get(0).row(), group.stream().map(SampleRef::row).toList()));
	}

	@Override
	protected boolean changes(SampleTable table, int row) {
		return groups.containsKey(row) ? !table.readings(row).equals(mean(table, row))
				: !Objects.equals(table.reason(row), reason);
	}

	@Override
	protected void change(SampleEdit edit, SampleTable table, int row) {
		if (groups.containsKey(row)) {
			edit.readings(row, mean(table, row));
		} else {
			edit.reason(row, reason);
		}
	}

	private Readings mean(SampleTable table, int row) {
		return Readings.of(Remedy.AverageSamples
				.mean(groups.get(row).stream().map(each -> levels(table.readings(each))).toList()));
	}

	private static Map<String, Integer> levels(Readings readings) {
		Map<String, Integer> levels = new TreeMap<>();
		for (int k = 0; k < readings.size(); k++) {
			levels.put(readings.accessPoint(k), readings.rssiDbm(k));
		}
		return levels;
	}

	@Override
	protected String label(int samples) {
		return Words.bind(Messages.AverageSamplesCommand_averageScans, Count.of(samples, "sample"));
	}
}
