package org.cairnfield.core.distance;

import java.util.Locale;

/**
 * A distance between fingerprints that can be computed from what both heard. With values a, b of two
 * samples: d = finish(Σ magnitude(a) + Σ magnitude(b) − 2·Σ overlap(a, b)), the last sum over the access
 * points that both heard only. A further distance of that form is one more constant here.
 */
public enum Distance {

	/** Σ |a − b|, since |a − b| = a + b − 2·min(a, b) where both are at least 0. */
	CITY_BLOCK {
		@Override
		public double magnitude(double a) {
			return a;
		}

		@Override
		public double overlap(double a, double b) {
			return Math.min(a, b);
		}

		@Override
		public double finish(double sum) {
			return sum;
		}
	},

	/** √Σ (a − b)². */
	EUCLIDEAN {
		@Override
		public double magnitude(double a) {
			return a * a;
		}

		@Override
		public double overlap(double a, double b) {
			return a * b;
		}

		@Override
		public double finish(double sum) {
			return Math.sqrt(Math.max(0, sum)); // rounding may leave a hair below 0
		}
	};

	/** What a value adds to a fingerprint's magnitude. */
	public abstract double magnitude(double a);

	/** What an access point heard by both adds to their overlap; 0 where either value is 0. */
	public abstract double overlap(double a, double b);

	/** The distance, from magnitudes less twice the overlap. */
	public abstract double finish(double sum);

	/** Whether finish changes nothing: the distance is then linear in the overlaps. */
	public boolean isSum() {
		return this == CITY_BLOCK;
	}

	/** The distance of two fingerprints with nothing in common, from their magnitudes. */
	public double apart(double magnitudeA, double magnitudeB) {
		return finish(magnitudeA + magnitudeB);
	}

	/**
	 * By the names that {@link #toString} gives.
	 *
	 * @throws IllegalArgumentException naming the choices
	 */
	public static Distance named(String name) {
		for (Distance d : values()) {
			if (d.toString().equals(name.toLowerCase(Locale.ROOT))) {
				return d;
			}
		}
		throw new IllegalArgumentException("no distance '" + name + "': choose city-block or euclidean");
	}

	@Override
	public String toString() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}
}
