package org.cairnfield.core.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.stats.Percentile;

/**
 * The line that turns levels of one survey into those of another: slope times level plus shift, by the reduced major axis, since
 * both surveys err. Fitted to mean levels of what both heard well at the places that they share; points far off the line, such as
 * those of an access point that was moved, are left out. Where the slope cannot be told from 1, it is 1, and the shift the mean
 * difference.
 *
 * @param slope     dB of the other survey for one of this one
 * @param shiftDb   added after that
 * @param slopeLow  lower end of the interval of 95 % of the slope, over places
 * @param slopeHigh its upper end
 * @param middleDb  by how much the line changes a level in the middle of those seen, in dB
 * @param points    pairs of levels that it rests on
 */
public record LevelFit(double slope, double shiftDb, double slopeLow, double slopeHigh, double middleDb, int points) {

	private static final double WELL_DBM = -80;
	private static final int FEWEST_POINTS = 40;
	private static final double FAR_OFF = 3 * 1.4826; // three standard deviations, by the median of deviations
	private static final int RESAMPLES = 400;
	private static final long SEED = 11;
	/** Less than that a handset differs from itself from day to day. */
	private static final double LEAST_DB = 2;
	private static final double LEAST_SLOPE = 0.06;

	private record Point(int place, double from, double to) {
	}

	/**
	 * Fits the levels of a survey to those of another.
	 *
	 * @param metres how far apart samples of one place may be
	 * @return empty where too few levels are shared
	 */
	public static Optional<LevelFit> of(RadioMap survey, RadioMap other, double metres) {
		SharedPlaces places = SharedPlaces.of(other, survey, metres);
		List<Point> points = points(Presence.of(other, survey, places));
		if (points.size() < FEWEST_POINTS) {
			return Optional.empty();
		}
		points = near(points, line(points));
		double[] line = line(points);
		double[] slopes = slopes(points, places.size());
		double low = Percentile.of(slopes, 2.5);
		double high = Percentile.of(slopes, 97.5);
		if (low <= 1 + LEAST_SLOPE && high >= 1 - LEAST_SLOPE) {
			line = new double[] { 1, points.stream().mapToDouble(point -> point.to - point.from).average().orElse(0) };
		}
		double middle = Median.of(points.stream().mapToDouble(Point::from).toArray());
		return Optional
				.of(new LevelFit(line[0], line[1], low, high, line[0] * middle + line[1] - middle, points.size()));
	}

	private static List<Point> points(SortedMap<String, Presence> all) {
		List<Point> points = new ArrayList<>();
		for (Presence one : all.values()) {
			for (int i = 0; i < one.size(); i++) {
				if (one.isSteady(i, true) && one.isSteady(i, false)
						&& (one.level(i, true) + one.level(i, false)) / 2 >= WELL_DBM) {
					points.add(new Point(one.place(i), one.level(i, false), one.level(i, true)));
				}
			}
		}
		return points;
	}

	private static List<Point> near(List<Point> points, double[] line) {
		double[] off = points.stream().mapToDouble(point -> Math.abs(line[0] * point.from + line[1] - point.to))
				.toArray();
		double far = Math.max(1, FAR_OFF * Median.of(off));
		List<Point> near = new ArrayList<>();
		for (int i = 0; i < off.length; i++) {
			if (off[i] <= far) {
				near.add(points.get(i));
			}
		}
		return near;
	}

	/** Slope and shift. */
	private static double[] line(List<Point> points) {
		double from = points.stream().mapToDouble(Point::from).average().orElse(0);
		double to = points.stream().mapToDouble(Point::to).average().orElse(0);
		double spreadFrom = points.stream().mapToDouble(point -> (point.from - from) * (point.from - from)).sum();
		double spreadTo = points.stream().mapToDouble(point -> (point.to - to) * (point.to - to)).sum();
		double slope = spreadFrom == 0 ? 1 : Math.sqrt(spreadTo / spreadFrom);
		return new double[] { slope, to - slope * from };
	}

	/** Of places drawn with repetition, since levels of one place err together. */
	private static double[] slopes(List<Point> points, int places) {
		List<List<Point>> byPlace = new ArrayList<>();
		for (int p = 0; p < places; p++) {
			byPlace.add(new ArrayList<>());
		}
		points.forEach(point -> byPlace.get(point.place).add(point));
		byPlace.removeIf(List::isEmpty);
		Random random = new Random(SEED);
		double[] slopes = new double[RESAMPLES];
		Arrays.setAll(slopes, i -> {
			List<Point> drawn = new ArrayList<>();
			for (int p = 0; p < byPlace.size(); p++) {
				drawn.addAll(byPlace.get(random.nextInt(byPlace.size())));
			}
			return line(drawn)[0];
		});
		return slopes;
	}

	/** Whether the two read differently enough to correct one of them: by a slope. */
	public boolean hasSlope() {
		return slope != 1;
	}

	/** Likewise by an offset, in the middle of the levels seen. */
	public boolean hasOffset() {
		return Math.abs(middleDb) >= LEAST_DB;
	}
}
