package org.cairnfield.ui.plan.internal.raster;

import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.plan.SampleLook.Fill;

/**
 * What a sample looks like at each place round its middle: its shape in its colour with a rim that stands out from the
 * background; with a bar if it is a test sample; fainter with a cross if it is set aside; with a ring and a triangle if there
 * is a finding. In the accent colour stand a ring if it is selected, a square if it is the carrier of what is selected, and a square on its tip if it is the
 * nearest member of the cluster proposed for that.
 */
final class SampleShape {

	private static final double FAINT = 0.45;
	private static final double MARK_RADIUS = 5;

	private final double[] corners;
	private final double radius;
	private final double unit;
	private final int mark;
	private final Fill fill;
	private final int inside;
	private final int rim;
	private final Ink ink;
	private final double foundRing;
	private final double frame;

	/** @param unit pixels per point, 2 on a display of 200 % */
	SampleShape(SampleLook look, int mark, double radius, double unit, Ink ink) {
		this.mark = mark;
		this.radius = radius;
		this.unit = unit;
		this.ink = ink;
		fill = look.fill();
		double[] outline = look.marker().outline();
		corners = new double[outline.length];
		for (int i = 0; i < outline.length; i++) {
			corners[i] = outline[i] * radius;
		}
		double shown = is(SampleMark.KEPT) ? 1 : FAINT;
		inside = Rgb.between(ink.background(), look.rgb(), shown);
		rim = Rgb.between(ink.background(), dark(look.rgb()), shown);
		foundRing = radius * 1.2 + 2 * unit;
		frame = is(SampleMark.FOUND) ? foundRing + 3 * unit : radius * 1.2 + 2.5 * unit;
	}

	private int dark(int rgb) {
		return Rgb.of(Contrast.rim(Rgb.rgb(rgb), Rgb.rgb(ink.background())));
	}

	private boolean is(int bit) {
		return (mark & bit) != 0;
	}

	private boolean isFramed() {
		return is(SampleMark.SELECTED | SampleMark.CARRIER | SampleMark.MEMBER);
	}

	/** How far a place is outside the frame; negative inside. */
	private double fromFrame(double x, double y) {
		double out = is(SampleMark.SELECTED) ? Segment.length(x, y)
				: is(SampleMark.CARRIER) ? Math.max(Math.abs(x), Math.abs(y))
						: (Math.abs(x) + Math.abs(y)) * Math.sqrt(0.5);
		return out - frame;
	}

	/** No place farther than this from the middle, along an axis, has a colour. */
	double reach() {
		double reach = radius * 1.3 + unit;
		if (is(SampleMark.FOUND)) {
			reach = foundRing * Math.sqrt(0.5) + (MARK_RADIUS * 2 + 1) * unit;
		}
		double corner = is(SampleMark.SELECTED) || is(SampleMark.CARRIER) ? 1 : Math.sqrt(2);
		return isFramed() ? Math.max(reach, corner * (frame + 2 * unit)) : reach;
	}

	/** The colour at a place; 0 for none. */
	int argb(double x, double y) {
		if (is(SampleMark.FOUND)) {
			int sign = warning(x, y);
			if (sign != 0) {
				return sign;
			}
		}
		double distance = Segment.length(x, y);
		if (!is(SampleMark.KEPT) && distance < radius * 1.3
				&& Math.min(Math.abs(x - y), Math.abs(x + y)) < 0.6 * Math.sqrt(2) * unit) {
			return opaque(Rgb.between(ink.background(), ink.line(), 0.75));
		}
		int own = shape(x, y, distance);
		if (own != 0) {
			return own;
		}
		if (is(SampleMark.FOUND) && Math.abs(distance - foundRing) < 0.65 * unit) {
			return opaque(ink.line());
		}
		if (isFramed()) {
			double from = fromFrame(x, y);
			if (Math.abs(from) < unit) {
				return opaque(ink.accent());
			} else if (from < 0) {
				return opaque(ink.background());
			}
		}
		return 0;
	}

	private int shape(double x, double y, double distance) {
		double side = toSide(x, y);
		boolean in = contains(x, y);
		// dark rims of half a point outside and half a point inside
		if (side < 0.5 * unit) {
			return opaque(rim);
		} else if (!in) {
			return 0;
		}
		if (is(SampleMark.TEST) && Math.abs(y) < Math.max(0.2 * radius, 0.6 * unit) && Math.abs(x) < 0.6 * radius) {
			return opaque(ink.background());
		}
		return switch (fill) {
		case SOLID -> opaque(inside);
		case HOLLOW -> side < 1.2 * unit ? opaque(rim) : opaque(ink.background());
		case DOTTED -> side < 1.0 * unit ? opaque(rim)
				: distance < Math.max(0.42 * radius, 1.2 * unit) ? opaque(inside) : opaque(ink.background());
		};
	}

	/** A filled triangle with an exclamation mark left free, up to the right of the ring. */
	private int warning(double x, double y) {
		double at = foundRing * Math.sqrt(0.5) + MARK_RADIUS * unit;
		double u = (x - at) / unit;
		double v = (y + at) / unit;
		double half = (v + MARK_RADIUS) * 0.56; // half the width at this height
		if (v < -MARK_RADIUS || v > MARK_RADIUS * 0.8 || Math.abs(u) > half) {
			return 0;
		}
		boolean stroke = Math.abs(u) < 0.65 && (v > -2.2 && v < 1.3 || v > 2.1 && v < 3.4);
		return opaque(stroke ? ink.background() : ink.line());
	}

	private boolean contains(double x, double y) {
		boolean in = false;
		for (int i = 0, j = corners.length - 2; i < corners.length; j = i, i += 2) {
			if (corners[i + 1] > y != corners[j + 1] > y
					&& x < (corners[j] - corners[i]) * (y - corners[i + 1]) / (corners[j + 1] - corners[i + 1])
							+ corners[i]) {
				in = !in;
			}
		}
		return in;
	}

	private double toSide(double x, double y) {
		double nearest = Double.POSITIVE_INFINITY;
		for (int i = 0, j = corners.length - 2; i < corners.length; j = i, i += 2) {
			nearest = Math.min(nearest, Segment.distance(x, y, corners[j], corners[j + 1], corners[i], corners[i + 1]));
		}
		return nearest;
	}

	private static int opaque(int rgb) {
		return 0xff000000 | rgb;
	}
}
