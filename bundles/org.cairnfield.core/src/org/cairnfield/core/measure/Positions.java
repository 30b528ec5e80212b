package org.cairnfield.core.measure;

import java.io.Serializable;

/**
 * Positions in columns: plane coordinates, floor and site of each. An estimate that could not be made has
 * NaN for x or y.
 */
public final class Positions implements Serializable {

	private static final long serialVersionUID = 1;

	private final double[] xMetres;
	private final double[] yMetres;
	private final int[] floor;
	private final int[] site;

	/**
	 * Copies its arguments.
	 *
	 * @param xMetres one for each position, in the frame of its site
	 * @param yMetres likewise
	 * @param floor   level
	 * @param site    any number that tells sites apart
	 * @throws IllegalArgumentException where the lengths differ or a coordinate is infinite
	 */
	public Positions(double[] xMetres, double[] yMetres, int[] floor, int[] site) {
		int n = xMetres.length;
		if (yMetres.length != n || floor.length != n || site.length != n) {
			throw new IllegalArgumentException("lengths differ: " + n + " x, " + yMetres.length + " y, "
					+ floor.length + " floors, " + site.length + " sites");
		}
		for (int i = 0; i < n; i++) {
			if (Double.isInfinite(xMetres[i]) || Double.isInfinite(yMetres[i])) {
				throw new IllegalArgumentException("position " + i + " is infinite");
			}
		}
		this.xMetres = xMetres.clone();
		this.yMetres = yMetres.clone();
		this.floor = floor.clone();
		this.site = site.clone();
	}

	/** How many. */
	public int size() {
		return xMetres.length;
	}

	/** Metres, or NaN. */
	public double x(int i) {
		return xMetres[i];
	}

	/** Metres, or NaN. */
	public double y(int i) {
		return yMetres[i];
	}

	/** The level. */
	public int floor(int i) {
		return floor[i];
	}

	/** The site's number. */
	public int site(int i) {
		return site[i];
	}

	/** False where no position is known. */
	public boolean isKnown(int i) {
		return !Double.isNaN(xMetres[i]) && !Double.isNaN(yMetres[i]);
	}
}
