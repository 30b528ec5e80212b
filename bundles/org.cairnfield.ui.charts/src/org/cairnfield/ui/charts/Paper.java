package org.cairnfield.ui.charts;

import java.util.Collection;
import java.util.Comparator;

import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.charts.colour.Marker;
import org.cairnfield.ui.charts.colour.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.FontMetrics;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.TextLayout;

/** Somewhere to draw: a graphics context with its size, its look, and measures that follow from the font. */
final class Paper {

	/** Names are measured only if among the longest few by number of letters; there may be thousands. */
	private static final int MEASURED = 8;

	final GC gc;
	final int width;
	final int height;
	final Palette look;
	/** Height of a line of text. */
	final int line;
	/** Between things that belong together. */
	final int gap;

	Paper(GC gc, int width, int height, Palette look) {
		this.gc = gc;
		this.width = width;
		this.height = height;
		this.look = look;
		FontMetrics metrics = gc.getFontMetrics();
		line = metrics.getHeight();
		gap = Math.max(2, line / 3);
		gc.setAntialias(SWT.ON);
		gc.setTextAntialias(SWT.ON);
	}

	/** Fills all with the background. */
	void clear() {
		fill(look.background());
		gc.fillRectangle(0, 0, width, height);
	}

	/** Sets the colour for what is filled next. */
	void fill(RGB rgb) {
		gc.setBackground(new Color(rgb));
	}

	/** Sets the colour and the width for lines and text drawn next. */
	void stroke(RGB rgb, float lineWidth) {
		gc.setForeground(new Color(rgb));
		gc.setLineAttributes(new LineAttributes(Math.max(1, lineWidth), SWT.CAP_FLAT, SWT.JOIN_ROUND));
	}

	/** Text with its left upper corner here. */
	void text(String text, int x, int y, RGB rgb) {
		gc.setForeground(new Color(rgb));
		gc.drawText(text, x, y, SWT.DRAW_TRANSPARENT);
	}

	/** Text that ends at x. */
	void textBefore(String text, int x, int y, RGB rgb) {
		text(text, x - width(text), y, rgb);
	}

	/** Text around x, kept on the paper. */
	void textAround(String text, int x, int y, RGB rgb) {
		int wide = width(text);
		text(text, Math.max(0, Math.min(width - wide, x - wide / 2)), y, rgb);
	}

	/** Text in the middle of the paper, in as many lines as it needs. */
	void textInTheMiddle(String text) {
		TextLayout layout = new TextLayout(gc.getDevice());
		try {
			layout.setFont(gc.getFont());
			layout.setAlignment(SWT.CENTER);
			layout.setWidth(Math.max(1, width - 4 * gap));
			layout.setText(text);
			gc.setForeground(new Color(look.muted()));
			layout.draw(gc, 2 * gap, Math.max(0, (height - layout.getBounds().height) / 2));
		} finally {
			layout.dispose();
		}
	}

	int width(String text) {
		return gc.textExtent(text, SWT.DRAW_TRANSPARENT).x;
	}

	/** Width of the widest. */
	int widest(Collection<String> texts) {
		return texts.stream().sorted(Comparator.comparingInt(String::length).reversed()).limit(MEASURED)
				.mapToInt(this::width).max().orElse(0);
	}

	/** The text, or as much of it as fits, with an ellipsis. */
	String fit(String text, int room) {
		if (width(text) <= room) {
			return text;
		}
		int low = 0;
		int high = text.length();
		while (low < high) {
			int middle = (low + high + 1) / 2;
			if (width(text.substring(0, middle) + '\u2026') <= room) {
				low = middle;
			} else {
				high = middle - 1;
			}
		}
		return low == 0 ? "" : text.substring(0, low) + '\u2026';
	}

	/** A bar with a rim that stands out; hollow: the rim only. */
	void bar(int x, int y, int wide, int high, RGB rgb, boolean hollow) {
		if (!hollow) {
			fill(rgb);
			gc.fillRectangle(x, y, wide, high);
		}
		stroke(Contrast.rim(rgb, look.background()), hollow ? Math.round(line / 9f) : 1);
		gc.drawRectangle(x, y, Math.max(0, wide - 1), Math.max(0, high - 1));
	}

	/** A filled shape with a rim that stands out. */
	void marker(Marker marker, double x, double y, double radius, RGB rgb) {
		double[] outline = marker.outline();
		Path path = new Path(gc.getDevice());
		try {
			path.moveTo((float) (x + radius * outline[0]), (float) (y + radius * outline[1]));
			for (int i = 2; i < outline.length; i += 2) {
				path.lineTo((float) (x + radius * outline[i]), (float) (y + radius * outline[i + 1]));
			}
			path.close();
			fill(rgb);
			gc.fillPath(path);
			stroke(Contrast.rim(rgb, look.background()), 1);
			gc.drawPath(path);
		} finally {
			path.dispose();
		}
	}

	/** The hollow ring of noise. */
	void ring(double x, double y, double radius, RGB rgb) {
		Path path = new Path(gc.getDevice());
		try {
			path.addArc((float) (x - radius), (float) (y - radius), (float) (2 * radius), (float) (2 * radius), 0, 360);
			stroke(rgb, line / 9f);
			gc.drawPath(path);
		} finally {
			path.dispose();
		}
	}
}
