package org.cairnfield.core.cluster;

import java.util.stream.IntStream;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.Signals;

/**
 * Samples in signal space: those of a sample's own component through their distances, those beyond through
 * their magnitudes alone, quietest first.
 */
final class SignalPoints implements PointSet {

	private final Signals signals;
	private final Components components;
	/** All samples by ascending magnitude; empty where nobody is beyond. */
	private final int[] quietestFirst;

	SignalPoints(Signals signals) {
		this.signals = signals;
		components = signals.components();
		quietestFirst = components.count() == 1 ? new int[0] : IntStream.range(0, signals.size()).boxed()
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
	public Surroundings surroundings() {
		DistanceKernel kernel = signals.kernel();
		double[] distances = new double[components.largest()];
		return (sample, reach, visitor) -> {
			double within = visitOwn(kernel, distances, sample, reach, visitor);
			visitBeyond(sample, within, visitor);
		};
	}

	private double visitOwn(DistanceKernel kernel, double[] distances, int sample, double reach, Visitor visitor) {
		int component = components.componentOf(sample);
		int own = components.placeOf(sample);
		int n = kernel.row(sample, distances);
		double within = reach;
		for (int place = 0; place < n; place++) {
			if (distances[place] <= within && place != own) {
				within = visitor.visit(components.member(component, place), distances[place]);
			}
		}
		return within;
	}

	private void visitBeyond(int sample, double reach, Visitor visitor) {
		int component = components.componentOf(sample);
		double within = reach;
		for (int other : quietestFirst) {
			double d = signals.apart(sample, other);
			if (d > within) {
				return;
			}
			if (components.componentOf(other) != component) {
				within = visitor.visit(other, d);
			}
		}
	}
}
