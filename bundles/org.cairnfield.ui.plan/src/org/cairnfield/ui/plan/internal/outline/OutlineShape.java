package org.cairnfield.ui.plan.internal.outline;

import java.util.Arrays;

import org.cairnfield.model.values.Outline;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.eclipse.osgi.util.NLS;

/**
 * How far an outline is drawn: corners in metres, to a centimetre where they were set by hand. Immutable.
 *
 * @param corners  none at the beginning
 * @param isClosed whether the last corner is joined to the first; else corners are still added at the end
 * @param selected the corner that keys are about; -1 for none
 */
public record OutlineShape(Outline corners, boolean isClosed, int selected) {

	/** Fewer enclose nothing. */
	public static final int LEAST_CORNERS = 3;
	private static final Outline NONE = Outline.of(new double[0], new double[0]);

	/** Of an outline that a floor has, or null. */
	public static OutlineShape of(Outline outline) {
		return outline == null ? new OutlineShape(NONE, false, -1)
				: new OutlineShape(outline, outline.size() >= LEAST_CORNERS, -1);
	}

	public int size() {
		return corners.size();
	}

	/** The number of sides that are drawn; side i begins at corner i. */
	public int sides() {
		return isClosed ? size() : Math.max(0, size() - 1);
	}

	/** The corner at the end of a side. */
	public int endOf(int side) {
		return (side + 1) % size();
	}

	/** Length of a side. */
	public double metres(int side) {
		return Math.hypot(corners.xMetres(endOf(side)) - corners.xMetres(side),
				corners.yMetres(endOf(side)) - corners.yMetres(side));
	}

	/** Middle of a side. */
	public double middleX(int side) {
		return (corners.xMetres(side) + corners.xMetres(endOf(side))) / 2;
	}

	/** Middle of a side. */
	public double middleY(int side) {
		return (corners.yMetres(side) + corners.yMetres(endOf(side))) / 2;
	}

	/** Another corner is selected, or none (-1). */
	public OutlineShape selecting(int corner) {
		return new OutlineShape(corners, isClosed, corner);
	}

	/** Joins the last corner to the first, where there are enough. */
	public OutlineShape closed() {
		return size() < LEAST_CORNERS ? this : new OutlineShape(corners, true, -1);
	}

	/** With a corner more, which becomes number {@code at} and is selected. */
	public OutlineShape inserted(int at, double xMetres, double yMetres) {
		return new OutlineShape(with(at, 0, xMetres, yMetres), isClosed, at);
	}

	/** With a corner more at the end. */
	public OutlineShape added(double xMetres, double yMetres) {
		return inserted(size(), xMetres, yMetres);
	}

	/** With a corner elsewhere, which is selected. */
	public OutlineShape moved(int corner, double xMetres, double yMetres) {
		return new OutlineShape(with(corner, 1, xMetres, yMetres), isClosed, corner);
	}

	/** Without the selected corner; the one before it is selected. Of two corners that are left the ring is open. */
	public OutlineShape removed() {
		if (selected < 0) {
			return this;
		}
		Outline left = Outline.of(cut(xs(), selected), cut(ys(), selected));
		boolean stays = isClosed && left.size() >= LEAST_CORNERS;
		return new OutlineShape(left, stays, left.size() == 0 ? -1 : selected > 0 ? selected - 1 : left.size() - 1);
	}

	/**
	 * The place nearest to another one where the side that ends in a corner stands at a right angle to the side before it, or goes on
	 * straight; without a side before it, along one of the axes.
	 *
	 * @param corner from 1 on where the ring is open, and as far as the number of corners, for one to come
	 * @return x and y in metres
	 */
	public double[] atRightAngle(int corner, double xMetres, double yMetres) {
		if (size() == 0 || !isClosed && corner == 0) {
			return new double[] { xMetres, yMetres };
		}
		int from = Math.floorMod(corner - 1, size());
		double alongX = 1;
		double alongY = 0;
		if (isClosed || corner > 1) {
			int before = Math.floorMod(corner - 2, size());
			double dx = corners.xMetres(from) - corners.xMetres(before);
			double dy = corners.yMetres(from) - corners.yMetres(before);
			double metres = Math.hypot(dx, dy);
			if (metres > 0) {
				alongX = dx / metres;
				alongY = dy / metres;
			}
		}
		double x = xMetres - corners.xMetres(from);
		double y = yMetres - corners.yMetres(from);
		double along = x * alongX + y * alongY;
		double aside = y * alongX - x * alongY;
		boolean goesOn = Math.abs(along) >= Math.abs(aside);
		return new double[] { corners.xMetres(from) + (goesOn ? along * alongX : -aside * alongY),
				corners.yMetres(from) + (goesOn ? along * alongY : aside * alongX) };
	}

	/** In a line for people: how many corners, area and way round, and the corner that is selected. */
	public String words() {
		double round = 0;
		for (int side = 0; side < sides(); side++) {
			round += metres(side);
		}
		String text = size() == 1 ? Messages.OutlineShape_1Corner : NLS.bind(Messages.OutlineShape_corners, size());
		text += isClosed
				? NLS.bind(Messages.OutlineShape_round, ShownNumbers.text(corners.areaSquareMetres(), 1, "m²"),
						ShownNumbers.text(round, 1, "m"))
				: size() > 1 ? NLS.bind(Messages.OutlineShape_soFar, ShownNumbers.text(round, 1, "m")) : "";
		return selected < 0 ? text
				: NLS.bind(Messages.OutlineShape_cornerXY,
						new Object[] { text, selected + 1, ShownNumbers.text(corners.xMetres(selected), 2, "m"),
								ShownNumbers.text(corners.yMetres(selected), 2, "m") });
	}

	private Outline with(int at, int skipped, double xMetres, double yMetres) {
		return Outline.of(with(xs(), at, skipped, xMetres), with(ys(), at, skipped, yMetres));
	}

	private static double[] with(double[] values, int at, int skipped, double value) {
		double[] more = Arrays.copyOf(values, values.length + 1 - skipped);
		more[at] = Math.rint(value * 100) / 100;
		System.arraycopy(values, at + skipped, more, at + 1, values.length - at - skipped);
		return more;
	}

	private static double[] cut(double[] values, int at) {
		double[] fewer = Arrays.copyOf(values, values.length - 1);
		System.arraycopy(values, at + 1, fewer, at, fewer.length - at);
		return fewer;
	}

	private double[] xs() {
		double[] all = new double[size()];
		Arrays.setAll(all, corners::xMetres);
		return all;
	}

	private double[] ys() {
		double[] all = new double[size()];
		Arrays.setAll(all, corners::yMetres);
		return all;
	}
}
