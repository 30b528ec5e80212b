package org.cairnfield.ui.charts.colour;

import org.eclipse.swt.graphics.RGB;

/**
 * What people see who lack one kind of cone: Viénot, Brettel and Mollon, "Digital video colourmaps for checking the
 * legibility of displays by dichromats", Color Research and Application 24 (1999). Matrices as published; values from
 * memory, checked by what follows from them: white stays white.
 */
enum Dichromat {
	/** Without L cones. */
	PROTANOPE(new double[][] { { 0, 2.02344, -2.52581 }, { 0, 1, 0 }, { 0, 0, 1 } }),
	/** Without M cones. */
	DEUTERANOPE(new double[][] { { 1, 0, 0 }, { 0.494207, 0, 1.24827 }, { 0, 0, 1 } });

	private static final double[][] LMS = { { 17.8824, 43.5161, 4.11935 }, { 3.45565, 27.1554, 3.86714 },
			{ 0.0299566, 0.184309, 1.46709 } };

	private final double[][] loss;

	Dichromat(double[][] loss) {
		this.loss = loss;
	}

	RGB sees(RGB rgb) {
		double[] linear = { Lab.linear(rgb.red), Lab.linear(rgb.green), Lab.linear(rgb.blue) };
		// the reduction of the colour domain that the paper asks for before the projection
		for (int i = 0; i < 3; i++) {
			linear[i] = 0.992052 * linear[i] + 0.003974;
		}
		double[] seen = solve(LMS, times(loss, times(LMS, linear)));
		return new RGB(channel(seen[0]), channel(seen[1]), channel(seen[2]));
	}

	private static int channel(double light) {
		double cut = Math.max(0, Math.min(1, light));
		return (int) Math.round(255 * (cut <= 0.0031308 ? 12.92 * cut : 1.055 * Math.pow(cut, 1 / 2.4) - 0.055));
	}

	private static double[] times(double[][] m, double[] v) {
		double[] product = new double[3];
		for (int i = 0; i < 3; i++) {
			product[i] = m[i][0] * v[0] + m[i][1] * v[1] + m[i][2] * v[2];
		}
		return product;
	}

	/** Cramer's rule. */
	private static double[] solve(double[][] m, double[] v) {
		double whole = determinant(m);
		double[] solution = new double[3];
		for (int column = 0; column < 3; column++) {
			double[][] replaced = { m[0].clone(), m[1].clone(), m[2].clone() };
			for (int row = 0; row < 3; row++) {
				replaced[row][column] = v[row];
			}
			solution[column] = determinant(replaced) / whole;
		}
		return solution;
	}

	private static double determinant(double[][] m) {
		return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
				+ m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
	}
}
