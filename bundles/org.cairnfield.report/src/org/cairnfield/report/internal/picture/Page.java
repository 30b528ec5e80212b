package org.cairnfield.report.internal.picture;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.Plot;

/**
 * A white sheet filled from the top: a title, what is drawn, and a caption that says what it was computed
 * from. Becomes SVG text in which nothing depends on the time or on chance.
 */
final class Page {

	static final int WIDTH = 760;
	static final int MARGIN = 16;
	/** Height that {@link #axisName} takes. */
	static final int AXIS_NAME = 18;
	private static final int LINE_HEIGHT = 17;

	private final SvgGraphics graphics = new SvgGraphics();
	private final int height;
	private final String title;
	private final List<String> caption;
	private int y;

	/**
	 * @param bodyHeight pixels between title and caption
	 * @param title      what is shown
	 * @param caption    what it was computed from; broken into lines as needed
	 */
	Page(int bodyHeight, String title, String caption) {
		this.title = Objects.requireNonNull(title);
		this.caption = broken(caption, graphics.getFontMetrics(PictureLook.SMALL), WIDTH - 2 * MARGIN);
		this.height = 46 + bodyHeight + this.caption.size() * LINE_HEIGHT + 18;
		graphics.setColor(Color.WHITE);
		graphics.fill(new Rectangle2D.Double(0, 0, WIDTH, height));
		text(title, MARGIN, 29, PictureLook.TITLE, PictureLook.INK);
		this.y = 46;
	}

	/** Names the upright axis of the next chart: level and above it, where it is easiest to read. */
	void axisName(String name) {
		text(name, MARGIN, y + 14, PictureLook.TEXT, PictureLook.INK);
		y += AXIS_NAME;
	}

	/** Draws a chart across the page; answers where its data went. */
	Rectangle2D chart(Plot plot, int chartHeight) {
		JFreeChart chart = new JFreeChart(null, null, plot, false);
		chart.setBackgroundPaint(Color.WHITE);
		chart.setBorderVisible(false);
		chart.setPadding(new org.jfree.chart.ui.RectangleInsets(0, 0, 0, 0));
		ChartRenderingInfo info = new ChartRenderingInfo(null);
		chart.draw(graphics, new Rectangle2D.Double(MARGIN / 2.0, y, WIDTH - MARGIN, chartHeight), info);
		graphics.setClip(null);
		y += chartHeight;
		return info.getPlotInfo().getDataArea();
	}

	/** Where the next thing goes, in pixels from the top. */
	int y() {
		return y;
	}

	/** Leaves room. */
	void skip(int pixels) {
		y += pixels;
	}

	Graphics2D graphics() {
		return graphics;
	}

	/** Writes with the baseline at {@code baseline}. */
	void text(String text, double x, double baseline, Font font, Color colour) {
		graphics.setFont(font);
		graphics.setColor(colour);
		graphics.drawString(printable(text), (float) x, (float) baseline);
	}

	/** Control characters, which names from outside may hold, are not allowed in XML. */
	private static String printable(String text) {
		return text.replaceAll("[\\p{Cntrl}\\p{Cs}\uFFFE\uFFFF]", "\uFFFD");
	}

	/** The text, or as much of its beginning as fits. */
	String fitted(String text, int width, Font font) {
		FontMetrics metrics = graphics.getFontMetrics(font);
		int end = text.length();
		while (end > 0 && metrics.stringWidth(end < text.length() ? text.substring(0, end) + "…" : text) > width) {
			end--;
		}
		return end < text.length() ? text.substring(0, end).stripTrailing() + "…" : text;
	}

	/** Writes over what is there, so that grid lines do not strike the text through. */
	void textOnWhite(String text, double x, double baseline, Font font) {
		FontMetrics metrics = graphics.getFontMetrics(font);
		graphics.setColor(Color.WHITE);
		graphics.fill(new Rectangle2D.Double(x - 2, baseline - font.getSize(), metrics.stringWidth(text) + 4,
				font.getSize() + 4));
		text(text, x, baseline, font, PictureLook.INK);
	}

	/** Writes so that the text ends at {@code right}. */
	void textEndingAt(String text, double right, double baseline, Font font, Color colour) {
		text(text, right - graphics.getFontMetrics(font).stringWidth(text), baseline, font, colour);
	}

	/**
	 * The finished picture.
	 *
	 * @param description what a reader who cannot see it should hear
	 */
	String svg(String description) {
		int baseline = height - 14 - (caption.size() - 1) * LINE_HEIGHT;
		for (String line : caption) {
			text(line, MARGIN, baseline, PictureLook.SMALL, PictureLook.QUIET);
			baseline += LINE_HEIGHT;
		}
		return graphics.svg(WIDTH, height, printable(title), printable(description));
	}

	private static List<String> broken(String text, FontMetrics metrics, int width) {
		List<String> lines = new ArrayList<>();
		StringBuilder line = new StringBuilder();
		for (String word : text.strip().split("\\s+")) {
			if (line.length() > 0 && metrics.stringWidth(line + " " + word) > width) {
				lines.add(line.toString());
				line.setLength(0);
			}
			line.append(line.length() == 0 ? "" : " ").append(word);
		}
		lines.add(line.toString());
		return lines;
	}
}
