package org.cairnfield.ui.charts.scale;

import java.util.Arrays;

/**
 * Round values along a scale. Linear steps are 1, 2 or 5 times a power of ten, after Heckbert, "Nice numbers for graph
 * labels", Graphics Gems (1990).
 */
public final class Ticks {

	private static final int[] ROUND = { 1, 2, 5 };

	private final double[] values;
	private final int[] decimals;

	private Ticks(double[] values, int[] decimals) {
		this.values = values;
		this.decimals = decimals;
	}

	/** Multiples of a round step within the range, at most {@code most}, but at least one step is found. */
	static Ticks linear(double low, double high, int most) {
		double span = high - low;
		int exponent = (int) Math.floor(Math.log10(span / Math.max(1, most))) - 1;
		for (;; exponent++) {
			for (int factor : ROUND) {
				// dividing by a whole power of ten leaves no crumbs, as multiplying by a fraction would
				double over = exponent < 0 ? Math.pow(10, -exponent) / factor : 1 / (factor * Math.pow(10, exponent));
				double first = Math.ceil(low * over - 1e-9);
				double last = Math.floor(high * over + 1e-9);
				if (last - first + 1 <= Math.max(1, most)) {
					return multiples(first, (int) Math.max(0, last - first + 1), factor, exponent);
				}
			}
		}
	}

	private static Ticks multiples(double first, int count, int factor, int exponent) {
		double[] values = new double[count];
		int[] decimals = new int[count];
		Arrays.fill(decimals, Math.max(0, -exponent));
		for (int i = 0; i < count; i++) {
			double whole = (first + i) * factor;
			values[i] = exponent < 0 ? whole / Math.pow(10, -exponent) : whole * Math.pow(10, exponent);
		}
		return new Ticks(values, decimals);
	}

	/** Powers of ten, every so many where they are too many, with 2 and 5 between where they are few. */
	static Ticks logarithmic(double low, double high, int most) {
		int from = (int) Math.ceil(Math.log10(low) - 1e-9);
		int to = (int) Math.floor(Math.log10(high) + 1e-9);
		int decades = to - from + 1;
		if (decades < 2) {
			Ticks between = powers(from - 1, to + 1, 1, ROUND, low, high);
			return between.size() >= 2 && between.size() <= most ? between : linear(low, high, most);
		}
		Ticks fine = powers(from - 1, to + 1, 1, ROUND, low, high);
		if (fine.size() <= most) {
			return fine;
		}
		int every = Math.max(1, (decades + most - 1) / Math.max(1, most));
		return powers(from, to, every, new int[] { 1 }, low, high);
	}

	private static Ticks powers(int from, int to, int every, int[] factors, double low, double high) {
		double[] values = new double[(Math.max(0, to - from) + 1) * factors.length];
		int[] decimals = new int[values.length];
		int count = 0;
		for (int exponent = from; exponent <= to; exponent += every) {
			for (int factor : factors) {
				double value = exponent < 0 ? factor / Math.pow(10, -exponent) : factor * Math.pow(10, exponent);
				if (value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9)) {
					decimals[count] = Math.max(0, -exponent);
					values[count++] = value;
				}
			}
		}
		return new Ticks(Arrays.copyOf(values, count), Arrays.copyOf(decimals, count));
	}

	/** How many. */
	public int size() {
		return values.length;
	}

	/** Ascending. */
	public double value(int tick) {
		return values[tick];
	}

	/** Such as "−70". */
	public String label(int tick) {
		return ShownNumbers.text(values[tick], decimals[tick]);
	}

	/** Such as "−70 dBm". */
	public String label(int tick, String unit) {
		return ShownNumbers.text(values[tick], decimals[tick], unit);
	}

	/** Decimals that tell apart what lies a hundredth of a step apart, less than a pixel mostly. */
	public int readoutDecimals() {
		if (values.length < 2) {
			return Arrays.stream(decimals).max().orElse(0) + 1;
		}
		return (int) Math.max(0, Math.ceil(-Math.log10((values[1] - values[0]) / 100) - 1e-9));
	}
}
