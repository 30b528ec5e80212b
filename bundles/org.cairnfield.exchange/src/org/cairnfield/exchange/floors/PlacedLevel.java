package org.cairnfield.exchange.floors;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.exchange.export.SiteFrame;
import org.cairnfield.exchange.export.SiteProjection;

/** A level in the metres of the frame of its site, to a tenth of a millimetre. */
public final class PlacedLevel {

	private static final double PER_METRE = 1e4;

	/** A shape in metres; a path is its {x, y}. */
	record Placed(DrawnAs as, boolean isClosed, List<double[][]> paths) {
	}

	private final List<List<double[][]>> extent;
	private final List<Placed> shapes;

	private PlacedLevel(List<List<double[][]>> extent, List<Placed> shapes) {
		this.extent = extent;
		this.shapes = shapes;
	}

	/**
	 * Brings a level from degrees into metres.
	 *
	 * @throws IllegalArgumentException where something of it lies so far from the site that metres of its frame are none on the ground
	 */
	public static PlacedLevel of(MappedLevel level, SiteFrame.Anchor anchor) {
		EarthSystem.requireNear(new double[] { anchor.longitudeDegrees(), anchor.latitudeDegrees() },
				level.extent().stream().flatMap(List::stream));
		EarthSystem.requireNear(new double[] { anchor.longitudeDegrees(), anchor.latitudeDegrees() },
				level.shapes().stream().flatMap(shape -> shape.paths().stream()));
		SiteProjection projection = new SiteProjection(anchor);
		return new PlacedLevel(level.extent().stream().map(polygon -> metres(polygon, projection)).toList(),
				level.shapes().stream()
						.map(shape -> new Placed(shape.as(), shape.isClosed(), metres(shape.paths(), projection)))
						.toList());
	}

	private static List<double[][]> metres(List<double[][]> paths, SiteProjection projection) {
		List<double[][]> metres = new ArrayList<>();
		for (double[][] path : paths) {
			double[][] to = new double[path.length][];
			for (int i = 0; i < path.length; i++) {
				double[] at = projection.metres(path[i][0], path[i][1]);
				to[i] = new double[] { rounded(at[0]), rounded(at[1]) };
			}
			metres.add(to);
		}
		return metres;
	}

	private static double rounded(double metres) {
		return Math.rint(metres * PER_METRE) / PER_METRE + 0.0;
	}

	/**
	 * The outline: the outer ring of its polygon, or the smallest convex outline around the outer rings of several. Holes stay inside.
	 *
	 * @return empty where the file has no outline of the level
	 */
	public Optional<Polygon> outline() {
		if (extent.isEmpty()) {
			return Optional.empty();
		}
		double[][] corners = extent.stream().map(polygon -> polygon.get(0)).flatMap(Arrays::stream)
				.toArray(double[][]::new);
		double[] x = new double[corners.length];
		double[] y = new double[corners.length];
		for (int i = 0; i < corners.length; i++) {
			x[i] = corners[i][0];
			y[i] = corners[i][1];
		}
		return Optional.ofNullable(extent.size() == 1 ? new Polygon(x, y) : Polygon.around(x, y));
	}

	/** Polygons of the level, each its outer ring and its holes. */
	List<List<double[][]>> extent() {
		return extent;
	}

	List<Placed> shapes() {
		return shapes;
	}

	/** The smallest x and y, the largest x and y of the outline, or of what is drawn where there is none; null where there is nothing. */
	public double[] bounds() {
		List<double[][]> paths = extent.isEmpty() ? shapes.stream().flatMap(shape -> shape.paths().stream()).toList()
				: extent.stream().flatMap(List::stream).toList();
		double[] box = { Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY,
				Double.NEGATIVE_INFINITY };
		for (double[][] path : paths) {
			for (double[] at : path) {
				box[0] = Math.min(box[0], at[0]);
				box[1] = Math.min(box[1], at[1]);
				box[2] = Math.max(box[2], at[0]);
				box[3] = Math.max(box[3], at[1]);
			}
		}
		return box[0] <= box[2] ? box : null;
	}
}
