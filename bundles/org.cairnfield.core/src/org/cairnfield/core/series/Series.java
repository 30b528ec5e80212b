package org.cairnfield.core.series;

import java.io.Serializable;
import java.util.Objects;

/** A named line of points, x ascending or not as the maker says. */
public final class Series implements Serializable {

	private static final long serialVersionUID = 1;

	private final String name;
	private final double[] x;
	private final double[] y;

	/**
	 * Copies its arguments.
	 *
	 * @throws IllegalArgumentException where the lengths differ
	 */
	public Series(String name, double[] x, double[] y) {
		if (x.length != y.length) {
			throw new IllegalArgumentException("lengths differ: " + x.length + " x, " + y.length + " y");
		}
		this.name = Objects.requireNonNull(name);
		this.x = x.clone();
		this.y = y.clone();
	}

	/** For a legend. */
	public String name() {
		return name;
	}

	/** How many points. */
	public int size() {
		return x.length;
	}

	/** In the unit the maker says. */
	public double x(int point) {
		return x[point];
	}

	/** In the unit the maker says. */
	public double y(int point) {
		return y[point];
	}

	/** All x; a copy. */
	public double[] xs() {
		return x.clone();
	}

	/** All y; a copy. */
	public double[] ys() {
		return y.clone();
	}
}
