package org.cairnfield.core.correlate;

import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * Sums over each row of the distance matrix, columns of the sample's own component apart from the rest,
 * whose distances follow from magnitudes.
 */
final class RowMoments {

	final int n;
	/** Σ d over the own component. */
	final double[] ownSum;
	/** Σ magnitude·d over the own component. */
	final double[] ownWeighted;
	/** Σ d over all samples. */
	final double[] sum;
	/** Σ d² over all samples. */
	final double[] squares;
	/** √(n·Σ d² − (Σ d)²); NaN where a row is constant. */
	final double[] spread;
	/** Per component: Σ magnitude, Σ magnitude². */
	final double[] componentSum;
	final double[] componentSquares;
	final double totalSum;
	final double totalSquares;

	private RowMoments(Signals signals) {
		n = signals.size();
		ownSum = new double[n];
		ownWeighted = new double[n];
		sum = new double[n];
		squares = new double[n];
		spread = new double[n];
		Components components = signals.components();
		componentSum = new double[components.count()];
		componentSquares = new double[components.count()];
		double total = 0;
		double squared = 0;
		for (int s = 0; s < n; s++) {
			double m = signals.rows().magnitude(s);
			componentSum[components.componentOf(s)] += m;
			componentSquares[components.componentOf(s)] += m * m;
			total += m;
			squared += m * m;
		}
		totalSum = total;
		totalSquares = squared;
	}

	static RowMoments of(Signals signals, Workers workers) {
		RowMoments moments = new RowMoments(signals);
		workers.progress().begin("row sums", moments.n);
		workers.forRanges(moments.n, () -> {
			DistanceKernel kernel = signals.kernel();
			double[] row = new double[signals.components().largest()];
			return (from, to) -> {
				for (int s = from; s < to; s++) {
					moments.add(signals, s, row, kernel.row(s, row));
				}
			};
		});
		return moments;
	}

	private void add(Signals signals, int sample, double[] row, int members) {
		Components components = signals.components();
		int component = components.componentOf(sample);
		double plain = 0;
		double weighted = 0;
		double squared = 0;
		for (int place = 0; place < members; place++) {
			double d = row[place];
			plain += d;
			squared += d * d;
			weighted += d * signals.magnitudeAt(component, place);
		}
		ownSum[sample] = plain;
		ownWeighted[sample] = weighted;
		sum[sample] = plain;
		squares[sample] = squared;
		for (int c = 0; c < components.count(); c++) {
			if (c != component) {
				addBeyond(signals, sample, c);
			}
		}
		double variance = difference(n, squares[sample], sum[sample], sum[sample]);
		spread[sample] = variance > 0 ? Math.sqrt(variance) : Double.NaN;
	}

	/** Σ over another component; a plain sum has a closed form, others are added one by one. */
	private void addBeyond(Signals signals, int sample, int component) {
		double m = signals.rows().magnitude(sample);
		int size = signals.components().size(component);
		if (signals.distance().isSum()) {
			sum[sample] += size * m + componentSum[component];
			squares[sample] += size * m * m + 2 * m * componentSum[component] + componentSquares[component];
			return;
		}
		for (int place = 0; place < size; place++) {
			double d = signals.distance().apart(m, signals.magnitudeAt(component, place));
			sum[sample] += d;
			squares[sample] += d * d;
		}
	}

	/** Pearson's r of two rows from their product; NaN where a row is constant. */
	double correlation(int a, int b, double product) {
		return Math.max(-1, Math.min(1, covariance(a, b, product) / spread[a] / spread[b]));
	}

	/** r times the spreads of both rows. */
	double covariance(int a, int b, double product) {
		return difference(n, product, sum[a], sum[b]);
	}

	/** a·b − c·d, the products to twice the precision: they nearly cancel. */
	private static double difference(double a, double b, double c, double d) {
		double first = a * b;
		double second = c * d;
		return (first - second) + (Math.fma(a, b, -first) - Math.fma(c, d, -second));
	}
}
