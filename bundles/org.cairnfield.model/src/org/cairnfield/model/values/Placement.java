package org.cairnfield.model.values;

/**
 * How a plan image lies on its floor: a similarity. Pixel (c, r), r counted downwards, is at
 * (x, y) = (xMetres, yMetres) + scale · R(turn) · (c, −r), R turning anticlockwise. Text form: the four numbers with blanks
 * between them.
 *
 * @param metresPerPixel above 0
 * @param turnDegrees    anticlockwise, −360 … 360
 * @param xMetres        where the upper left corner of the image is, finite
 * @param yMetres        likewise
 */
public record Placement(double metresPerPixel, double turnDegrees, double xMetres, double yMetres) {

	/** @throws IllegalArgumentException where a number is out of range */
	public Placement {
		if (!(metresPerPixel > 0) || Double.isInfinite(metresPerPixel)) {
			throw new IllegalArgumentException("scale must be above 0 metres a pixel: " + metresPerPixel);
		}
		turnDegrees = Numbers.within("turn", turnDegrees, -360, 360);
		xMetres = SampleChecks.position(xMetres);
		yMetres = SampleChecks.position(yMetres);
	}

	/** @throws IllegalArgumentException for a text that is not four numbers in range */
	public static Placement parse(String text) {
		double[] n = Numbers.parse(text, "metres a pixel", "turn", "x", "y");
		return new Placement(n[0], n[1], n[2], n[3]);
	}

	/** x of a pixel, in metres. */
	public double xMetres(double column, double row) {
		double turn = Math.toRadians(turnDegrees);
		return xMetres + metresPerPixel * (Math.cos(turn) * column + Math.sin(turn) * row);
	}

	/** y of a pixel, in metres. */
	public double yMetres(double column, double row) {
		double turn = Math.toRadians(turnDegrees);
		return yMetres + metresPerPixel * (Math.sin(turn) * column - Math.cos(turn) * row);
	}

	/** The text form. */
	@Override
	public String toString() {
		return metresPerPixel + " " + turnDegrees + " " + xMetres + " " + yMetres;
	}
}
