package org.cairnfield.core.correlate;

import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.Signals;

/**
 * Row products for a distance that is no plain sum: every other row is computed again. Correct for all,
 * but n² a noise sample; meant for maps of a few thousand samples.
 */
final class RecomputedProducts implements RowProducts {

	private final Signals signals;
	private final DistanceKernel kernel;
	private final double[] row;
	private final double[][] whole;
	private final double[] otherWhole;
	private int count;

	RecomputedProducts(Signals signals) {
		this.signals = signals;
		kernel = signals.kernel();
		row = new double[signals.components().largest()];
		whole = new double[BATCH][signals.size()];
		otherWhole = new double[signals.size()];
	}

	@Override
	public void begin(int[] samples) {
		count = samples.length;
		for (int i = 0; i < count; i++) {
			fill(samples[i], row, whole[i]);
		}
	}

	@Override
	public void with(int other, double[] out) {
		fill(other, row, otherWhole);
		for (int i = 0; i < count; i++) {
			out[i] = product(whole[i]);
		}
	}

	@Override
	public double with(int i, int other) {
		fill(other, row, otherWhole);
		return product(whole[i]);
	}

	private double product(double[] first) {
		double sum = 0;
		for (int c = 0; c < otherWhole.length; c++) {
			sum += first[c] * otherWhole[c];
		}
		return sum;
	}

	@Override
	public double distance(int i, int other) {
		return whole[i][other];
	}

	private void fill(int sample, double[] own, double[] all) {
		Components components = signals.components();
		kernel.row(sample, own);
		int component = components.componentOf(sample);
		for (int c = 0; c < all.length; c++) {
			all[c] = components.componentOf(c) == component ? own[components.placeOf(c)] : signals.apart(sample, c);
		}
	}
}
