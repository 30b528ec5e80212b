package org.cairnfield.core.distance;

import java.util.Arrays;

/**
 * Computes distances of one sample at a time to the samples of a map. Exact: with whole-number values every
 * sum is a whole number. Cost of a row: the postings of what the sample heard, plus the size of the
 * component. Holds nothing between calls, yet is made per thread by custom.
 */
public final class DistanceKernel {

	private final Signals signals;
	private final Distance distance;

	DistanceKernel(Signals signals) {
		this.signals = signals;
		this.distance = signals.distance();
	}

	/**
	 * Distances of a sample of the map to all members of its own component.
	 *
	 * @param out at least as long as the component; out[place] is set, what lies beyond is left alone
	 * @return the number set
	 */
	public int row(int sample, double[] out) {
		return row(signals.rows, sample, signals.components.componentOf(sample), out);
	}

	/**
	 * Distances of any fingerprint in this map's frame to all members of one component.
	 *
	 * @param out as in {@link #row(int, double[])}
	 * @return the number set
	 */
	public int row(SignalRows rows, int row, int component, double[] out) {
		Components components = signals.components;
		int n = components.size(component);
		Arrays.fill(out, 0, n, 0);
		boolean whole = components.count() == 1;
		int[] postingStart = signals.postingStart;
		int[] member = signals.postingMember;
		byte[] step = signals.postingStep;
		for (int k = rows.start[row]; k < rows.start[row + 1]; k++) {
			int column = rows.column[k];
			int from = postingStart[column];
			int to = postingStart[column + 1];
			if (whole || signals.componentOfColumn(column) == component) {
				double[] overlap = signals.overlap[rows.step[k]];
				for (int p = from; p < to; p++) {
					out[member[p]] += overlap[step[p]];
				}
			}
		}
		finish(rows.magnitude[row], component, n, out);
		return n;
	}

	private void finish(double magnitude, int component, int n, double[] out) {
		double[] magnitudes = signals.memberMagnitude;
		int base = signals.components.firstMember(component);
		if (distance.isSum()) {
			for (int i = 0; i < n; i++) {
				out[i] = magnitude + magnitudes[base + i] - 2 * out[i];
			}
		} else {
			for (int i = 0; i < n; i++) {
				out[i] = distance.finish(magnitude + magnitudes[base + i] - 2 * out[i]);
			}
		}
	}
}
