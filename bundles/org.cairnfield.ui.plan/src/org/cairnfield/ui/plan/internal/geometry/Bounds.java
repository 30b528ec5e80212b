package org.cairnfield.ui.plan.internal.geometry;

/** A rectangle of the floor, in metres, y up. Empty where {@code left > right}. */
public record Bounds(double left, double bottom, double right, double top) {

	public static final Bounds EMPTY = new Bounds(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
			Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

	public boolean isEmpty() {
		return left > right || bottom > top;
	}

	public double width() {
		return right - left;
	}

	public double height() {
		return top - bottom;
	}

	/** The smallest that holds this and a point. */
	public Bounds with(double x, double y) {
		return new Bounds(Math.min(left, x), Math.min(bottom, y), Math.max(right, x), Math.max(top, y));
	}

	/** Larger on each side. */
	public Bounds grown(double metres) {
		return new Bounds(left - metres, bottom - metres, right + metres, top + metres);
	}

	/** What of it is in another one; empty where they do not touch. */
	public Bounds within(Bounds other) {
		return new Bounds(Math.max(left, other.left), Math.max(bottom, other.bottom), Math.min(right, other.right),
				Math.min(top, other.top));
	}

	public boolean contains(double x, double y) {
		return x >= left && x <= right && y >= bottom && y <= top;
	}

	/** Of two opposite corners in any order. */
	public static Bounds between(double x1, double y1, double x2, double y2) {
		return EMPTY.with(x1, y1).with(x2, y2);
	}
}
