package org.cairnfield.ui.plan.internal.raster;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.model.values.Placement;

/** A plan image as it lies on the floor, kept in halving sizes so that it looks smooth from afar. Immutable. */
public final class PlanPicture {

	private record Level(int width, int height, int[] rgb) {

		Level half() {
			int w = (width + 1) / 2;
			int h = (height + 1) / 2;
			int[] out = new int[w * h];
			for (int r = 0; r < h; r++) {
				for (int c = 0; c < w; c++) {
					int c2 = Math.min(2 * c + 1, width - 1);
					int r2 = Math.min(2 * r + 1, height - 1);
					out[r * w + c] = mean(at(2 * c, 2 * r), at(c2, 2 * r), at(2 * c, r2), at(c2, r2));
				}
			}
			return new Level(w, h, out);
		}

		int at(int column, int row) {
			return rgb[row * width + column];
		}

		/** Between pixels by distance; columns and rows count from the middle of the first pixel. */
		int smooth(double column, double row) {
			double c = Math.max(0, Math.min(width - 1, column));
			double r = Math.max(0, Math.min(height - 1, row));
			int c1 = (int) c;
			int r1 = (int) r;
			int c2 = Math.min(c1 + 1, width - 1);
			int r2 = Math.min(r1 + 1, height - 1);
			int right = (int) ((c - c1) * 256);
			int down = (int) ((r - r1) * 256);
			return mixed(mixed(at(c1, r1), at(c2, r1), right), mixed(at(c1, r2), at(c2, r2), right), down);
		}

		private static int mean(int a, int b, int c, int d) {
			int redBlue = ((a & 0xff00ff) + (b & 0xff00ff) + (c & 0xff00ff) + (d & 0xff00ff) >>> 2) & 0xff00ff;
			int green = ((a & 0xff00) + (b & 0xff00) + (c & 0xff00) + (d & 0xff00) >>> 2) & 0xff00;
			return redBlue | green;
		}

		private static int mixed(int a, int b, int part) {
			int rest = 256 - part;
			int redBlue = ((a & 0xff00ff) * rest + (b & 0xff00ff) * part >>> 8) & 0xff00ff;
			int green = ((a & 0xff00) * rest + (b & 0xff00) * part >>> 8) & 0xff00;
			return redBlue | green;
		}
	}

	private static final int LEAST_SIDE = 32;

	private final List<Level> levels = new ArrayList<>();
	private final Placement placement;

	/** @param rgb 0xRRGGBB row by row, kept, not copied */
	public PlanPicture(int width, int height, int[] rgb, Placement placement) {
		this.placement = placement;
		Level level = new Level(width, height, rgb);
		levels.add(level);
		while (Math.min(level.width(), level.height()) > LEAST_SIDE) {
			level = level.half();
			levels.add(level);
		}
	}

	private PlanPicture(List<Level> levels, Placement placement) {
		this.levels.addAll(levels);
		this.placement = placement;
	}

	/** The same image elsewhere. */
	public PlanPicture placed(Placement other) {
		return new PlanPicture(levels, other);
	}

	public int width() {
		return levels.get(0).width();
	}

	public int height() {
		return levels.get(0).height();
	}

	public Placement placement() {
		return placement;
	}

	/**
	 * Draws it into a square of pixels.
	 *
	 * @param xMetres of the square's upper left corner
	 * @param paler    part of the background that is mixed in, so that what lies on it stands out
	 * @param negative light for dark, as a drawing on paper suits a dark background
	 */
	void draw(int[] pixels, int side, double xMetres, double yMetres, double pixelsPerMetre, int background,
			double paler,
			boolean negative) {
		double turn = Math.toRadians(placement.turnDegrees());
		double ratio = 1 / (pixelsPerMetre * placement.metresPerPixel());
		double cos = Math.cos(turn) * ratio;
		double sin = Math.sin(turn) * ratio;
		int number = (int) Math.max(0, Math.min(levels.size() - 1, Math.round(Math.log(ratio) / Math.log(2))));
		Level level = levels.get(number);
		double shrink = 1.0 / (1 << number);
		double dx = (xMetres - placement.xMetres()) * pixelsPerMetre;
		double dy = (yMetres - placement.yMetres()) * pixelsPerMetre;
		int invert = negative ? 0xffffff : 0;
		int keep = (int) Math.round(256 * (1 - paler));
		for (int r = 0; r < side; r++) {
			double across = dx + 0.5;
			double up = dy - r - 0.5;
			double column = (cos * across + sin * up) * shrink;
			double row = (sin * across - cos * up) * shrink;
			for (int c = 0; c < side; c++) {
				if (column >= 0 && row >= 0 && column < level.width() && row < level.height()) {
					int rgb = level.smooth(column - 0.5, row - 0.5) ^ invert;
					pixels[r * side + c] = Level.mixed(background, rgb, keep);
				}
				column += cos * shrink;
				row += sin * shrink;
			}
		}
	}
}
