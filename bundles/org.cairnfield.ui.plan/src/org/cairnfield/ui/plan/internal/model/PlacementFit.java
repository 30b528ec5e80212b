package org.cairnfield.ui.plan.internal.model;

import java.util.List;

import org.cairnfield.model.values.Placement;

/**
 * The similarity that brings control points of an image closest to their places on the floor, in the sense of least squares:
 * Umeyama, "Least-squares estimation of transformation parameters between two point patterns", IEEE Transactions on Pattern
 * Analysis and Machine Intelligence 13 (1991), equations 40 to 42, in two dimensions, where rotation and scale of the
 * centred points p (image) and q (floor) taken as complex numbers are argument and modulus of Σ p̄q / Σ |p|². An image is
 * never mirrored.
 *
 * @param placement       of the image
 * @param residualsMetres how far each point is off after it, in the order given
 * @param rmsMetres       root of their mean square; 0 for two points, which always fit
 */
public record PlacementFit(Placement placement, List<Double> residualsMetres, double rmsMetres) {

	public PlacementFit {
		residualsMetres = List.copyOf(residualsMetres);
	}

	/**
	 * Fits at least two points.
	 *
	 * @throws IllegalArgumentException telling what is missing: fewer than two points, or all at one place of image or floor
	 */
	public static PlacementFit of(List<ControlPoint> points) {
		if (points.size() < 2) {
			throw new IllegalArgumentException("two control points are needed at least");
		}
		double meanColumn = points.stream().mapToDouble(ControlPoint::column).average().orElseThrow();
		double meanRow = points.stream().mapToDouble(ControlPoint::row).average().orElseThrow();
		double meanX = points.stream().mapToDouble(ControlPoint::xMetres).average().orElseThrow();
		double meanY = points.stream().mapToDouble(ControlPoint::yMetres).average().orElseThrow();
		double real = 0;
		double imaginary = 0;
		double squares = 0;
		for (ControlPoint each : points) {
			double a = each.column() - meanColumn;
			double b = meanRow - each.row(); // upwards
			double x = each.xMetres() - meanX;
			double y = each.yMetres() - meanY;
			real += a * x + b * y;
			imaginary += a * y - b * x;
			squares += a * a + b * b;
		}
		if (squares == 0) {
			throw new IllegalArgumentException("the points are all at one place of the image");
		}
		double scale = Math.hypot(real, imaginary) / squares;
		if (scale == 0) {
			throw new IllegalArgumentException("the points are all at one place of the floor, or fit it in no way");
		}
		double turn = Math.atan2(imaginary, real);
		Placement placement = new Placement(scale, Math.toDegrees(turn),
				meanX - scale * (Math.cos(turn) * meanColumn + Math.sin(turn) * meanRow),
				meanY - scale * (Math.sin(turn) * meanColumn - Math.cos(turn) * meanRow));
		List<Double> residuals = points.stream()
				.map(each -> Math.hypot(placement.xMetres(each.column(), each.row()) - each.xMetres(),
						placement.yMetres(each.column(), each.row()) - each.yMetres()))
				.toList();
		double mean = residuals.stream().mapToDouble(each -> each * each).average().orElseThrow();
		return new PlacementFit(placement, residuals, Math.sqrt(mean));
	}
}
