package org.cairnfield.report.internal.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;

/**
 * Colours, strokes, shapes and numbers that all pictures share. Colours are those of Okabe &amp; Ito,
 * "Color Universal Design" (2008), less the yellow, which is hard to see on white.
 */
final class PictureLook {

	static final Color INK = new Color(0x222222);
	static final Color QUIET = new Color(0x5c5c5c);
	static final Color GRID = new Color(0xe4e4e4);
	static final Color ACCENT = new Color(0x0072b2);
	/** Bluish, vermilion, green, purple, orange, sky, black. */
	private static final List<Color> CATEGORIES = List.of(ACCENT, new Color(0xd55e00), new Color(0x009e73),
			new Color(0xcc79a7), new Color(0xe69f00), new Color(0x56b4e9), Color.BLACK);

	static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 16);
	static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
	static final Font STRONG = new Font(Font.SANS_SERIF, Font.BOLD, 13);
	static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 12);

	static final Stroke HAIRLINE = new BasicStroke(1f);
	static final Stroke LINE = new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
	static final Stroke DASHED = dashed(1.5f, 6, 4);
	private static final List<Stroke> LINES = List.of(LINE, dashed(2f, 9, 4), dashed(2f, 2.5f, 3),
			dashed(2f, 10, 3, 2, 3), dashed(2f, 5, 3), dashed(2f, 14, 4), dashed(2f, 10, 3, 2, 3, 2, 3));

	private PictureLook() {
	}

	/** The colour of category {@code i}; the list begins again after seven. */
	static Color colour(int i) {
		return CATEGORIES.get(i % CATEGORIES.size());
	}

	/** The line of category {@code i}, so that it can be told without colour. */
	static Stroke line(int i) {
		return LINES.get(i % LINES.size());
	}

	/** A marker of category {@code i}, about the origin, in pixels. */
	static Shape marker(int i) {
		return switch (i % 4) {
		case 0 -> new Ellipse2D.Double(-4.5, -4.5, 9, 9);
		case 1 -> new Rectangle2D.Double(-4, -4, 8, 8);
		case 2 -> polygon(0, -5.5, 5.5, 4.5, -5.5, 4.5);
		default -> diamond(6);
		};
	}

	static Shape diamond(double radius) {
		return polygon(0, -radius, radius, 0, 0, radius, -radius, 0);
	}

	private static Shape polygon(double... xy) {
		Path2D path = new Path2D.Double();
		path.moveTo(xy[0], xy[1]);
		for (int i = 2; i < xy.length; i += 2) {
			path.lineTo(xy[i], xy[i + 1]);
		}
		path.closePath();
		return path;
	}

	private static Stroke dashed(float width, float... dash) {
		return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, dash, 0f);
	}

	/** A whole number with separators. */
	static String count(long count) {
		return format("#,##0").format(count);
	}

	/** Three digits or so: more would claim too much. */
	static String figure(double value) {
		return format(Math.abs(value) >= 100 ? "#,##0" : Math.abs(value) >= 10 ? "0.#" : "0.##").format(value);
	}

	/** Metres to a centimetre below 10 m, else to a decimetre; always as many places, so that columns line up. */
	static String metres(double metres) {
		return Double.isNaN(metres) ? "–" : format(Math.abs(metres) < 10 ? "0.00" : "0.0").format(metres) + " m";
	}

	/** A share as a percentage; small ones keep a digit. */
	static String percent(double share) {
		return format(share > 0 && share < 0.1 ? "0.0" : "0").format(100 * share) + " %";
	}

	static DecimalFormat format(String pattern) {
		return new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT));
	}
}
