package org.cairnfield.model.edit;

import java.util.List;
import java.util.Locale;

import org.cairnfield.model.values.SampleEdit;
import org.cairnfield.model.values.SampleTable;

/** Gives a sample another position on its floor. */
public final class MoveSampleCommand extends SamplesCommand {

	private final SampleRef sample;
	private final double xMetres;
	private final double yMetres;

	/** @throws IllegalArgumentException where the position is not finite */
	public MoveSampleCommand(SampleRef sample, double xMetres, double yMetres) {
		super(List.of(sample));
		if (!Double.isFinite(xMetres) || !Double.isFinite(yMetres)) {
			throw new IllegalArgumentException("position must be finite: " + xMetres + ", " + yMetres);
		}
		this.sample = sample;
		this.xMetres = xMetres + 0.0;
		this.yMetres = yMetres + 0.0;
	}

	@Override
	protected boolean changes(SampleTable table, int row) {
		return table.xMetres(row) != xMetres || table.yMetres(row) != yMetres;
	}

	@Override
	protected void change(SampleEdit edit, SampleTable table, int row) {
		edit.position(row, xMetres, yMetres);
	}

	@Override
	protected String label(int samples) {
		return String.format(Locale.ROOT, Messages.MoveSampleCommand_moveSampleToMM, sample.key().sample(), xMetres,
				yMetres);
	}
}
