package org.cairnfield.core.surface;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.task.Workers;

/**
 * How densely a floor was surveyed, and how strongly an access point seems to be heard between the places of the survey. Nothing
 * is said farther from a place than twice the distance that places usually are from each other.
 *
 * <p>Levels are spread by inverse distances, w = 1/d²: D. Shepard, "A two-dimensional interpolation function for irregularly-spaced
 * data", Proc. 23rd ACM National Conference, 1968, pp. 517–524, with the nearest few places only.
 */
public final class Surfaces {

	/** So many places at most have a say in a level. */
	static final int MOST_PLACES = 8;
	private static final int MOST_CELLS = 10_000;
	private static final double LEAST_REACH_METRES = 1;
	private static final double SPACINGS = 2;
	private static final double SQUARE_METRES = 100;
	/** So many places are left out in turn to tell the error. */
	private static final int MOST_LEFT_OUT = 2000;

	private Surfaces() {
	}

	/**
	 * Samples per 100 m², counted in a circle around the middle of each cell; NaN where it has none.
	 *
	 * @param x metres @param y metres
	 */
	public static Surface density(double[] x, double[] y, Workers workers) {
		KnownPlaces places = new KnownPlaces(x, y);
		int[] samples = new int[places.size()];
		for (int place : places.placeOf) {
			samples[place]++;
		}
		double reach = reach(places);
		double area = Math.PI * reach * reach;
		return filled(places, reach, Double.NaN, workers, (atX, atY) -> {
			int[] count = new int[1];
			places.within(atX, atY, reach, place -> count[0] += samples[place]);
			return count[0] == 0 ? Double.NaN : SQUARE_METRES * count[0] / area;
		});
	}

	/**
	 * Levels between the places where they were measured. A place that was scanned several times has the median of the scans that
	 * heard the access point, or of none where most did not. A cell has a level where the places that hear it weigh at least half.
	 *
	 * @param x   metres @param y metres
	 * @param dBm level of each sample, NaN where it is not heard
	 */
	public static Surface level(double[] x, double[] y, double[] dBm, Workers workers) {
		KnownPlaces places = new KnownPlaces(x, y);
		double[] levels = levels(places, dBm);
		double reach = reach(places);
		return filled(places, reach, error(places, levels, reach), workers,
				(atX, atY) -> level(places, levels, reach, atX, atY, -1));
	}

	private static double reach(KnownPlaces places) {
		return Math.max(LEAST_REACH_METRES, SPACINGS * places.spacing);
	}

	private static double[] levels(KnownPlaces places, double[] dBm) {
		int[] order = new int[dBm.length];
		int[] start = new int[places.size() + 1];
		for (int place : places.placeOf) {
			start[place + 1]++;
		}
		for (int p = 0; p < places.size(); p++) {
			start[p + 1] += start[p];
		}
		int[] next = start.clone();
		for (int s = 0; s < dBm.length; s++) {
			order[next[places.placeOf[s]]++] = s;
		}
		double[] levels = new double[places.size()];
		for (int p = 0; p < levels.length; p++) {
			double[] heard = Arrays.stream(order, start[p], start[p + 1]).mapToDouble(s -> dBm[s])
					.filter(level -> !Double.isNaN(level)).toArray();
			levels[p] = 2 * heard.length < start[p + 1] - start[p] ? Double.NaN : Median.of(heard);
		}
		return levels;
	}

	/** @param leftOut a place that has no say, −1 for none */
	private static double level(KnownPlaces places, double[] levels, double reach, double atX, double atY,
			int leftOut) {
		int[] near = new int[MOST_PLACES];
		double[] distance = new double[MOST_PLACES];
		int[] found = new int[1];
		places.within(atX, atY, reach, place -> {
			double d = places.distance(place, atX, atY);
			if (place == leftOut || found[0] == MOST_PLACES
					&& !isBefore(d, place, distance[MOST_PLACES - 1], near[MOST_PLACES - 1])) {
				return;
			}
			int at = found[0] == MOST_PLACES ? MOST_PLACES - 1 : found[0]++;
			for (; at > 0 && isBefore(d, place, distance[at - 1], near[at - 1]); at--) {
				near[at] = near[at - 1];
				distance[at] = distance[at - 1];
			}
			near[at] = place;
			distance[at] = d;
		});
		if (found[0] > 0 && distance[0] == 0) {
			return levels[near[0]];
		}
		double all = 0;
		double heard = 0;
		double sum = 0;
		for (int i = 0; i < found[0]; i++) {
			double weight = 1 / (distance[i] * distance[i]);
			all += weight;
			if (!Double.isNaN(levels[near[i]])) {
				heard += weight;
				sum += weight * levels[near[i]];
			}
		}
		return heard == 0 || 2 * heard < all ? Double.NaN : sum / heard;
	}

	private static boolean isBefore(double d, int place, double other, int otherPlace) {
		return d < other || d == other && place < otherPlace;
	}

	private static double error(KnownPlaces places, double[] levels, double reach) {
		int step = Math.max(1, places.size() / MOST_LEFT_OUT);
		double sum = 0;
		int told = 0;
		for (int p = 0; p < places.size(); p += step) {
			double level = Double.isNaN(levels[p]) ? Double.NaN
					: level(places, levels, reach, places.x[p], places.y[p], p);
			if (!Double.isNaN(level)) {
				sum += Math.abs(level - levels[p]);
				told++;
			}
		}
		return told == 0 ? Double.NaN : sum / told;
	}

	private static Surface filled(KnownPlaces places, double reach, double error, Workers workers,
			DoubleBinaryOperator valueAt) {
		if (places.size() == 0) {
			return new Surface(0, 0, 1, 0, 0, new double[0], reach, error);
		}
		double left = Arrays.stream(places.x).min().orElseThrow() - reach;
		double bottom = Arrays.stream(places.y).min().orElseThrow() - reach;
		double width = Arrays.stream(places.x).max().orElseThrow() + reach - left;
		double height = Arrays.stream(places.y).max().orElseThrow() + reach - bottom;
		double side = Math.max(0.5, Math.ceil(2 * Math.sqrt(width * height / MOST_CELLS)) / 2);
		int columns = (int) Math.ceil(width / side);
		int rows = (int) Math.ceil(height / side);
		double[] values = new double[columns * rows];
		workers.progress().begin(Messages.Surfaces_spreadingValuesOverTheFloor, rows);
		workers.forRanges(rows, () -> (from, to) -> {
			for (int row = from; row < to; row++) {
				for (int column = 0; column < columns; column++) {
					values[row * columns + column] = valueAt.applyAsDouble(left + (column + 0.5) * side,
							bottom + (row + 0.5) * side);
				}
			}
		});
		return new Surface(left, bottom, side, columns, rows, values, reach, error);
	}
}
