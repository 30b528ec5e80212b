package org.cairnfield.core.health;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

import org.cairnfield.core.map.RadioMap;

/**
 * Finds the samples around a sample on its floor, through a grid a floor. Made in n log n; a query looks at
 * about as many samples as it returns, more where many samples share one place.
 */
public final class PlaceIndex {

	private static final double SAMPLES_PER_CELL = 3;
	/** Samples beyond these shares of a floor's extent go to the edge cells, so that strays cost nothing. */
	private static final double STRAY_SHARE = 0.02;

	private final RadioMap map;
	private final Grid[] grids;
	private final int[] gridOf;

	public PlaceIndex(RadioMap map) {
		this.map = map;
		int n = map.size();
		gridOf = new int[n];
		Map<Long, Integer> number = new HashMap<>();
		for (int s = 0; s < n; s++) {
			long floor = (long) map.site(s) << 32 | map.floor(s) & 0xFFFF_FFFFL;
			Integer known = number.putIfAbsent(floor, number.size());
			gridOf[s] = known == null ? number.size() - 1 : known;
		}
		int[] sizes = new int[number.size()];
		for (int grid : gridOf) {
			sizes[grid]++;
		}
		int[][] members = new int[sizes.length][];
		for (int g = 0; g < sizes.length; g++) {
			members[g] = new int[sizes[g]];
		}
		Arrays.fill(sizes, 0);
		for (int s = 0; s < n; s++) {
			members[gridOf[s]][sizes[gridOf[s]]++] = s;
		}
		grids = new Grid[sizes.length];
		for (int g = 0; g < grids.length; g++) {
			grids[g] = new Grid(members[g]);
		}
	}

	/**
	 * The samples nearest in place to a sample, itself left out, others at exactly its place included: by
	 * distance, then by index.
	 *
	 * @param out takes as many as it is long; may be filled in part
	 * @return how many there are
	 */
	public int nearest(int sample, int[] out) {
		return grids[gridOf[sample]].nearest(sample, out);
	}

	private final class Grid {
		final double x0;
		final double y0;
		final double cell;
		final int columns;
		final int rows;
		final int[] start;
		final int[] member;

		Grid(int[] samples) {
			double[] xs = new double[samples.length];
			double[] ys = new double[samples.length];
			for (int i = 0; i < samples.length; i++) {
				xs[i] = map.x(samples[i]);
				ys[i] = map.y(samples[i]);
			}
			Arrays.sort(xs);
			Arrays.sort(ys);
			int low = (int) (samples.length * STRAY_SHARE);
			int high = samples.length - 1 - low;
			x0 = xs[low];
			y0 = ys[low];
			double width = xs[high] - x0;
			double depth = ys[high] - y0;
			double cells = Math.max(1, samples.length / SAMPLES_PER_CELL);
			// A floor that is one line has no area: then by its length.
			double side = Math.max(Math.sqrt(width * depth / cells), Math.max(width, depth) / cells);
			cell = side > 0 ? side : 1;
			columns = (int) (width / cell) + 1;
			rows = (int) (depth / cell) + 1;
			start = new int[columns * rows + 1];
			for (int s : samples) {
				start[cellOf(s) + 1]++;
			}
			for (int c = 0; c < columns * rows; c++) {
				start[c + 1] += start[c];
			}
			member = new int[samples.length];
			int[] next = Arrays.copyOf(start, columns * rows);
			for (int s : samples) {
				member[next[cellOf(s)]++] = s;
			}
		}

		private int column(double x) {
			return (int) Math.max(0, Math.min(columns - 1, Math.floor((x - x0) / cell)));
		}

		private int row(double y) {
			return (int) Math.max(0, Math.min(rows - 1, Math.floor((y - y0) / cell)));
		}

		private int cellOf(int sample) {
			return row(map.y(sample)) * columns + column(map.x(sample));
		}

		int nearest(int sample, int[] out) {
			double x = map.x(sample);
			double y = map.y(sample);
			int column = column(x);
			int row = row(y);
			double[] distance = new double[out.length];
			int count = 0;
			for (int ring = 0;; ring++) {
				for (int r = Math.max(0, row - ring); r <= Math.min(rows - 1, row + ring); r++) {
					boolean whole = Math.abs(r - row) == ring;
					for (int c = column - ring; c <= column + ring; c += whole || ring == 0 ? 1 : 2 * ring) {
						if (c >= 0 && c < columns) {
							count = look(r * columns + c, sample, out, distance, count);
						}
					}
				}
				double covered = Math.min(covered(x - x0, column, ring, columns), covered(y - y0, row, ring, rows));
				if (covered == Double.POSITIVE_INFINITY || count == out.length && count > 0
						&& distance[count - 1] < covered) {
					return count;
				}
			}
		}

		/** How far every sample has been looked at in one direction; edge cells go on for ever. */
		private double covered(double at, int middle, int ring, int cells) {
			double below = middle - ring <= 0 ? Double.POSITIVE_INFINITY : at - (middle - ring) * cell;
			double above = middle + ring >= cells - 1 ? Double.POSITIVE_INFINITY : (middle + ring + 1) * cell - at;
			return Math.min(below, above);
		}

		private int look(int cellNumber, int sample, int[] out, double[] distance, int found) {
			int count = found;
			for (int k = start[cellNumber]; k < start[cellNumber + 1]; k++) {
				int other = member[k];
				if (other == sample) {
					continue;
				}
				double d = Math.hypot(map.x(other) - map.x(sample), map.y(other) - map.y(sample));
				int at = count;
				while (at > 0 && (d < distance[at - 1] || d == distance[at - 1] && other < out[at - 1])) {
					at--;
				}
				if (at == out.length) {
					continue;
				}
				count = Math.min(out.length, count + 1);
				System.arraycopy(out, at, out, at + 1, count - 1 - at);
				System.arraycopy(distance, at, distance, at + 1, count - 1 - at);
				out[at] = other;
				distance[at] = d;
			}
			return count;
		}
	}
}
