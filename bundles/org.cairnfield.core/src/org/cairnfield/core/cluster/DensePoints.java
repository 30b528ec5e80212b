package org.cairnfield.core.cluster;

import org.cairnfield.core.distance.Distance;

/** Points with a few coordinates each, such as the scores of a principal component analysis. */
public final class DensePoints extends ScannedPoints {

	private final double[][] points;
	private final Distance distance;

	/** @param points one row a point, all of one length; not copied */
	public DensePoints(double[][] points, Distance distance) {
		this.points = points;
		this.distance = distance;
	}

	@Override
	public int size() {
		return points.length;
	}

	@Override
	Scan scan() {
		return (point, reach, found) -> {
			for (int other = 0; other < points.length; other++) {
				if (other != point) {
					double d = between(points[point], points[other], distance);
					if (d <= reach) {
						found.add(other, d);
					}
				}
			}
		};
	}

	/** The distance of two points. */
	static double between(double[] a, double[] b, Distance distance) {
		double sum = 0;
		if (distance == Distance.CITY_BLOCK) {
			for (int c = 0; c < a.length; c++) {
				sum += Math.abs(a[c] - b[c]);
			}
			return sum;
		}
		for (int c = 0; c < a.length; c++) {
			sum += (a[c] - b[c]) * (a[c] - b[c]);
		}
		return Math.sqrt(sum);
	}

	/** The mean of some of them, at least one. */
	static double[] mean(double[][] points, int[] of) {
		double[] mean = new double[points[of[0]].length];
		for (int p : of) {
			for (int c = 0; c < mean.length; c++) {
				mean[c] += points[p][c] / of.length;
			}
		}
		return mean;
	}
}
