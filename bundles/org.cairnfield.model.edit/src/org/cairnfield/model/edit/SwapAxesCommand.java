package org.cairnfield.model.edit;

import java.util.Collection;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.SampleEdit;
import org.cairnfield.model.values.SampleTable;

/** Exchanges x and y of samples that were noted the wrong way round. */
public final class SwapAxesCommand extends SamplesCommand {

	public SwapAxesCommand(Collection<SampleRef> samples) {
		super(samples);
	}

	@Override
	protected boolean changes(SampleTable table, int row) {
		return table.xMetres(row) != table.yMetres(row);
	}

	@Override
	protected void change(SampleEdit edit, SampleTable table, int row) {
		edit.position(row, table.yMetres(row), table.xMetres(row));
	}

	@Override
	protected String label(int samples) {
		return Words.bind(Messages.SwapAxesCommand_swapXAndYOf, Count.of(samples, "sample"));
	}
}
