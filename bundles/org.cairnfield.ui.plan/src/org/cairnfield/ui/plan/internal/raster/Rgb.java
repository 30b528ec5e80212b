package org.cairnfield.ui.plan.internal.raster;

import org.eclipse.swt.graphics.RGB;

/** Colours as 0xRRGGBB and 0xAARRGGBB. */
public final class Rgb {

	private Rgb() {
	}

	/** 0xRRGGBB of a colour. */
	public static int of(RGB rgb) {
		return rgb.red << 16 | rgb.green << 8 | rgb.blue;
	}

	/** The colour 0xRRGGBB. */
	public static RGB rgb(int rgb) {
		return new RGB(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
	}

	/** {@code part} of the way from one opaque colour to another, both 0xRRGGBB. */
	public static int between(int from, int to, double part) {
		return channel(from, to, part, 16) | channel(from, to, part, 8) | channel(from, to, part, 0);
	}

	private static int channel(int from, int to, double part, int shift) {
		int a = from >> shift & 0xff;
		int b = to >> shift & 0xff;
		return (int) Math.round(a + (b - a) * part) << shift;
	}

	/** 0xAARRGGBB over an opaque colour. */
	static int over(int argb, int below) {
		int alpha = argb >>> 24;
		if (alpha == 255) {
			return argb & 0xffffff;
		} else if (alpha == 0) {
			return below;
		}
		int rest = 255 - alpha;
		int redBlue = (argb & 0xff00ff) * alpha + (below & 0xff00ff) * rest + 0x800080;
		int green = (argb >> 8 & 0xff) * alpha + (below >> 8 & 0xff) * rest + 0x80;
		redBlue = redBlue + (redBlue >>> 8 & 0xff00ff) >>> 8 & 0xff00ff;
		return redBlue | (green + (green >>> 8) >>> 8 & 0xff) << 8;
	}
}
