package org.cairnfield.core.cluster;

import java.util.stream.IntStream;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.Signals;

/**
 * Samples in signal space where there is no index, each a point: those of a sample's own component through their distances, those
 * beyond through their magnitudes alone, quietest first.
 */
final class RowPoints extends ScannedPoints {

	private final Signals signals;
	private final Components components;
	/** All samples by ascending magnitude; empty where nobody is beyond. */
	private final int[] quietestFirst;

	RowPoints(Signals signals) {
		this.signals = signals;
		components = signals.components();
		quietestFirst = components.count() == 1 ? new int[0]
				: IntStream.range(0, signals.size()).boxed()
						.sorted((a, b) -> {
							int by = Double.compare(signals.rows().magnitude(a), signals.rows().magnitude(b));
							return by != 0 ? by : Integer.compare(a, b);
						}).mapToInt(Integer::intValue).toArray();
	}

	@Override
	public int size() {
		return signals.size();
	}

	@Override
	Scan scan() {
		DistanceKernel kernel = signals.kernel();
		double[] distances = new double[components.largest()];
		return (sample, reach, found) -> {
			scanOwn(kernel, distances, sample, reach, found);
			scanBeyond(sample, reach, found);
		};
	}

	private void scanOwn(DistanceKernel kernel, double[] distances, int sample, double reach, Found found) {
		int component = components.componentOf(sample);
		int own = components.placeOf(sample);
		int n = kernel.row(sample, distances);
		for (int place = 0; place < n; place++) {
			if (distances[place] <= reach && place != own) {
				found.add(components.member(component, place), distances[place]);
			}
		}
	}

	private void scanBeyond(int sample, double reach, Found found) {
		int component = components.componentOf(sample);
		for (int other : quietestFirst) {
			double d = signals.apart(sample, other);
			if (d > reach) {
				return;
			}
			if (components.componentOf(other) != component) {
				found.add(other, d);
			}
		}
	}
}
