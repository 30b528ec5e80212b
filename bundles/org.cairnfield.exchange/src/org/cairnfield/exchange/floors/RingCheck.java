package org.cairnfield.exchange.floors;

import java.util.List;

import org.cairnfield.core.text.Words;

/** Whether rings can bound a floor. */
final class RingCheck {

	/** Each side is compared with each other one. */
	private static final int MOST_CORNERS = 10_000;

	private RingCheck() {
	}

	/** @throws UnfitShapeException where an outer ring crosses itself, encloses nothing, or has too many corners */
	static void checkOuter(List<List<double[][]>> polygons) throws UnfitShapeException {
		for (List<double[][]> polygon : polygons) {
			double[][] ring = polygon.get(0);
			if (ring.length > MOST_CORNERS) {
				throw new UnfitShapeException(
						Words.bind(Messages.RingCheck_itsOutlineHasCornersMore, ring.length, MOST_CORNERS),
						Messages.RingCheck_simplifyTheOutline);
			}
			requireSimple(ring);
			if (MapGeometry.twiceArea(ring) == 0) {
				throw new UnfitShapeException(Messages.RingCheck_itsOutlineEnclosesNothing,
						Messages.RingCheck_drawItAnew);
			}
		}
	}

	private static void requireSimple(double[][] ring) throws UnfitShapeException {
		int n = ring.length;
		for (int i = 0; i < n; i++) {
			double[] a = ring[i];
			double[] b = ring[(i + 1) % n];
			for (int j = i + 2; j < n - (i == 0 ? 1 : 0); j++) {
				if (cross(a, b, ring[j], ring[(j + 1) % n])) {
					throw new UnfitShapeException(
							Words.bind(Messages.RingCheck_itsOutlineCrossesItselfThe, MapGeometry.position(a),
									MapGeometry.position(ring[j])),
							Messages.RingCheck_drawItsCornersInOrder);
				}
			}
		}
	}

	/** Whether two segments cross between their ends; touching is no crossing. */
	private static boolean cross(double[] a, double[] b, double[] c, double[] d) {
		if (Math.max(a[0], b[0]) < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) < Math.min(a[0], b[0])) {
			return false;
		}
		return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
	}

	/** On which side of the line from a to b the point lies: −1, 0 or 1. */
	private static double side(double[] a, double[] b, double[] p) {
		return Math.signum((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]));
	}
}
