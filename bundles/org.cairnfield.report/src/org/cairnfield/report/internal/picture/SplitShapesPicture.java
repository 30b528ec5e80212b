package org.cairnfield.report.internal.picture;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.text.Words;

/** Bars of one length, a split each: its clusters from the largest to the smallest, then its noise. */
final class SplitShapesPicture {

	private static final int TITLE = 25;
	private static final int ROW = 21;
	private static final int BAR = 14;
	private static final int AFTER = 10;
	private static final int LABELS = 150;
	private static final int FIGURES = 214;
	private static final int KEY = 24;
	private static final Color DARK = PictureLook.ACCENT;
	private static final Color LIGHT = new Color(0x8cc0e0);
	private static final Color MIXED = new Color(0x4699c9);
	private static final Color NOISE = new Color(0xd5d5d5);
	/** Narrower clusters are drawn together. */
	private static final double LEAST_WIDTH = 1.5;

	private final Map<String, List<SplitShape>> maps;

	SplitShapesPicture(Map<String, List<SplitShape>> maps) {
		if (maps.isEmpty()) {
			throw new IllegalArgumentException("no splits to draw");
		}
		this.maps = maps;
	}

	String svg(String source) {
		int body = KEY + maps.values().stream().mapToInt(shapes -> TITLE + shapes.size() * ROW + AFTER).sum();
		Page page = new Page(body, Messages.SplitShapesPicture_clustersLargestFirstAndNoise, source);
		key(page);
		StringBuilder description = new StringBuilder();
		maps.forEach((map, shapes) -> {
			page.text(page.fitted(map, Page.WIDTH - 2 * Page.MARGIN, PictureLook.STRONG), Page.MARGIN, page.y() + 16,
					PictureLook.STRONG, PictureLook.INK);
			page.skip(TITLE);
			description.append(map).append(": ");
			for (SplitShape shape : shapes) {
				bar(page, shape);
				description.append(shape.name()).append(' ').append(figures(shape)).append("; ");
			}
			page.skip(AFTER);
		});
		return page.svg(description.toString().strip());
	}

	private static void key(Page page) {
		double x = Page.MARGIN + LABELS;
		x = key(page, x, Messages.SplitShapesPicture_clustersInTurn, DARK, LIGHT);
		x = key(page, x, Messages.SplitShapesPicture_clustersTooSmallToDraw, MIXED, MIXED);
		key(page, x, "noise", NOISE, NOISE);
		page.skip(KEY);
	}

	private static double key(Page page, double x, String words, Color left, Color right) {
		fill(page, x, page.y() + 3.0, 11, 10, left);
		fill(page, x + 11, page.y() + 3.0, 11, 10, right);
		page.text(words, x + 28, page.y() + 12, PictureLook.SMALL, PictureLook.INK);
		return x + 28 + page.graphics().getFontMetrics(PictureLook.SMALL).stringWidth(words) + 20;
	}

	private static void bar(Page page, SplitShape shape) {
		double left = Page.MARGIN + LABELS;
		double scale = (Page.WIDTH - Page.MARGIN - FIGURES - left) / Math.max(1, shape.samples());
		double top = page.y() + 2.0;
		page.textEndingAt(page.fitted(shape.name(), LABELS - 8, PictureLook.TEXT), left - 8, page.y() + 14,
				PictureLook.TEXT, PictureLook.INK);
		double x = left;
		int c = 0;
		while (c < shape.sizes().size() && shape.sizes().get(c) * scale >= LEAST_WIDTH) {
			double width = shape.sizes().get(c) * scale;
			fill(page, x, top, width, BAR, c % 2 == 0 ? DARK : LIGHT);
			x += width;
			c++;
		}
		double rest = shape.sizes().subList(c, shape.sizes().size()).stream().mapToInt(Integer::intValue).sum() * scale;
		fill(page, x, top, rest, BAR, MIXED);
		fill(page, x + rest, top, shape.noise() * scale, BAR, NOISE);
		page.text(figures(shape), Page.WIDTH - FIGURES - Page.MARGIN + 8.0, page.y() + 14, PictureLook.SMALL,
				PictureLook.INK);
		page.skip(ROW);
	}

	private static void fill(Page page, double x, double y, double width, double height, Color colour) {
		if (width > 0) {
			page.graphics().setColor(colour);
			page.graphics().fill(new Rectangle2D.Double(x, y, width, height));
		}
	}

	private static String figures(SplitShape shape) {
		double all = Math.max(1, shape.samples());
		return Words.bind(Messages.SplitShapesPicture_noise, PictureLook.count(shape.sizes().size()),
				shape.sizes().size() == 1 ? Messages.SplitShapesPicture_cluster : Messages.SplitShapesPicture_clusters,
				shape.sizes().isEmpty() ? ""
						: Words.bind(Messages.SplitShapesPicture_largest,
								PictureLook.percent(shape.sizes().get(0) / all)),
				PictureLook.percent(shape.noise() / all));
	}
}
