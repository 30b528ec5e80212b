package org.cairnfield.ui.plan.internal.geometry;

/** Where an arrow key leads: to the nearest point on that side. */
public enum Direction {
	LEFT(-1, 0), RIGHT(1, 0), UP(0, 1), DOWN(0, -1);

	/** Being aside costs this much more than being far, so that rows and columns of a survey are walked in order. */
	private static final double ASIDE = 2;

	private final int dx;
	private final int dy;

	Direction(int dx, int dy) {
		this.dx = dx;
		this.dy = dy;
	}

	/** The next point from one, within 60° of the direction; or -1. Points at the same place are passed over. */
	public int next(double[] x, double[] y, int from) {
		int best = -1;
		double least = Double.POSITIVE_INFINITY;
		for (int i = 0; i < x.length; i++) {
			double along = dx * (x[i] - x[from]) + dy * (y[i] - y[from]);
			double aside = Math.abs(dy * (x[i] - x[from]) + dx * (y[i] - y[from]));
			if (along > 0 && aside <= along * Math.sqrt(3)) {
				double cost = along + ASIDE * aside;
				if (cost < least) {
					least = cost;
					best = i;
				}
			}
		}
		return best;
	}
}
