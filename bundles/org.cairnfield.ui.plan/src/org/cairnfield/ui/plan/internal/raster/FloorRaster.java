package org.cairnfield.ui.plan.internal.raster;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.model.values.Outline;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.plan.internal.geometry.Bounds;
import org.cairnfield.ui.plan.internal.geometry.PointGrid;

/**
 * Draws square pieces of a floor, one at a time, as arrays of pixels: the image, the outline, the samples. Drawing twenty
 * thousand shapes with a graphics library took fifty times as long as putting small pictures of them in place.
 */
public final class FloorRaster {

	/** The rest of an int holds the marks, but for its sign. */
	private static final int SAMPLE_BITS = Integer.numberOfLeadingZeros(SampleMark.END - 1) - 1;
	/** Part of the background mixed into a plan image. */
	private static final double PALER = 0.35;
	/** How much of the colour of a patch covers a plan image. */
	private static final double HEAT = 0.8;

	private final PlanPicture picture;
	private final Outline outline;
	private final double[] x;
	private final double[] y;
	private final PointGrid grid;
	private final List<SampleLook> looks;
	private final int[] lookOf;
	private final byte[] marks;
	private final Ink ink;
	private final FloorLayer layer;
	private final Map<Long, Sprite[]> sprites = new HashMap<>();
	private int[] found = new int[256];
	private int count;

	/**
	 * @param picture null for none
	 * @param outline null for none
	 * @param marks   bits of {@link SampleMark} a sample; kept, and may be changed between pieces
	 * @param layer   null for none
	 */
	public FloorRaster(PlanPicture picture, Outline outline, double[] x, double[] y, PointGrid grid,
			List<SampleLook> looks,
			int[] lookOf, byte[] marks, Ink ink, FloorLayer layer) {
		this.picture = picture;
		this.outline = outline;
		this.x = x;
		this.y = y;
		this.grid = grid;
		this.looks = looks;
		this.lookOf = lookOf;
		this.marks = marks;
		this.ink = ink;
		this.layer = layer;
	}

	/** Radius of a sample's shape in points: grows with the scale, within limits. */
	public static double radiusPoints(double pointsPerMetre) {
		return Math.rint(2 * Math.max(2.5, Math.min(5.5, 2 + 0.12 * pointsPerMetre))) / 2;
	}

	/** How far in points a sample reaches from its middle at most. */
	public static double reachPoints(double pointsPerMetre) {
		return radiusPoints(pointsPerMetre) * 1.2 + 16;
	}

	/**
	 * Draws a piece.
	 *
	 * @param pixels         side × side, 0xRRGGBB
	 * @param column         of its left side, counted in pixels from x = 0
	 * @param row            of its upper side, counted downwards in pixels from y = 0
	 * @param pixelsPerMetre of the display's own pixels
	 * @param pixelsPerPoint 2 on a display of 200 %
	 */
	public void draw(int[] pixels, int side, long column, long row, double pixelsPerMetre, double pixelsPerPoint) {
		Arrays.fill(pixels, ink.background());
		if (picture != null) {
			picture.draw(pixels, side, column / pixelsPerMetre, -row / pixelsPerMetre, pixelsPerMetre, ink.background(),
					PALER,
					ink.isDark());
		}
		if (layer != null) {
			layer.drawPatches(pixels, side, column, row, pixelsPerMetre, picture == null ? 1 : HEAT);
		}
		if (outline != null) {
			drawOutline(pixels, side, column, row, pixelsPerMetre, pixelsPerPoint);
		}
		if (layer != null) {
			layer.drawArrows(pixels, side, column, row, pixelsPerMetre, pixelsPerPoint);
		}
		double reach = reachPoints(pixelsPerMetre / pixelsPerPoint) * pixelsPerPoint;
		Bounds bounds = Bounds.between((column - reach) / pixelsPerMetre, -(row - reach) / pixelsPerMetre,
				(column + side + reach) / pixelsPerMetre, -(row + side + reach) / pixelsPerMetre);
		count = 0;
		grid.within(bounds, this::keep);
		// what is marked on top, else in order; so two pieces agree where they meet
		Arrays.sort(found, 0, count);
		double radius = radiusPoints(pixelsPerMetre / pixelsPerPoint) * pixelsPerPoint;
		for (int k = 0; k < count; k++) {
			int i = found[k] & (1 << SAMPLE_BITS) - 1;
			sprite(lookOf[i], marks[i], radius, pixelsPerPoint).draw(pixels, side,
					(int) (Math.round(x[i] * pixelsPerMetre) - column),
					(int) (Math.round(-y[i] * pixelsPerMetre) - row));
		}
	}

	private void keep(int sample) {
		if (count == found.length) {
			found = Arrays.copyOf(found, 2 * count);
		}
		found[count++] = marks[sample] << SAMPLE_BITS | sample;
	}

	private Sprite sprite(int look, int mark, double radius, double pixelsPerPoint) {
		Sprite[] all = sprites.computeIfAbsent(Math.round(radius * 4) << 32 | Math.round(pixelsPerPoint * 100),
				key -> new Sprite[SampleMark.END * looks.size()]);
		int at = SampleMark.END * look + mark;
		if (all[at] == null) {
			all[at] = Sprites.shared().of(looks.get(look), mark, radius, pixelsPerPoint, ink);
		}
		return all[at];
	}

	private void drawOutline(int[] pixels, int side, long column, long row, double pixelsPerMetre,
			double pixelsPerPoint) {
		for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
			Segment.draw(pixels, side, outline.xMetres(j) * pixelsPerMetre - column,
					-outline.yMetres(j) * pixelsPerMetre - row,
					outline.xMetres(i) * pixelsPerMetre - column, -outline.yMetres(i) * pixelsPerMetre - row,
					1.5 * pixelsPerPoint, Rgb.between(ink.background(), ink.line(), 0.6));
		}
	}
}
