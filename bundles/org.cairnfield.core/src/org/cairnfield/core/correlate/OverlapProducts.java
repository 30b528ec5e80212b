package org.cairnfield.core.correlate;

import java.util.Arrays;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;

/**
 * Row products for city-block distance without other rows. With S the magnitudes and
 * d(j, c) = S<sub>j</sub> + S<sub>c</sub> − 2·Σ<sub>a</sub> min(v<sub>ja</sub>, v<sub>ca</sub>),
 *
 * <pre>
 * Σc d(i,c)·d(j,c) = Sj·Σc d(i,c) + Σc Sc·d(i,c) − 2·Σa Ga(v_ja),   Ga(t) = Σc min(t, v_ca)·d(i,c)
 * </pre>
 *
 * The tables G<sub>a</sub> depend on i alone and take one pass over the postings (a histogram of d(i, ·) by
 * step, then sums from both ends). After that a product costs what j heard. Across components the product
 * has a closed form.
 */
final class OverlapProducts implements RowProducts {

	private final Signals signals;
	private final RowMoments moments;
	private final DistanceKernel kernel;
	private final double[] row;
	private final int steps;
	/** G by access point and step. */
	private final double[] table;
	/** The access points of each component. */
	private final int[][] columns;

	OverlapProducts(Signals signals, RowMoments moments) {
		this.signals = signals;
		this.moments = moments;
		kernel = signals.kernel();
		row = new double[signals.components().largest()];
		steps = signals.steps();
		int count = signals.map().accessPointCount();
		table = new double[count * steps];
		columns = columnsByComponent(signals, count);
	}

	private static int[][] columnsByComponent(Signals signals, int count) {
		int[] sizes = new int[signals.components().count()];
		for (int c = 0; c < count; c++) {
			if (signals.componentOfColumn(c) >= 0) {
				sizes[signals.componentOfColumn(c)]++;
			}
		}
		int[][] columns = new int[sizes.length][];
		Arrays.setAll(columns, c -> new int[sizes[c]]);
		for (int c = count - 1; c >= 0; c--) {
			int component = signals.componentOfColumn(c);
			if (component >= 0) {
				columns[component][--sizes[component]] = c;
			}
		}
		return columns;
	}

	@Override
	public double[] row() {
		return row;
	}

	@Override
	public void withAll(int sample, Clustering clustering, double[] out) {
		Components components = signals.components();
		int component = components.componentOf(sample);
		int members = kernel.row(sample, row);
		for (int column : columns[component]) {
			fillTable(column);
		}
		SignalRows rows = signals.rows();
		double magnitude = rows.magnitude(sample);
		double beyond = moments.n - members;
		double beyondSum = moments.totalSum - moments.componentSum[component];
		double beyondSquares = moments.totalSquares - moments.componentSquares[component];
		for (int place = 0; place < members; place++) {
			int other = components.member(component, place);
			if (!clustering.isNoise(other)) {
				double m = rows.magnitude(other);
				double overlap = 0;
				for (int k = rows.start(other), end = rows.end(other); k < end; k++) {
					overlap += table[rows.column(k) * steps + rows.step(k)];
				}
				out[other] = m * moments.ownSum[sample] + moments.ownWeighted[sample] - 2 * overlap
						+ beyond * magnitude * m + (magnitude + m) * beyondSum + beyondSquares;
			}
		}
		for (int c = 0; c < components.count(); c++) {
			if (c != component) {
				across(sample, component, c, clustering, out);
			}
		}
	}

	/** G of one access point. */
	private void fillTable(int column) {
		int base = column * steps;
		Arrays.fill(table, base, base + steps, 0);
		signals.sumByStep(column, row, table, base);
		double louder = 0; // Σ d of those that heard it louder than the step
		for (int t = 1; t < steps; t++) {
			louder += table[base + t];
		}
		double upTo = 0; // Σ value·d of those that heard it at most that loud
		for (int t = 1; t < steps; t++) {
			double here = table[base + t];
			louder -= here;
			upTo += signals.value(t) * here;
			table[base + t] = upTo + signals.value(t) * louder;
		}
	}

	private void across(int sample, int own, int component, Clustering clustering, double[] out) {
		Components components = signals.components();
		double a = signals.rows().magnitude(sample);
		double rest = (double) moments.n - components.size(own) - components.size(component);
		double restSum = moments.totalSum - moments.componentSum[own] - moments.componentSum[component];
		double restSquares = moments.totalSquares - moments.componentSquares[own]
				- moments.componentSquares[component];
		for (int place = 0; place < components.size(component); place++) {
			int other = components.member(component, place);
			if (!clustering.isNoise(other)) {
				double b = signals.rows().magnitude(other);
				out[other] = b * moments.ownSum[sample] + moments.ownWeighted[sample] + a * moments.ownSum[other]
						+ moments.ownWeighted[other] + rest * a * b + (a + b) * restSum + restSquares;
			}
		}
	}
}
