package org.cairnfield.model.edit;

import java.util.Collection;
import java.util.function.IntPredicate;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.Readings;
import org.cairnfield.model.values.SampleEdit;
import org.cairnfield.model.values.SampleTable;

/** Takes readings out of samples whose levels say something else, such as a code for "not heard". */
public final class RemoveReadingsCommand extends SamplesCommand {

	private final IntPredicate removed;

	/** @param removedRssiDbm says of a level in dBm whether readings with it go */
	public RemoveReadingsCommand(Collection<SampleRef> samples, IntPredicate removedRssiDbm) {
		super(samples);
		this.removed = removedRssiDbm;
	}

	@Override
	protected boolean changes(SampleTable table, int row) {
		for (int k = 0; k < table.heard(row); k++) {
			if (removed.test(table.rssiDbm(row, k))) {
				return true;
			}
		}
		return false;
	}

	@Override
	protected void change(SampleEdit edit, SampleTable table, int row) {
		Readings readings = table.readings(row);
		edit.readings(row, readings.without(accessPoint -> removed.test(readings.rssiDbm(accessPoint, 0))));
	}

	@Override
	protected String label(int samples) {
		return Words.bind(Messages.RemoveReadingsCommand_removeReadingsOf, Count.of(samples, "sample"));
	}
}
