package org.cairnfield.core.simulate;

/**
 * Shadowing of one access point over the floors of its site: normal in dB, correlated in space. The law is
 * Gudmundson's exponential (Electronics Letters 27, 1991, p. 2145) taken in x and y apart,
 * ρ = exp(−(|Δx| + |Δy|)/ℓ), and a fixed factor from floor to floor. Values are drawn on a lattice by
 * first-order autoregression along each axis and interpolated between, scaled back to unit variance.
 */
final class ShadowField {

	private static final double STEP_METRES = 2;

	private final int columns;
	private final int rows;
	private final float[] nodes;
	/** Correlation of neighbouring nodes of a floor. */
	private final double neighbour;

	ShadowField(Site site, long key, double correlationMetres, double floorCorrelation) {
		double width = 0;
		double depth = 0;
		for (Floor floor : site.floors()) {
			width = Math.max(width, floor.outline().width());
			depth = Math.max(depth, floor.outline().depth());
		}
		columns = (int) (width / STEP_METRES) + 2;
		rows = (int) (depth / STEP_METRES) + 2;
		neighbour = Math.exp(-STEP_METRES / correlationMetres);
		int perFloor = columns * rows;
		nodes = new float[perFloor * site.floors().size()];
		for (int i = 0; i < nodes.length; i++) {
			nodes[i] = (float) Streams.gaussian(Streams.key(key, i));
		}
		for (int floor = 0; floor < site.floors().size(); floor++) {
			for (int row = 0; row < rows; row++) {
				for (int column = 1; column < columns; column++) {
					carry(floor * perFloor + row * columns + column, 1, neighbour);
				}
			}
			for (int i = columns; i < perFloor; i++) {
				carry(floor * perFloor + i, columns, neighbour);
			}
		}
		for (int i = perFloor; i < nodes.length; i++) {
			carry(i, perFloor, floorCorrelation);
		}
	}

	/** A node from the one before it; unit variance stays. */
	private void carry(int node, int back, double correlation) {
		nodes[node] = (float) (correlation * nodes[node - back]
				+ Math.sqrt(1 - correlation * correlation) * nodes[node]);
	}

	/** The field with standard deviation 1; places outside take the nearest edge's value. */
	double at(int floorIndex, double x, double y) {
		double u = Math.max(0, Math.min(columns - 1.001, x / STEP_METRES));
		double v = Math.max(0, Math.min(rows - 1.001, y / STEP_METRES));
		int column = (int) u;
		int row = (int) v;
		double fu = u - column;
		double fv = v - row;
		int at = (floorIndex * rows + row) * columns + column;
		double low = nodes[at] * (1 - fu) + nodes[at + 1] * fu;
		double high = nodes[at + columns] * (1 - fu) + nodes[at + columns + 1] * fu;
		return (low * (1 - fv) + high * fv) / Math.sqrt(variance(fu) * variance(fv));
	}

	/** Variance of a value between two nodes of variance 1. */
	private double variance(double f) {
		return (1 - f) * (1 - f) + f * f + 2 * f * (1 - f) * neighbour;
	}
}
