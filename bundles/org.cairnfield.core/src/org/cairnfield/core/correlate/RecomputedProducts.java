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
	private final double[] whole;
	private final double[] otherWhole;

	RecomputedProducts(Signals signals) {
		this.signals = signals;
		kernel = signals.kernel();
		row = new double[signals.components().largest()];
		whole = new double[signals.size()];
		otherWhole = new double[signals.size()];
	}

	@Override
	public void begin(int sample) {
		fill(sample, row, whole);
	}

	@Override
	public double with(int other) {
		fill(other, row, otherWhole);
		double sum = 0;
		for (int c = 0; c < whole.length; c++) {
			sum += whole[c] * otherWhole[c];
		}
		return sum;
	}

	@Override
	public double distance(int other) {
		return whole[other];
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
