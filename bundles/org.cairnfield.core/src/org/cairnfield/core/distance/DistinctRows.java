package org.cairnfield.core.distance;

import java.util.Arrays;

/**
 * Which samples have equal readings. Rows are numbered by component; those of nothing heard are one, in a component behind all
 * others.
 *
 * @param rowOf     by sample
 * @param first     by row: its first sample
 * @param component by row, ascending
 */
record DistinctRows(int[] rowOf, int[] first, int[] component) {

	static DistinctRows of(Signals signals) {
		int n = signals.size();
		int[] component = new int[n];
		int nothing = signals.components.count();
		for (int s = 0; s < n; s++) {
			component[s] = signals.rows.magnitude[s] == 0 ? nothing : signals.components.componentOf(s);
		}
		int[] start = new int[nothing + 2];
		for (int c : component) {
			start[c + 1]++;
		}
		for (int c = 0; c <= nothing; c++) {
			start[c + 1] += start[c];
		}
		long[] keys = new long[n]; // by component, then hash, then sample
		int[] next = start.clone();
		for (int s = 0; s < n; s++) {
			keys[next[component[s]]++] = (long) signals.rows.hash(s) << 32 | s;
		}
		int[] rowOf = new int[n];
		int[] first = new int[n];
		int[] of = new int[n];
		int rows = 0;
		for (int c = 0; c <= nothing; c++) {
			Arrays.sort(keys, start[c], start[c + 1]);
			for (int i = start[c]; i < start[c + 1]; i++) {
				int sample = (int) keys[i];
				if (i == start[c] || !signals.rows.same((int) keys[i - 1], sample)) { // unequal rows of one hash may split equal ones
					first[rows] = sample;
					of[rows++] = c;
				}
				rowOf[sample] = rows - 1;
			}
		}
		return new DistinctRows(rowOf, Arrays.copyOf(first, rows), Arrays.copyOf(of, rows));
	}
}
