package org.cairnfield.core.reduce;

import org.cairnfield.core.distance.Signals;

/** The samples of a map as rows of a matrix with a column an access point, in the signals' values. */
public final class SignalMatrix implements SparseRows {

	private final Signals signals;

	public SignalMatrix(Signals signals) {
		this.signals = signals;
	}

	@Override
	public int size() {
		return signals.size();
	}

	@Override
	public int columns() {
		return signals.map().accessPointCount();
	}

	@Override
	public int start(int row) {
		return signals.rows().start(row);
	}

	@Override
	public int end(int row) {
		return signals.rows().end(row);
	}

	@Override
	public int column(int entry) {
		return signals.rows().column(entry);
	}

	@Override
	public double value(int entry) {
		return signals.value(signals.rows().step(entry));
	}
}
