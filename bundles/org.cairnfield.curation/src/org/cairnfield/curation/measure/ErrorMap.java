package org.cairnfield.curation.measure;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.core.stats.Percentile;
import org.cairnfield.curation.measure.SideBySide.Placed;

/**
 * Where one way of matching puts the test samples, each beside where it was taken. The errors are those that the way was
 * measured by.
 *
 * @param way    its name, such as "plain" or "release 1.0.0"
 * @param placed the test samples, in the order of the archive
 */
public record ErrorMap(String way, List<Placed> placed) {

	/** Test samples in a square of the heat, on average; fewer say little of a place, more say little of where it is bad. */
	private static final int SAMPLES_A_SQUARE = 4;
	private static final double SMALLEST_SIDE_METRES = 1;

	public ErrorMap {
		placed = List.copyOf(placed);
	}

	/** All test samples. */
	public static ErrorMap of(SideBySide side, Way way) {
		return new ErrorMap(way.name(),
				IntStream.range(0, side.keys().size()).mapToObj(s -> side.placed(way, s)).toList());
	}

	/** How many are put there. */
	public int count(Landing landing) {
		return (int) placed.stream().filter(each -> each.landing() == landing).count();
	}

	/** Of those that got a place; NaN for none. */
	public double meanMetres() {
		return Arrays.stream(errors()).average().orElse(Double.NaN);
	}

	/** 95 % of the errors; NaN likewise. */
	public double p95Metres() {
		double[] errors = errors();
		return errors.length == 0 ? Double.NaN : Percentile.of(errors, 95);
	}

	private double[] errors() {
		return placed.stream().mapToDouble(Placed::errorMetres).filter(error -> !Double.isNaN(error)).toArray();
	}

	/**
	 * Side of squares that hold some four test samples each on average: 1, 2 or 5 times a power of ten metres. It follows from
	 * where samples were taken alone, so it is the same for all ways.
	 */
	public double squareMetres() {
		double area = span(placed.stream().mapToDouble(Placed::xMetres).toArray())
				* span(placed.stream().mapToDouble(Placed::yMetres).toArray());
		return roundUp(Math.max(SMALLEST_SIDE_METRES, Math.sqrt(area * SAMPLES_A_SQUARE / Math.max(1, placed.size()))));
	}

	private static double span(double[] values) {
		return values.length == 0 ? 0
				: Arrays.stream(values).max().getAsDouble() - Arrays.stream(values).min().getAsDouble();
	}

	/** The next of 1, 2 and 5 times a power of ten that is not less. @param value above 0 */
	public static double roundUp(double value) {
		double power = Math.pow(10, Math.floor(Math.log10(value)));
		for (int factor : new int[] { 1, 2, 5 }) {
			if (factor * power >= value * (1 - 1e-9)) {
				return factor * power;
			}
		}
		return 10 * power;
	}

	/** Mean error in squares of the floor; for samples of one floor. @param sideMetres of the squares */
	public List<ErrorSquare> heat(double sideMetres) {
		return ErrorSquare.of(placed, sideMetres);
	}
}
