package org.cairnfield.core.reduce;

import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;

/** The samples of a map, or queries in its frame, as rows of a matrix with a column an access point, in the signals' values. */
public final class SignalMatrix implements SparseRows {

	private final Signals signals;
	private final SignalRows rows;

	/** The samples of the map. */
	public SignalMatrix(Signals signals) {
		this(signals, signals.rows());
	}

	/** @param rows of {@link Signals#align} */
	public SignalMatrix(Signals signals, SignalRows rows) {
		this.signals = signals;
		this.rows = rows;
	}

	@Override
	public int size() {
		return rows.size();
	}

	@Override
	public int columns() {
		return signals.map().accessPointCount();
	}

	@Override
	public int start(int row) {
		return rows.start(row);
	}

	@Override
	public int end(int row) {
		return rows.end(row);
	}

	@Override
	public int column(int entry) {
		return rows.column(entry);
	}

	@Override
	public double value(int entry) {
		return signals.value(rows.step(entry));
	}
}
