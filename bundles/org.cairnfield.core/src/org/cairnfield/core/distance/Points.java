package org.cairnfield.core.distance;

import java.util.Arrays;

/** Fingerprints by what they heard, access point and whole value in one number, one after the other in memory. */
final class Points {

	static final int VALUE_BITS = 8;
	static final int VALUE = (1 << VALUE_BITS) - 1;

	/** By point: S = Σ v. */
	final int[] sum;
	final int[] start;
	/** Access point, then value in the lowest bits; ascending within a point. */
	final int[] entry;

	Points(int[] start, int[] entry) {
		this.start = start;
		this.entry = entry;
		sum = new int[start.length - 1];
		for (int p = 0; p < sum.length; p++) {
			for (int k = start[p]; k < start[p + 1]; k++) {
				sum[p] += entry[k] & VALUE;
			}
		}
	}

	static Points of(Signals signals, int[] samples) {
		SignalRows rows = signals.rows;
		int[] start = new int[samples.length + 1];
		for (int p = 0; p < samples.length; p++) {
			start[p + 1] = start[p] + rows.end(samples[p]) - rows.start(samples[p]);
		}
		int[] entry = new int[start[samples.length]];
		for (int p = 0; p < samples.length; p++) {
			write(signals, rows, samples[p], entry, start[p]);
		}
		return new Points(start, entry);
	}

	/** Writes the entries of a row in the frame of the signals. */
	static void write(Signals signals, SignalRows rows, int row, int[] into, int at) {
		for (int k = rows.start(row), to = at; k < rows.end(row); k++) {
			into[to++] = rows.column(k) << VALUE_BITS | (int) signals.value(rows.step(k));
		}
	}

	int size() {
		return sum.length;
	}

	/** The same in another order. */
	Points inOrder(int[] order) {
		int[] starts = new int[order.length + 1];
		int[] entries = new int[entry.length];
		for (int p = 0; p < order.length; p++) {
			int length = start[order[p] + 1] - start[order[p]];
			System.arraycopy(entry, start[order[p]], entries, starts[p], length);
			starts[p + 1] = starts[p] + length;
		}
		return new Points(starts, entries);
	}

	int[] quietestFirst() {
		long[] keys = new long[size()];
		Arrays.setAll(keys, p -> (long) sum[p] << 32 | p);
		Arrays.sort(keys);
		return Arrays.stream(keys).mapToInt(key -> (int) key).toArray();
	}
}
