package org.cairnfield.ui.charts.colour;

/** Shapes that can be told apart when small. All are for filling; a hollow ring means noise and is none of these. */
public enum Marker {
	CIRCLE(polygon(24, 0.9, 0)), SQUARE(polygon(4, 1.1, 45)), TRIANGLE(polygon(3, 1.15, -90)),
	DIAMOND(polygon(4, 1.2, 0)), WEDGE(polygon(3, 1.15, 90)), PLUS(arms(0)), CROSS(arms(45)), STAR(star());

	private final double[] outline;

	Marker(double[] outline) {
		this.outline = outline;
	}

	/** Corners x, y, x, y … around the origin, y downwards, of about radius 1. */
	public double[] outline() {
		return outline.clone();
	}

	private static double[] polygon(int corners, double radius, double fromDegrees) {
		double[] points = new double[2 * corners];
		for (int i = 0; i < corners; i++) {
			put(points, i, radius, fromDegrees + 360.0 * i / corners);
		}
		return points;
	}

	private static double[] star() {
		double[] points = new double[20];
		for (int i = 0; i < 10; i++) {
			put(points, i, i % 2 == 0 ? 1.25 : 0.5, -90 + 36.0 * i);
		}
		return points;
	}

	private static double[] arms(double turnedDegrees) {
		double wide = Math.toDegrees(Math.atan2(0.36, 1.1));
		double[] points = new double[24];
		for (int arm = 0; arm < 4; arm++) {
			double along = turnedDegrees + 90.0 * arm;
			put(points, 3 * arm, Math.hypot(0.36, 1.1), along - wide);
			put(points, 3 * arm + 1, Math.hypot(0.36, 1.1), along + wide);
			put(points, 3 * arm + 2, 0.36 * Math.sqrt(2), along + 45);
		}
		return points;
	}

	private static void put(double[] points, int corner, double radius, double degrees) {
		points[2 * corner] = radius * Math.cos(Math.toRadians(degrees));
		points[2 * corner + 1] = radius * Math.sin(Math.toRadians(degrees));
	}
}
