package org.cairnfield.ui.charts.colour;

import org.eclipse.swt.graphics.RGB;

/**
 * A colour in CIE 1976 L*a*b* (CIE 15) under the white D65 of sRGB (IEC 61966-2-1).
 *
 * @param lightness L*, 0 black to 100 white
 * @param a         a*, green to red
 * @param b         b*, blue to yellow
 */
public record Lab(double lightness, double a, double b) {

	// the white of sRGB: the sums of the rows of its matrix
	private static final double WHITE_X = 0.9505;
	private static final double WHITE_Z = 1.0890;
	private static final double KNEE = 6.0 / 29;

	/** The colour of an sRGB triple. */
	public static Lab of(RGB rgb) {
		double red = linear(rgb.red);
		double green = linear(rgb.green);
		double blue = linear(rgb.blue);
		double x = (0.4124 * red + 0.3576 * green + 0.1805 * blue) / WHITE_X;
		double y = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
		double z = (0.0193 * red + 0.1192 * green + 0.9505 * blue) / WHITE_Z;
		double fy = root(y);
		return new Lab(116 * fy - 16, 500 * (root(x) - fy), 200 * (fy - root(z)));
	}

	/** The nearest that sRGB can show, each channel cut to its range. */
	public RGB rgb() {
		double[] linear = linearRgb();
		return new RGB(encoded(linear[0]), encoded(linear[1]), encoded(linear[2]));
	}

	/** Whether sRGB can show this colour without cutting a channel. */
	public boolean isShowable() {
		for (double channel : linearRgb()) {
			if (channel < -0.0005 || channel > 1.0005) {
				return false;
			}
		}
		return true;
	}

	/** The difference ΔE*ab of CIE 1976. */
	public double difference(Lab other) {
		double da = a - other.a;
		double db = b - other.b;
		double dl = lightness - other.lightness;
		return Math.sqrt(dl * dl + da * da + db * db);
	}

	/** The same hue at another lightness, with as much of the chroma as sRGB can show. */
	Lab atLightness(double wanted) {
		Lab moved = new Lab(wanted, a, b);
		for (double part = 0.95; !moved.isShowable() && part > 0; part -= 0.05) {
			moved = new Lab(wanted, a * part, b * part);
		}
		return moved;
	}

	private double[] linearRgb() {
		double fy = (lightness + 16) / 116;
		double x = WHITE_X * cube(fy + a / 500);
		double y = cube(fy);
		double z = WHITE_Z * cube(fy - b / 200);
		return new double[] { 3.2406 * x - 1.5372 * y - 0.4986 * z, -0.9689 * x + 1.8758 * y + 0.0415 * z,
				0.0557 * x - 0.2040 * y + 1.0570 * z };
	}

	/** An sRGB channel, 0 to 255, as light, 0 to 1. */
	static double linear(int channel) {
		double c = channel / 255.0;
		return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
	}

	private static int encoded(double light) {
		double cut = Math.max(0, Math.min(1, light));
		double c = cut <= 0.0031308 ? cut * 12.92 : 1.055 * Math.pow(cut, 1 / 2.4) - 0.055;
		return (int) Math.round(c * 255);
	}

	private static double root(double t) {
		return t > KNEE * KNEE * KNEE ? Math.cbrt(t) : t / (3 * KNEE * KNEE) + 4.0 / 29;
	}

	private static double cube(double t) {
		return t > KNEE ? t * t * t : 3 * KNEE * KNEE * (t - 4.0 / 29);
	}
}
