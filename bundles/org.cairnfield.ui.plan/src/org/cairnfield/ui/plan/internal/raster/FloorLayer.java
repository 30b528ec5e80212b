package org.cairnfield.ui.plan.internal.raster;

import java.util.List;

import org.cairnfield.ui.plan.internal.geometry.Bounds;

/** Something on a floor besides its samples: patches below them, arrows over the patches. */
public final class FloorLayer {

	private static final double HEAD_POINTS = 6;
	/** Half the opening of an arrow's head. */
	private static final double HEAD_DEGREES = 26;
	private static final double WIDTH_POINTS = 1.3;
	private static final double DASH_POINTS = 5;

	/** A part of the floor in one colour, 0xRRGGBB. */
	public record Patch(Bounds bounds, int rgb) {
	}

	/** From one place to another; metres. */
	public record Arrow(double fromX, double fromY, double toX, double toY, boolean dashed) {
	}

	private final List<Patch> patches;
	private final List<Arrow> arrows;
	private final int line;

	/** @param line 0xRRGGBB of the arrows */
	public FloorLayer(List<Patch> patches, List<Arrow> arrows, int line) {
		this.patches = List.copyOf(patches);
		this.arrows = List.copyOf(arrows);
		this.line = line;
	}

	/** @param opacity part of a patch's own colour over what is there, 0 … 1 */
	void drawPatches(int[] pixels, int side, long column, long row, double pixelsPerMetre, double opacity) {
		for (Patch each : patches) {
			int left = inside(each.bounds().left() * pixelsPerMetre - column, side);
			int right = inside(each.bounds().right() * pixelsPerMetre - column, side);
			int top = inside(-each.bounds().top() * pixelsPerMetre - row, side);
			int bottom = inside(-each.bounds().bottom() * pixelsPerMetre - row, side);
			for (int r = top; r < bottom; r++) {
				for (int c = left; c < right; c++) {
					pixels[r * side + c] = Rgb.between(pixels[r * side + c], each.rgb(), opacity);
				}
			}
		}
	}

	private static int inside(double pixel, int side) {
		return (int) Math.max(0, Math.min(side, Math.round(pixel)));
	}

	void drawArrows(int[] pixels, int side, long column, long row, double pixelsPerMetre, double pixelsPerPoint) {
		double head = HEAD_POINTS * pixelsPerPoint;
		for (Arrow each : arrows) {
			double x1 = each.fromX() * pixelsPerMetre - column;
			double y1 = -each.fromY() * pixelsPerMetre - row;
			double x2 = each.toX() * pixelsPerMetre - column;
			double y2 = -each.toY() * pixelsPerMetre - row;
			boolean seen = Math.max(x1, x2) > -head && Math.min(x1, x2) < side + head && Math.max(y1, y2) > -head
					&& Math.min(y1, y2) < side + head;
			double length = Math.hypot(x2 - x1, y2 - y1);
			if (!seen || length < 1) {
				continue;
			}
			double step = each.dashed() ? DASH_POINTS * pixelsPerPoint : length;
			for (double at = 0; at < length; at += 2 * step) {
				double end = Math.min(1, (at + step) / length);
				segment(pixels, side, x1 + (x2 - x1) * at / length, y1 + (y2 - y1) * at / length, x1 + (x2 - x1) * end,
						y1 + (y2 - y1) * end, pixelsPerPoint);
			}
			double back = Math.atan2(y1 - y2, x1 - x2);
			double arm = Math.min(head, length);
			for (int sign = -1; sign <= 1; sign += 2) {
				double angle = back + sign * Math.toRadians(HEAD_DEGREES);
				segment(pixels, side, x2, y2, x2 + arm * Math.cos(angle), y2 + arm * Math.sin(angle), pixelsPerPoint);
			}
		}
	}

	private void segment(int[] pixels, int side, double x1, double y1, double x2, double y2, double pixelsPerPoint) {
		Segment.draw(pixels, side, x1, y1, x2, y2, WIDTH_POINTS * pixelsPerPoint, line);
	}
}
