package org.cairnfield.core.geometry;

import java.util.Arrays;

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
			throw new IllegalArgumentException("an outline needs three corners: " + xMetres.length + ", " + yMetres.length);
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
			twice += (xMetres[j] - xMetres[0]) * (yMetres[i] - yMetres[0]) - (xMetres[i] - xMetres[0]) * (yMetres[j] - yMetres[0]);
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

	private static double cross(double[] xs, double[] ys, int a, int b, int c) {
		return (xs[b] - xs[a]) * (ys[c] - ys[a]) - (ys[b] - ys[a]) * (xs[c] - xs[a]);
	}
}
