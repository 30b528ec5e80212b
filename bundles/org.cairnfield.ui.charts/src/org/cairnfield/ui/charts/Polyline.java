package org.cairnfield.ui.charts;

import java.util.Arrays;

import org.cairnfield.core.series.Series;
import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.charts.scale.Scale;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;

/**
 * A line of points in the plane of the paper, with gaps. Made from many points it keeps of each column of pixels the
 * first, lowest, highest and last, so that it looks the same: Jugel, Jerzak, Hackenbroich and Markl, "M4: a
 * visualization-oriented time series data aggregation", Proceedings of the VLDB Endowment 7 (2014).
 */
final class Polyline {

	/** Lines far outside would overflow what the platform draws with. */
	private static final float FAR = 20_000;
	/** Part of a pixel that nobody sees; smooth curves have few points then. */
	private static final float FLAT = 0.25f;

	private float[] xy = new float[64];
	private int size;

	/** Points in their order, multiplied by the factors; what has no place on a scale makes a gap. */
	static Polyline of(Series series, double xFactor, double yFactor, Scale xScale, Scale yScale, Rectangle plot) {
		Polyline thin = new Polyline();
		Column column = new Column();
		for (int i = 0; i < series.size(); i++) {
			double x = plot.x + xScale.fraction(series.x(i) * xFactor) * plot.width;
			double y = plot.y + (1 - yScale.fraction(series.y(i) * yFactor)) * plot.height;
			if (Double.isNaN(x) || Double.isNaN(y)) {
				column.flush(thin);
				thin.gap();
			} else {
				x = Math.max(-FAR, Math.min(FAR, x));
				y = Math.max(-FAR, Math.min(FAR, y));
				column.add((float) x, (float) y, thin);
			}
		}
		column.flush(thin);
		return thin;
	}

	/** The same points joined by steps: each height holds until the next point. */
	Polyline stepped() {
		Polyline steps = new Polyline();
		for (int i = 0; i < size; i++) {
			if (i > 0 && !isGap(i) && !isGap(i - 1)) {
				steps.add(x(i), y(i - 1));
			}
			steps.add(x(i), y(i));
		}
		return steps;
	}

	void add(float x, float y) {
		if (2 * size == xy.length) {
			xy = Arrays.copyOf(xy, 4 * size);
		}
		xy[2 * size] = x;
		xy[2 * size + 1] = y;
		size++;
	}

	private void gap() {
		if (size > 0 && !isGap(size - 1)) {
			add(Float.NaN, Float.NaN);
		}
	}

	int size() {
		return size;
	}

	float x(int point) {
		return xy[2 * point];
	}

	float y(int point) {
		return xy[2 * point + 1];
	}

	boolean isGap(int point) {
		return Float.isNaN(xy[2 * point]);
	}

	/** Where the colour stands out little from the background, a wider line in its rim colour lies beneath. */
	void draw(Paper paper, RGB rgb) {
		Path path = new Path(paper.gc.getDevice());
		try {
			boolean begun = false;
			for (int i = 0; i < size; i++) {
				if (isGap(i)) {
					begun = false;
				} else if (begun) {
					path.lineTo(x(i), y(i));
				} else {
					path.moveTo(x(i), y(i));
					begun = true;
				}
			}
			RGB rim = Contrast.rim(rgb, paper.look.background());
			float wide = paper.line / 9f;
			boolean pale = !rim.equals(rgb);
			if (pale) {
				paper.stroke(rim, wide * 1.6f);
				paper.gc.drawPath(path);
			}
			paper.stroke(rgb, pale ? wide * 0.8f : wide);
			paper.gc.drawPath(path);
		} finally {
			path.dispose();
		}
	}

	/** Points that follow one another within a pixel's width. */
	private static final class Column {

		private int pixel;
		private int count;
		private float firstX;
		private float firstY;
		private float lowX;
		private float lowY;
		private float highX;
		private float highY;
		private float lastX;
		private float lastY;

		void add(float x, float y, Polyline to) {
			int at = (int) Math.floor(x);
			if (count > 0 && at != pixel) {
				flush(to);
			}
			if (count == 0) {
				pixel = at;
				firstX = lowX = highX = x;
				firstY = lowY = highY = y;
			} else if (y < lowY) {
				lowX = x;
				lowY = y;
			} else if (y > highY) {
				highX = x;
				highY = y;
			}
			lastX = x;
			lastY = y;
			count++;
		}

		void flush(Polyline to) {
			if (count > 0) {
				to.add(firstX, firstY);
			}
			if (highY - lowY < FLAT) {
				count = Math.min(count, 2);
			}
			if (count > 3) {
				boolean lowFirst = lowX <= highX;
				to.add(lowFirst ? lowX : highX, lowFirst ? lowY : highY);
				to.add(lowFirst ? highX : lowX, lowFirst ? highY : lowY);
			} else if (count == 3) {
				// the one in the middle is an extreme, or does not matter
				boolean low = lowY < Math.min(firstY, lastY);
				to.add(low ? lowX : highX, low ? lowY : highY);
			}
			if (count > 1) {
				to.add(lastX, lastY);
			}
			count = 0;
		}
	}
}
