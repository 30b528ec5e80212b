package org.cairnfield.model.values;

import java.util.Arrays;

import org.cairnfield.core.geometry.Polygon;

/**
 * Corners of a floor in metres, closed by a last side back to the first. Immutable. Text form:
 * {@code x,y x,y …}, for instance {@code 0.0,0.0 40.0,0.0 40.0,25.0 0.0,25.0}.
 */
public final class Outline {

	private final double[] xMetres;
	private final double[] yMetres;

	private Outline(double[] xMetres, double[] yMetres) {
		this.xMetres = xMetres;
		this.yMetres = yMetres;
	}

	/**
	 * @param xMetres finite, as many as yMetres; both are copied
	 * @throws IllegalArgumentException otherwise
	 */
	public static Outline of(double[] xMetres, double[] yMetres) {
		if (xMetres.length != yMetres.length) {
			throw new IllegalArgumentException(xMetres.length + " x for " + yMetres.length + " y");
		}
		return new Outline(Arrays.stream(xMetres).map(SampleChecks::position).toArray(),
				Arrays.stream(yMetres).map(SampleChecks::position).toArray());
	}

	/** @throws IllegalArgumentException telling the corner that is none */
	public static Outline parse(String text) {
		String[] corners = text.isBlank() ? new String[0] : text.strip().split("\\s+");
		double[] x = new double[corners.length];
		double[] y = new double[corners.length];
		for (int i = 0; i < corners.length; i++) {
			String[] numbers = corners[i].split(",", -1);
			try {
				x[i] = Double.parseDouble(numbers[0]);
				y[i] = Double.parseDouble(numbers.length == 2 ? numbers[1] : "");
			} catch (NumberFormatException e) {
				throw new IllegalArgumentException("a corner is x,y in metres: '" + corners[i] + "'", e);
			}
		}
		return of(x, y);
	}

	/** The number of corners. */
	public int size() {
		return xMetres.length;
	}

	/** Of corner {@code i}, in metres. */
	public double xMetres(int i) {
		return xMetres[i];
	}

	/** Of corner {@code i}, in metres. */
	public double yMetres(int i) {
		return yMetres[i];
	}

	/** The area enclosed, in m²; 0 for fewer than three corners. */
	public double areaSquareMetres() {
		return size() < 3 ? 0 : Math.abs(polygon().signedArea());
	}

	/** To compute with. @throws IllegalArgumentException for fewer than three corners */
	public Polygon polygon() {
		return new Polygon(xMetres, yMetres);
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Outline o && Arrays.equals(xMetres, o.xMetres) && Arrays.equals(yMetres, o.yMetres);
	}

	@Override
	public int hashCode() {
		return Arrays.hashCode(xMetres) * 31 + Arrays.hashCode(yMetres);
	}

	/** The text form. */
	@Override
	public String toString() {
		StringBuilder text = new StringBuilder();
		for (int i = 0; i < size(); i++) {
			text.append(i == 0 ? "" : " ").append(xMetres[i]).append(',').append(yMetres[i]);
		}
		return text.toString();
	}
}
