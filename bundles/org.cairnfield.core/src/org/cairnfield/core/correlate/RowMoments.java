package org.cairnfield.core.correlate;

import java.util.List;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.distance.StepLists;
import org.cairnfield.core.task.Workers;

/**
 * Sums over each row of the distance matrix, columns of the sample's own component apart from the rest,
 * whose distances follow from magnitudes.
 */
final class RowMoments {

	/** All samples, those elsewhere included. */
	final long n;
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

	private RowMoments(Signals signals, SampleSums elsewhere) {
		int size = signals.size();
		n = size + elsewhere.samples();
		ownSum = new double[size];
		ownWeighted = new double[size];
		sum = new double[size];
		squares = new double[size];
		spread = new double[size];
		Components components = signals.components();
		componentSum = new double[components.count()];
		componentSquares = new double[components.count()];
		double total = elsewhere.sum();
		double squared = elsewhere.squares();
		for (int s = 0; s < size; s++) {
			double m = signals.rows().magnitude(s);
			componentSum[components.componentOf(s)] += m;
			componentSquares[components.componentOf(s)] += m * m;
			total += m;
			squared += m * m;
		}
		totalSum = total;
		totalSquares = squared;
	}

	/** @param elsewhere none unless the distance is a plain sum */
	static RowMoments of(Signals signals, StepLists lists, SampleSums elsewhere, Workers workers) {
		RowMoments moments = new RowMoments(signals, elsewhere);
		List<int[]> batches = SampleBatches.of(signals, s -> true);
		workers.progress().begin(Messages.RowMoments_rowSums, batches.size());
		workers.forRanges(batches.size(), () -> {
			DistanceRows rows = signals.distanceRows(lists);
			double[][] sums = new double[3][DistanceRows.BATCH];
			return (from, to) -> {
				for (int i = from; i < to; i++) {
					rows.begin(batches.get(i));
					rows.moments(sums[0], sums[1], sums[2]);
					moments.add(signals, batches.get(i), sums);
				}
			};
		});
		return moments;
	}

	private void add(Signals signals, int[] samples, double[][] sums) {
		for (int i = 0; i < samples.length; i++) {
			ownSum[samples[i]] = sums[0][i];
			ownWeighted[samples[i]] = sums[2][i];
			sum[samples[i]] = sums[0][i];
			squares[samples[i]] = sums[1][i];
			addElsewhere(signals, samples[i]);
		}
	}

	private void addElsewhere(Signals signals, int sample) {
		int component = signals.components().componentOf(sample);
		if (signals.distance().isSum()) {
			addBeyond(sample, signals.rows().magnitude(sample), signals.components().size(component), component);
		} else {
			addOneByOne(signals, sample, component);
		}
		double variance = difference(n, squares[sample], sum[sample], sum[sample]);
		spread[sample] = variance > 0 ? Math.sqrt(variance) : Double.NaN;
	}

	/** Σ over all that is out of earshot. */
	private void addBeyond(int sample, double m, int members, int component) {
		double beyond = totalSum - componentSum[component];
		sum[sample] += (n - members) * m + beyond;
		squares[sample] += (n - members) * m * m + 2 * m * beyond + totalSquares - componentSquares[component];
	}

	private void addOneByOne(Signals signals, int sample, int component) {
		for (int c = 0; c < signals.components().count(); c++) {
			for (int place = 0; c != component && place < signals.components().size(c); place++) {
				double d = signals.distance().apart(signals.rows().magnitude(sample), signals.magnitudeAt(c, place));
				sum[sample] += d;
				squares[sample] += d * d;
			}
		}
	}

	/** The row of a sample, for correlations with rows elsewhere. */
	RowSums row(Signals signals, int sample) {
		int component = signals.components().componentOf(sample);
		return new RowSums(signals.rows().magnitude(sample), ownSum[sample], ownWeighted[sample], sum[sample],
				spread[sample],
				new SampleSums(signals.components().size(component), componentSum[component],
						componentSquares[component]));
	}

	/** Pearson's r of two rows from their product; NaN where a row is constant. */
	double correlation(int a, int b, double product) {
		return correlation(covariance(a, b, product), spread[a], spread[b]);
	}

	static double correlation(double covariance, double spreadA, double spreadB) {
		return Math.max(-1, Math.min(1, covariance / spreadA / spreadB));
	}

	/** r times the spreads of both rows. */
	double covariance(int a, int b, double product) {
		return covariance(n, product, sum[a], sum[b]);
	}

	static double covariance(double n, double product, double sumA, double sumB) {
		return difference(n, product, sumA, sumB);
	}

	/** a·b − c·d, the products to twice the precision: they nearly cancel. */
	private static double difference(double a, double b, double c, double d) {
		double first = a * b;
		double second = c * d;
		return (first - second) + (Math.fma(a, b, -first) - Math.fma(c, d, -second));
	}
}
