package org.cairnfield.core.surface;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntConsumer;
import org.cairnfield.core.stats.Median;

/** Places where something is known, each once, found by where they are. */
final class KnownPlaces {

	/** So many tell how far apart they are. */
	private static final int SPACING_OF = 1000;

	private record At(double x, double y) {
	}

	final double[] x;
	final double[] y;
	/** Of each sample: its place. */
	final int[] placeOf;
	private final double bucket;
	private final Map<Long, int[]> buckets = new HashMap<>();
	final double spacing;

	/** @param x metres @param y metres */
	KnownPlaces(double[] x, double[] y) {
		Map<At, Integer> numbers = new LinkedHashMap<>();
		placeOf = new int[x.length];
		for (int i = 0; i < x.length; i++) {
			At at = new At(x[i], y[i]);
			numbers.putIfAbsent(at, numbers.size());
			placeOf[i] = numbers.get(at);
		}
		this.x = numbers.keySet().stream().mapToDouble(At::x).toArray();
		this.y = numbers.keySet().stream().mapToDouble(At::y).toArray();
		spacing = spacing();
		bucket = Math.max(1, 2 * spacing);
		for (int p = 0; p < size(); p++) {
			int place = p;
			buckets.merge(key(column(this.x[p]), column(this.y[p])), new int[] { p }, (before, one) -> {
				int[] both = Arrays.copyOf(before, before.length + 1);
				both[before.length] = place;
				return both;
			});
		}
	}

	int size() {
		return x.length;
	}

	/** Median distance of a place to the nearest other one; 1 m where there is only one. */
	private double spacing() {
		if (size() < 2) {
			return 1;
		}
		int step = Math.max(1, size() / SPACING_OF);
		double[] nearest = new double[(size() + step - 1) / step];
		for (int i = 0; i < nearest.length; i++) {
			nearest[i] = Double.POSITIVE_INFINITY;
			for (int other = 0; other < size(); other++) {
				if (other != i * step) {
					nearest[i] = Math.min(nearest[i], distance(other, x[i * step], y[i * step]));
				}
			}
		}
		return Median.of(nearest);
	}

	double distance(int place, double atX, double atY) {
		return Math.hypot(x[place] - atX, y[place] - atY);
	}

	private long column(double metres) {
		return (long) Math.floor(metres / bucket);
	}

	private static long key(long column, long row) {
		return column << 32 ^ row & 0xFFFF_FFFFL;
	}

	/** All places within a distance, in no order. */
	void within(double atX, double atY, double metres, IntConsumer found) {
		for (long row = column(atY - metres); row <= column(atY + metres); row++) {
			for (long column = column(atX - metres); column <= column(atX + metres); column++) {
				for (int place : buckets.getOrDefault(key(column, row), new int[0])) {
					if (distance(place, atX, atY) <= metres) {
						found.accept(place);
					}
				}
			}
		}
	}
}
