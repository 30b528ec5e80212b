package org.cairnfield.model.values;

/**
 * Where on Earth the frame of a site lies. Text form: the three numbers with blanks between them.
 *
 * @param latitudeDegrees  of the frame's origin, WGS 84, −90 … 90
 * @param longitudeDegrees likewise, −180 … 180
 * @param bearingDegrees   of the frame's y axis, clockwise from north, 0 … 360; x points 90° further
 */
public record Georeference(double latitudeDegrees, double longitudeDegrees, double bearingDegrees) {

	/** @throws IllegalArgumentException where an angle is out of range */
	public Georeference {
		latitudeDegrees = Numbers.within("latitude", latitudeDegrees, -90, 90);
		longitudeDegrees = Numbers.within("longitude", longitudeDegrees, -180, 180);
		bearingDegrees = Numbers.within("bearing", bearingDegrees, 0, 360);
	}

	/** @throws IllegalArgumentException for a text that is not three angles in range */
	public static Georeference parse(String text) {
		double[] n = Numbers.parse(text, "latitude", "longitude", "bearing");
		return new Georeference(n[0], n[1], n[2]);
	}

	/** The text form. */
	@Override
	public String toString() {
		return latitudeDegrees + " " + longitudeDegrees + " " + bearingDegrees;
	}
}
