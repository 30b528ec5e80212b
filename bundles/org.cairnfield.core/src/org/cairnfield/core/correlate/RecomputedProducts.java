package org.cairnfield.core.correlate;

import org.cairnfield.core.cluster.Clustering;
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
	private final double[] scratch;

	RecomputedProducts(Signals signals) {
		this.signals = signals;
		kernel = signals.kernel();
		row = new double[signals.components().largest()];
		scratch = new double[row.length];
		whole = new double[signals.size()];
		otherWhole = new double[signals.size()];
	}

	@Override
	public double[] row() {
		return row;
	}

	@Override
	public void withAll(int sample, Clustering clustering, double[] out) {
		fill(sample, row, whole);
		for (int other = 0; other < out.length; other++) {
			if (!clustering.isNoise(other)) {
				fill(other, scratch, otherWhole);
				double sum = 0;
				for (int c = 0; c < whole.length; c++) {
					sum += whole[c] * otherWhole[c];
				}
				out[other] = sum;
			}
		}
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
