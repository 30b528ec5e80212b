package org.cairnfield.core.correlate;

import java.util.Arrays;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceRows;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.distance.StepLists;

/**
 * Row products for city-block distance without other rows. With S the magnitudes and
 * d(j, c) = S<sub>j</sub> + S<sub>c</sub> − 2·Σ<sub>a</sub> min(v<sub>ja</sub>, v<sub>ca</sub>),
 *
 * <pre>
 * Σc d(i,c)·d(j,c) = Sj·Σc d(i,c) + Σc Sc·d(i,c) − 2·Σa Ga(v_ja),   Ga(t) = Σc min(t, v_ca)·d(i,c)
 * </pre>
 *
 * The tables G<sub>a</sub> depend on i alone and take one pass over the postings (sums of d(i, ·) by
 * step, then sums from both ends); that of a few i at once costs little more. After that a product costs what j heard. Across components the product
 * has a closed form.
 */
final class OverlapProducts implements RowProducts {

	private final Signals signals;
	private final RowMoments moments;
	private final Components components;
	private final DistanceRows rows;
	private final int steps;
	/** G by access point among those of its component and step, then by place in the batch. */
	private final double[] table;
	/** The access points of each component, and where each is among them. */
	private final int[][] columns;
	private final int[] placeOfColumn;
	private int[] own;
	private int component;

	OverlapProducts(Signals signals, StepLists lists, RowMoments moments) {
		this.signals = signals;
		this.moments = moments;
		components = signals.components();
		rows = signals.distanceRows(lists);
		steps = signals.steps();
		int count = signals.map().accessPointCount();
		columns = columnsByComponent(signals, count);
		placeOfColumn = new int[count];
		int most = 0;
		for (int[] some : columns) {
			for (int place = 0; place < some.length; place++) {
				placeOfColumn[some[place]] = place;
			}
			most = Math.max(most, some.length);
		}
		table = new double[most * steps * BATCH];
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
	public void begin(int[] samples) {
		own = samples;
		component = components.componentOf(samples[0]);
		rows.begin(samples);
		for (int column : columns[component]) {
			fillTable(column);
		}
	}

	@Override
	public void with(int other, double[] out) {
		boolean near = components.componentOf(other) == component;
		if (near) {
			addOverlaps(other, out);
		}
		for (int i = 0; i < own.length; i++) {
			out[i] = near ? within(i, other, out[i]) : beyond(i, other);
		}
	}

	@Override
	public double with(int i, int other) {
		if (components.componentOf(other) != component) {
			return beyond(i, other);
		}
		SignalRows all = signals.rows();
		double overlaps = 0;
		for (int k = all.start(other), end = all.end(other); k < end; k++) {
			overlaps += table[at(all.column(k), all.step(k)) + i];
		}
		return within(i, other, overlaps);
	}

	/** @param overlaps Σ G over what the other heard */
	private double within(int i, int other, double overlaps) {
		double a = signals.rows().magnitude(own[i]);
		double b = signals.rows().magnitude(other);
		double beyond = moments.n - components.size(component);
		double beyondSum = moments.totalSum - moments.componentSum[component];
		double beyondSquares = moments.totalSquares - moments.componentSquares[component];
		return b * moments.ownSum[own[i]] + moments.ownWeighted[own[i]] - 2 * overlaps + beyond * a * b
				+ (a + b) * beyondSum + beyondSquares;
	}

	private double beyond(int i, int other) {
		int there = components.componentOf(other);
		double rest = (double) moments.n - components.size(component) - components.size(there);
		double restSum = moments.totalSum - moments.componentSum[component] - moments.componentSum[there];
		double restSquares = moments.totalSquares - moments.componentSquares[component]
				- moments.componentSquares[there];
		return RowSums.product(signals.rows().magnitude(own[i]), moments.ownSum[own[i]], moments.ownWeighted[own[i]],
				signals.rows().magnitude(other),
				moments.ownSum[other], moments.ownWeighted[other], rest, restSum, restSquares);
	}

	private void addOverlaps(int other, double[] out) {
		SignalRows all = signals.rows();
		Arrays.fill(out, 0);
		for (int k = all.start(other), end = all.end(other); k < end; k++) {
			int at = at(all.column(k), all.step(k));
			for (int i = 0; i < BATCH; i++) {
				out[i] += table[at + i];
			}
		}
	}

	private int at(int column, int step) {
		return (placeOfColumn[column] * steps + step) * BATCH;
	}

	@Override
	public double distance(int i, int other) {
		return components.componentOf(other) == component ? rows.distance(i, components.placeOf(other))
				: signals.apart(own[i], other);
	}

	/** G of one access point, for all rows of the batch. */
	private void fillTable(int column) {
		double[] louder = new double[BATCH]; // Σ d of those that heard it louder than the step
		double[] upTo = new double[BATCH]; // Σ value·d of those that heard it at most that loud
		for (int t = 1; t < steps; t++) {
			int at = at(column, t);
			rows.sum(column, t, table, at);
			for (int i = 0; i < BATCH; i++) {
				louder[i] += table[at + i];
			}
		}
		for (int t = 1; t < steps; t++) {
			int at = at(column, t);
			double value = signals.value(t);
			for (int i = 0; i < BATCH; i++) {
				double here = table[at + i];
				louder[i] -= here;
				upTo[i] += value * here;
				table[at + i] = upTo[i] + value * louder[i];
			}
		}
	}
}
