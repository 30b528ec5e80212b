package org.cairnfield.core.match;

import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;

/**
 * The readings of a split's samples once more, cell after cell, so that a fine search reads memory in one
 * go. In the order of the map every sample would be a cache miss, which costs more than comparing it.
 */
final class PackedCells {

	/** First sample of each cell; the pool is the last cell. */
	final int[] cellStart;
	/** By place: the sample, its first entry, its magnitude. */
	final int[] sample;
	final int[] entryStart;
	final double[] magnitude;
	/** By entry. */
	final int[] column;
	final byte[] step;

	PackedCells(Signals signals, int[][] cells, int[] pool) {
		SignalRows rows = signals.rows();
		cellStart = new int[cells.length + 2];
		int samples = 0;
		int entries = 0;
		for (int c = 0; c <= cells.length; c++) {
			int[] members = c < cells.length ? cells[c] : pool;
			samples += members.length;
			cellStart[c + 1] = samples;
			for (int s : members) {
				entries += rows.end(s) - rows.start(s);
			}
		}
		sample = new int[samples];
		entryStart = new int[samples + 1];
		magnitude = new double[samples];
		column = new int[entries];
		step = new byte[entries];
		int place = 0;
		int entry = 0;
		for (int c = 0; c <= cells.length; c++) {
			for (int s : c < cells.length ? cells[c] : pool) {
				sample[place] = s;
				magnitude[place] = rows.magnitude(s);
				for (int k = rows.start(s); k < rows.end(s); k++) {
					column[entry] = rows.column(k);
					step[entry++] = (byte) rows.step(k);
				}
				entryStart[++place] = entry;
			}
		}
	}

	/** Samples of a cell, or of the pool after the last one. */
	int size(int cell) {
		return cellStart[cell + 1] - cellStart[cell];
	}
}
