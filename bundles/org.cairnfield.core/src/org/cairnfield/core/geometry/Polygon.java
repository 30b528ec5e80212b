package org.cairnfield.core.geometry;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A closed outline, as a rule in metres of a floor's frame; corners in order, the first not repeated. It may be drawn either way
 * round. Immutable.
 */
public final class Polygon {

	private final double[] xMetres;
	private final double[] yMetres;

	/** @throws IllegalArgumentException for fewer than three corners, or lists of different length */
	public Polygon(double[] xMetres, double[] yMetres) {
		if (xMetres.length != yMetres.length || xMetres.length < 3) {
			throw new IllegalArgumentException(
					"an outline needs three corners: " + xMetres.length + ", " + yMetres.length);
		}
		this.xMetres = xMetres.clone();
		this.yMetres = yMetres.clone();
	}

	public static Polygon rectangle(double x0, double y0, double x1, double y1) {
		return new Polygon(new double[] { x0, x1, x1, x0 }, new double[] { y0, y0, y1, y1 });
	}

	/** The number of corners. */
	public int size() {
		return xMetres.length;
	}

	/** Of a corner. */
	public double xMetres(int corner) {
		return xMetres[corner];
	}

	/** Of a corner. */
	public double yMetres(int corner) {
		return yMetres[corner];
	}

	/** Whether the place lies inside, by the even-odd rule. On an edge it may be either. */
	public boolean contains(double x, double y) {
		boolean inside = false;
		for (int i = 0, j = xMetres.length - 1; i < xMetres.length; j = i++) {
			if (yMetres[i] > y != yMetres[j] > y
					&& x < (xMetres[j] - xMetres[i]) * (y - yMetres[i]) / (yMetres[j] - yMetres[i]) + xMetres[i]) {
				inside = !inside;
			}
		}
		return inside;
	}

	/** Metres from the place to the nearest edge, whichever side it is on. */
	public double metresToEdge(double x, double y) {
		double nearest = Double.POSITIVE_INFINITY;
		for (int i = 0, j = xMetres.length - 1; i < xMetres.length; j = i++) {
			double dx = xMetres[j] - xMetres[i];
			double dy = yMetres[j] - yMetres[i];
			double squared = dx * dx + dy * dy;
			double share = squared == 0 ? 0 : ((x - xMetres[i]) * dx + (y - yMetres[i]) * dy) / squared;
			double at = Math.max(0, Math.min(1, share));
			nearest = Math.min(nearest, Math.hypot(x - xMetres[i] - at * dx, y - yMetres[i] - at * dy));
		}
		return nearest;
	}

	/** The area enclosed, m², by the surveyor's formula: below 0 where the corners go clockwise, y pointing up. */
	public double signedArea() {
		double twice = 0;
		for (int i = 0, j = xMetres.length - 1; i < xMetres.length; j = i++) {
			// from the first corner, so that a frame far from its origin costs no digits
			twice += (xMetres[j] - xMetres[0]) * (yMetres[i] - yMetres[0])
					- (xMetres[i] - xMetres[0]) * (yMetres[j] - yMetres[0]);
		}
		return twice / 2;
	}

	/** The smallest x, smallest y, largest x, largest y. */
	public double[] bounds() {
		return new double[] { Arrays.stream(xMetres).min().orElseThrow(), Arrays.stream(yMetres).min().orElseThrow(),
				Arrays.stream(xMetres).max().orElseThrow(), Arrays.stream(yMetres).max().orElseThrow() };
	}

	/** The smallest convex outline around places (Andrew's monotone chain), or null where they lie on one line. */
	public static Polygon around(double[] xs, double[] ys) {
		Integer[] order = new Integer[xs.length];
		Arrays.setAll(order, i -> i);
		Arrays.sort(order, (a, b) -> xs[a] != xs[b] ? Double.compare(xs[a], xs[b]) : Double.compare(ys[a], ys[b]));
		int[] hull = new int[2 * order.length + 2];
		int size = 0;
		for (int turn = 0; turn < 2; turn++) {
			int floor = size + 1;
			for (int i = 0; i < order.length; i++) {
				int next = order[turn == 0 ? i : order.length - 1 - i];
				while (size > floor && cross(xs, ys, hull[size - 2], hull[size - 1], next) <= 0) {
					size--;
				}
				hull[size++] = next;
			}
			size--;
		}
		if (size < 3) {
			return null;
		}
		double[] x = new double[size];
		double[] y = new double[size];
		for (int i = 0; i < size; i++) {
			x[i] = xs[hull[i]];
			y[i] = ys[hull[i]];
		}
		return new Polygon(x, y);
	}

	/**
	 * A convex outline with room around places: that around squares, along the axes, whose middles the places are. So every place is
	 * at least the margin away from the outline, and places on one line have one too.
	 *
	 * @param marginMetres half the side of the squares; 0 or more
	 * @return null without a place, or for places on one line without a margin
	 */
	public static Polygon around(double[] xs, double[] ys, double marginMetres) {
		Polygon tight = around(xs, ys);
		double[] x = tight == null ? xs : tight.xMetres;
		double[] y = tight == null ? ys : tight.yMetres;
		double[] wideX = new double[4 * x.length];
		double[] wideY = new double[4 * x.length];
		for (int i = 0; i < wideX.length; i++) {
			wideX[i] = x[i / 4] + (i % 2 == 0 ? -marginMetres : marginMetres);
			wideY[i] = y[i / 4] + (i % 4 < 2 ? -marginMetres : marginMetres);
		}
		return around(wideX, wideY);
	}

	/** Whether two sides meet anywhere but in the corner that they share; corners drawn twice in a row count once. */
	public boolean crossesItself() {
		int[] corners = IntStream.range(0, size()).filter(i -> {
			int before = i == 0 ? size() - 1 : i - 1;
			return xMetres[i] != xMetres[before] || yMetres[i] != yMetres[before];
		}).toArray();
		int n = corners.length;
		for (int i = 0; i < n; i++) {
			for (int j = i + 1; j < n; j++) {
				int end = corners[(i + 1) % n];
				int otherEnd = corners[(j + 1) % n];
				boolean crosses = j == i + 1 ? isFold(corners[i], end, otherEnd)
						: otherEnd == corners[i] ? isFold(corners[j], otherEnd, end)
								: meet(corners[i], end, corners[j], otherEnd);
				if (crosses) {
					return true;
				}
			}
		}
		return false;
	}

	/** Whether the side from b to c runs back over that from a to b. */
	private boolean isFold(int a, int b, int c) {
		return cross(xMetres, yMetres, a, b, c) == 0
				&& (xMetres[b] - xMetres[a]) * (xMetres[c] - xMetres[b])
						+ (yMetres[b] - yMetres[a]) * (yMetres[c] - yMetres[b]) < 0;
	}

	/** Whether the sides from a to b and from c to d have a place in common. */
	private boolean meet(int a, int b, int c, int d) {
		double toC = Math.signum(cross(xMetres, yMetres, a, b, c));
		double toD = Math.signum(cross(xMetres, yMetres, a, b, d));
		double toA = Math.signum(cross(xMetres, yMetres, c, d, a));
		double toB = Math.signum(cross(xMetres, yMetres, c, d, b));
		return toC * toD < 0 && toA * toB < 0 || toC == 0 && isBetween(a, b, c) || toD == 0 && isBetween(a, b, d)
				|| toA == 0 && isBetween(c, d, a)
				|| toB == 0 && isBetween(c, d, b);
	}

	/** Whether a corner on the line through two others lies between them. */
	private boolean isBetween(int a, int b, int on) {
		return Math.min(xMetres[a], xMetres[b]) <= xMetres[on] && xMetres[on] <= Math.max(xMetres[a], xMetres[b])
				&& Math.min(yMetres[a], yMetres[b]) <= yMetres[on] && yMetres[on] <= Math.max(yMetres[a], yMetres[b]);
	}

	private static double cross(double[] xs, double[] ys, int a, int b, int c) {
		return (xs[b] - xs[a]) * (ys[c] - ys[a]) - (ys[b] - ys[a]) * (xs[c] - xs[a]);
	}
}
