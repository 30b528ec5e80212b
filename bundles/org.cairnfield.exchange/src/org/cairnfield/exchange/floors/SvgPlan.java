package org.cairnfield.exchange.floors;

import java.math.BigDecimal;
import java.util.List;

/**
 * A level drawn as SVG: one unit is a metre of the site's frame, y downwards. Rooms are white in grey walls, walkways light grey, doors
 * gaps with a thin line. The same level gives the same text.
 *
 * @param text           the document
 * @param metresPerPixel of the picture that it becomes
 * @param xMetres        of the upper left corner in the frame
 * @param yMetres        likewise
 */
public record SvgPlan(String text, double metresPerPixel, double xMetres, double yMetres) {

	private static final double MARGIN_METRES = 1;
	private static final double FINEST_METRES_PER_PIXEL = 0.05;
	private static final int MOST_PIXELS = 4000;
	private static final double WALL_METRES = 0.15;
	private static final double DOOR_METRES = 0.05;
	/** A wall that is drawn by half a pixel is not seen. */
	private static final double LEAST_WALL_PIXELS = 1.5;

	/** @return null where there is nothing to draw */
	public static SvgPlan of(PlacedLevel level) {
		double[] bounds = level.bounds();
		if (bounds == null) {
			return null;
		}
		double scale = FINEST_METRES_PER_PIXEL;
		double longest = Math.max(bounds[2] - bounds[0], bounds[3] - bounds[1]) + 2 * MARGIN_METRES;
		while (longest / scale > MOST_PIXELS) {
			scale *= 2;
		}
		int columns = (int) Math.ceil((bounds[2] - bounds[0] + 2 * MARGIN_METRES) / scale);
		int rows = (int) Math.ceil((bounds[3] - bounds[1] + 2 * MARGIN_METRES) / scale);
		double left = bounds[0] - MARGIN_METRES;
		double top = bounds[3] + MARGIN_METRES;
		StringBuilder svg = new StringBuilder();
		svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(columns).append("\" height=\"")
				.append(rows).append("\" viewBox=\"")
				.append(number(left)).append(' ').append(number(-top)).append(' ').append(number(columns * scale))
				.append(' ').append(number(rows * scale)).append("\">\n");
		svg.append("<rect x=\"").append(number(left)).append("\" y=\"").append(number(-top)).append("\" width=\"")
				.append(number(columns * scale))
				.append("\" height=\"").append(number(rows * scale)).append("\" fill=\"#ffffff\"/>\n");
		double wall = Math.max(WALL_METRES, LEAST_WALL_PIXELS * scale);
		draw(svg, level, wall, Math.max(DOOR_METRES, scale));
		return new SvgPlan(svg.append("</svg>\n").toString(), scale, left, top);
	}

	private static void draw(StringBuilder svg, PlacedLevel level, double wall, double door) {
		for (DrawnAs as : DrawnAs.values()) {
			if (as == DrawnAs.OPENING) {
				outline(svg, level, wall);
			}
			List<PlacedLevel.Placed> shapes = level.shapes().stream().filter(shape -> shape.as() == as).toList();
			if (!shapes.isEmpty()) {
				switch (as) {
				case WALKWAY -> group(svg, shapes, "#f2f2f2", "#8a8a8a", wall);
				case ROOM -> group(svg, shapes, "#ffffff", "#8a8a8a", wall);
				case VOID -> group(svg, shapes, "#e3e7ea", "#8a8a8a", wall);
				case FIXTURE -> group(svg, shapes, "#ececec", "#bdbdbd", door);
				case SOLID -> group(svg, shapes, "#8a8a8a", "#8a8a8a", wall);
				case OPENING -> {
					group(svg, shapes, "none", "#ffffff", 2 * wall);
					group(svg, shapes, "none", "#bdbdbd", door);
				}
				}
			}
		}
	}

	private static void outline(StringBuilder svg, PlacedLevel level, double wall) {
		if (!level.extent().isEmpty()) {
			group(svg, level.extent().stream().map(polygon -> new PlacedLevel.Placed(DrawnAs.ROOM, true, polygon))
					.toList(), "none", "#8a8a8a", wall);
		}
	}

	/** All of one look in one path, since readers of SVG limit the number of elements; holes run the other way around. */
	private static void group(StringBuilder svg, List<PlacedLevel.Placed> shapes, String fill, String stroke,
			double width) {
		for (boolean closed : new boolean[] { true, false }) { // a line has no inside
			List<PlacedLevel.Placed> some = shapes.stream().filter(shape -> shape.isClosed() == closed).toList();
			if (!some.isEmpty()) {
				svg.append("<path fill=\"").append(closed ? fill : "none").append("\" fill-rule=\"nonzero\" stroke=\"")
						.append(stroke)
						.append("\" stroke-width=\"").append(number(width)).append("\" stroke-linejoin=\"round\" d=\"");
				some.forEach(shape -> path(svg, shape));
				svg.append("\"/>\n");
			}
		}
	}

	private static void path(StringBuilder svg, PlacedLevel.Placed shape) {
		for (double[][] path : shape.paths()) {
			for (int i = 0; i < path.length; i++) {
				svg.append(i == 0 ? 'M' : 'L').append(number(path[i][0])).append(' ').append(number(-path[i][1]));
			}
			svg.append(shape.isClosed() ? "Z" : "");
		}
	}

	/** To a tenth of a millimetre, as short as can be. */
	private static String number(double metres) {
		long parts = Math.round(metres * 1e4);
		return parts == 0 ? "0" : BigDecimal.valueOf(parts, 4).stripTrailingZeros().toPlainString();
	}
}
