package org.cairnfield.core.correlate;

import java.util.Arrays;
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
	private final Components components;
	private final DistanceKernel kernel;
	private final double[] row;
	private final int steps;
	/** G by access point and step. */
	private final double[] table;
	/** The access points of each component. */
	private final int[][] columns;
	private int own;
	private int component;

	OverlapProducts(Signals signals, RowMoments moments) {
		this.signals = signals;
		this.moments = moments;
		components = signals.components();
		kernel = signals.kernel();
		row = new double[components.largest()];
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
	public void begin(int sample) {
		own = sample;
		component = components.componentOf(sample);
		kernel.row(sample, row);
		for (int column : columns[component]) {
			fillTable(column);
		}
	}

	@Override
	public double with(int other) {
		int there = components.componentOf(other);
		SignalRows rows = signals.rows();
		double a = rows.magnitude(own);
		double b = rows.magnitude(other);
		if (there != component) {
			double rest = (double) moments.n - components.size(component) - components.size(there);
			double restSum = moments.totalSum - moments.componentSum[component] - moments.componentSum[there];
			double restSquares = moments.totalSquares - moments.componentSquares[component] - moments.componentSquares[there];
			return b * moments.ownSum[own] + moments.ownWeighted[own] + a * moments.ownSum[other]
					+ moments.ownWeighted[other] + rest * a * b + (a + b) * restSum + restSquares;
		}
		double overlap = 0;
		for (int k = rows.start(other), end = rows.end(other); k < end; k++) {
			overlap += table[rows.column(k) * steps + rows.step(k)];
		}
		double beyond = moments.n - components.size(component);
		double beyondSum = moments.totalSum - moments.componentSum[component];
		double beyondSquares = moments.totalSquares - moments.componentSquares[component];
		return b * moments.ownSum[own] + moments.ownWeighted[own] - 2 * overlap
				+ beyond * a * b + (a + b) * beyondSum + beyondSquares;
	}

	@Override
	public double distance(int other) {
		return components.componentOf(other) == component ? row[components.placeOf(other)] : signals.apart(own, other);
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
}
