package org.cairnfield.core.distance;

import java.io.Serializable;
import java.util.Locale;
import org.cairnfield.core.map.RadioMap;

/**
 * How a level in dBm becomes the value that distances compare. All are increasing in the level and 0 where
 * an access point was not heard. With p = RSSI − (min − 1), min the lowest level of the map, and
 * z = −(min − 1):
 * <ul>
 * <li>positive: p, whole numbers from 1
 * <li>normalised: p / z
 * <li>exponential: (e<sup>p/α</sup> − 1) / e<sup>z/α</sup>; the −1 shifts "not heard" to 0 and leaves every
 * city-block and Euclidean distance as published
 * <li>powed: p<sup>β</sup> / z<sup>β</sup>
 * </ul>
 * Source: J. Torres-Sospedra, R. Montoliu, S. Trilles, Ó. Belmonte, J. Huerta, "Comprehensive analysis of
 * distance and similarity measures for Wi-Fi fingerprinting indoor positioning systems", Expert Systems
 * with Applications 42 (2015); α = 24 and β = e as there.
 */
public final class Representation implements Serializable {

	/** α of the publication. */
	public static final double PUBLISHED_ALPHA = 24;
	/** β of the publication. */
	public static final double PUBLISHED_BETA = Math.E;

	private static final long serialVersionUID = 1;

	private enum Kind {
		POSITIVE, NORMALISED, EXPONENTIAL, POWED
	}

	private final Kind kind;
	private final double parameter;

	private Representation(Kind kind, double parameter) {
		if (!(parameter > 0) || Double.isInfinite(parameter)) {
			throw new IllegalArgumentException("parameter must be positive: " + parameter);
		}
		this.kind = kind;
		this.parameter = parameter;
	}

	public static Representation positive() {
		return new Representation(Kind.POSITIVE, 1);
	}

	public static Representation normalised() {
		return new Representation(Kind.NORMALISED, 1);
	}

	/** @param alpha in dB, above 0 */
	public static Representation exponential(double alpha) {
		return new Representation(Kind.EXPONENTIAL, alpha);
	}

	/** @param beta exponent, above 0 */
	public static Representation powed(double beta) {
		return new Representation(Kind.POWED, beta);
	}

	/**
	 * By the names that {@link #toString} gives, parameters as published.
	 *
	 * @throws IllegalArgumentException naming the choices
	 */
	public static Representation named(String name) {
		return switch (name.toLowerCase(Locale.ROOT)) {
		case "positive" -> positive();
		case "normalised" -> normalised();
		case "exponential" -> exponential(PUBLISHED_ALPHA);
		case "powed" -> powed(PUBLISHED_BETA);
		default -> throw new IllegalArgumentException(
				"no representation '" + name + "': choose positive, normalised, exponential or powed");
		};
	}

	/**
	 * Values by p, for p = 0 … (0 − (min − 1)): index 0 is "not heard".
	 *
	 * @param lowestRssiDbm min, within −120 … 0
	 */
	double[] values(int lowestRssiDbm) {
		int zero = -(lowestRssiDbm - 1);
		double[] values = new double[RadioMap.HIGHEST_RSSI_DBM + zero + 1];
		for (int p = 1; p < values.length; p++) {
			values[p] = switch (kind) {
			case POSITIVE -> p;
			case NORMALISED -> (double) p / zero;
			case EXPONENTIAL -> (Math.exp(p / parameter) - 1) / Math.exp(zero / parameter);
			case POWED -> Math.pow(p, parameter) / Math.pow(zero, parameter);
			};
		}
		return values;
	}

	@Override
	public String toString() {
		return kind.name().toLowerCase(Locale.ROOT);
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Representation r && r.kind == kind && r.parameter == parameter;
	}

	@Override
	public int hashCode() {
		return kind.hashCode() * 31 + Double.hashCode(parameter);
	}
}
