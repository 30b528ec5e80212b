package org.cairnfield.core.reduce;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.cairnfield.core.reduce.KernelReduction.Settings;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KernelReductionTest {

	private static final Workers HERE = Workers.inline();

	private static double gaussian(double[] a, double[] b, double width) {
		double square = 0;
		for (int c = 0; c < a.length; c++) {
			square += (a[c] - b[c]) * (a[c] - b[c]);
		}
		return Math.exp(-square / (2 * width * width));
	}

	private static RealMatrix kernel(double[][] rows, double width) {
		RealMatrix kernel = new Array2DRowRealMatrix(rows.length, rows.length);
		for (int i = 0; i < rows.length; i++) {
			for (int j = 0; j < rows.length; j++) {
				kernel.setEntry(i, j, gaussian(rows[i], rows[j], width));
			}
		}
		return kernel;
	}

	/** The mean of gradient outer products as it is written, with the gradient of every kernel at every row laid out. */
	private static RealMatrix laidOut(double[][] rows, double[][] outputs, Settings settings) {
		int n = rows.length;
		double width = settings.inputScale() * GaussianKernel.medianDistance(GaussianKernel.squares(rows));
		double outputWidth = settings.outputScale() * GaussianKernel.medianDistance(GaussianKernel.squares(outputs));
		RealMatrix inverse = new LUDecomposition(
				kernel(rows, width).add(MatrixUtils.createRealIdentityMatrix(n).scalarMultiply(n * settings.ridge())))
				.getSolver().getInverse();
		RealMatrix f = inverse.multiply(kernel(outputs, outputWidth)).multiply(inverse);
		RealMatrix mean = new Array2DRowRealMatrix(rows[0].length, rows[0].length);
		for (double[] at : rows) {
			RealMatrix gradients = new Array2DRowRealMatrix(n, at.length);
			for (int j = 0; j < n; j++) {
				for (int c = 0; c < at.length; c++) {
					gradients.setEntry(j, c, gaussian(rows[j], at, width) * (rows[j][c] - at[c]) / (width * width));
				}
			}
			mean = mean.add(gradients.transpose().multiply(f).multiply(gradients).scalarMultiply(1.0 / n));
		}
		return mean;
	}

	@Test
	void averagesGradientsAsIfTheyWereLaidOut() {
		for (int seed = 1; seed <= 5; seed++) {
			Random random = new Random(seed);
			double[][] rows = new double[40][6];
			double[][] outputs = new double[40][2];
			for (int i = 0; i < rows.length; i++) {
				for (int c = 0; c < 6; c++) {
					rows[i][c] = random.nextInt(3) == 0 ? 0 : random.nextGaussian();
				}
				outputs[i][0] = Math.sin(rows[i][0] + rows[i][1]);
				outputs[i][1] = rows[i][2] + 0.1 * random.nextGaussian();
			}
			Settings settings = new Settings(0.5 + 0.3 * seed, 1.2, 1e-3, 2000, 1);
			RealMatrix expected = laidOut(rows, outputs, settings);
			KernelReduction found = KernelReduction.of(new DenseAsSparse(rows), outputs, settings, HERE);
			for (int a = 0; a < 6; a++) {
				for (int b = 0; b < 6; b++) {
					double entry = 0;
					for (int c = 0; c < 6; c++) {
						entry += found.weight(a, c) * found.strength(c) * found.weight(b, c);
					}
					assertEquals(expected.getEntry(a, b), entry, 1e-9 * expected.getFrobeniusNorm());
				}
			}
		}
	}

	/**
	 * Regressions on a few directions of many, as the two papers have them; formulas from memory. E is standard normal.
	 */
	enum Planted {
		/** Fukumizu and Leng 2014: y = z sin z + 0.1·E, z = (x₁ + 2x₂) / √5, x uniform on [−1, 1]¹⁰. */
		Z_SINE(400, new double[][] { { 1, 2, 0, 0, 0, 0, 0, 0, 0, 0 } }) {
			@Override
			double[] x(Random random) {
				return random.doubles(10, -1, 1).toArray();
			}

			@Override
			double y(double[] x, double noise) {
				double z = (x[0] + 2 * x[1]) / Math.sqrt(5);
				return z * Math.sin(z) + 0.1 * noise;
			}
		},
		/** Fukumizu and Leng 2014: y = (z₁³ + z₂)(z₁ − z₂³) + 0.1·E, z = (x₁ ± x₂) / √2, x uniform on [−1, 1]¹⁰. */
		CUBES(1000, new double[][] { { 1, 1, 0, 0, 0, 0, 0, 0, 0, 0 }, { 1, -1, 0, 0, 0, 0, 0, 0, 0, 0 } }) {
			@Override
			double[] x(Random random) {
				return random.doubles(10, -1, 1).toArray();
			}

			@Override
			double y(double[] x, double noise) {
				double z1 = (x[0] + x[1]) / Math.sqrt(2);
				double z2 = (x[0] - x[1]) / Math.sqrt(2);
				return (z1 * z1 * z1 + z2) * (z1 - z2 * z2 * z2) + 0.1 * noise;
			}
		},
		/** Fukumizu, Bach and Jordan 2009: y = x₁ / (0.5 + (x₂ + 1.5)²) + (1 + x₂)² + 0.1·E, x standard normal in 4 dimensions. */
		FRACTION(400, new double[][] { { 1, 0, 0, 0 }, { 0, 1, 0, 0 } }) {
			@Override
			double[] x(Random random) {
				return random.doubles(4, 0, 1).map(u -> random.nextGaussian()).toArray();
			}

			@Override
			double y(double[] x, double noise) {
				return x[0] / (0.5 + Math.pow(x[1] + 1.5, 2)) + Math.pow(1 + x[1], 2) + 0.1 * noise;
			}
		},
		/** Fukumizu, Bach and Jordan 2009: y = sin²(πx₂ + 1) + 0.1·E, x uniform on the unit cube of 4 dimensions without [0, 0.7]⁴. */
		CORNERED_SINE(400, new double[][] { { 0, 1, 0, 0 } }) {
			@Override
			double[] x(Random random) {
				double[] x = random.doubles(4).toArray();
				return x[0] <= 0.7 && x[1] <= 0.7 && x[2] <= 0.7 && x[3] <= 0.7 ? x(random) : x;
			}

			@Override
			double y(double[] x, double noise) {
				return Math.pow(Math.sin(Math.PI * x[1] + 1), 2) + 0.1 * noise;
			}
		};

		final int n;
		final double[][] directions;

		Planted(int n, double[][] directions) {
			this.n = n;
			this.directions = directions;
		}

		abstract double[] x(Random random);

		abstract double y(double[] x, double noise);
	}

	@ParameterizedTest
	@EnumSource
	void recoversPlantedDirections(Planted planted) {
		for (int seed = 1; seed <= 2; seed++) {
			Random random = new Random(seed);
			double[][] rows = new double[planted.n][];
			double[][] outputs = new double[planted.n][1];
			for (int i = 0; i < planted.n; i++) {
				rows[i] = planted.x(random);
				outputs[i][0] = planted.y(rows[i], random.nextGaussian());
			}
			KernelReduction found = KernelReduction.of(new DenseAsSparse(rows), outputs, Settings.usual(1), HERE);
			double angle = angleDegrees(found, planted.directions);
			assertTrue(angle < 5, "seed " + seed + ": " + angle + "°");
		}
	}

	/** The largest angle between the space planted, given by directions at right angles, and as many of those found. */
	private static double angleDegrees(KernelReduction found, double[][] planted) {
		RealMatrix cosines = new Array2DRowRealMatrix(planted.length, planted.length);
		for (int d = 0; d < planted.length; d++) {
			double norm = Math.sqrt(GaussianKernel.square(planted[d], new double[planted[d].length]));
			for (int c = 0; c < planted.length; c++) {
				for (int j = 0; j < planted[d].length; j++) {
					cosines.addToEntry(d, c, planted[d][j] / norm * found.weight(j, c));
				}
			}
		}
		double[] values = new SingularValueDecomposition(cosines).getSingularValues();
		return Math.toDegrees(Math.acos(Math.min(1, values[values.length - 1])));
	}

	private static double[][] scattered(int n, long seed) {
		Random random = new Random(seed);
		double[][] rows = new double[n][];
		for (int i = 0; i < n; i++) {
			rows[i] = Planted.Z_SINE.x(random);
		}
		return rows;
	}

	@Test
	void projectsOntoItsDirections() {
		double[][] rows = scattered(60, 1);
		double[][] outputs = scattered(60, 2);
		KernelReduction found = KernelReduction.of(new DenseAsSparse(rows), outputs, Settings.usual(1), HERE);
		assertEquals(10, found.columns());
		double[][] others = scattered(5, 3);
		for (int i = 0; i < 5; i++) {
			double[] scores = found.scores(new DenseAsSparse(others), i, 3);
			for (int c = 0; c < 3; c++) {
				double expected = 0;
				for (int j = 0; j < 10; j++) {
					expected += others[i][j] * found.weight(j, c);
				}
				assertEquals(expected, scores[c], 1e-12);
			}
			assertArrayEquals(scores, found.scores(new DenseAsSparse(others), 3)[i]);
		}
		for (int c = 1; c < 10; c++) {
			assertTrue(found.strength(c) <= found.strength(c - 1) && found.strength(c) >= 0);
		}
	}

	@Test
	void drawsLandmarksAndIsTheSameForAnyNumberOfThreads() {
		SparseRows rows = new DenseAsSparse(scattered(200, 1));
		double[][] outputs = scattered(200, 2);
		Settings few = new Settings(1, 1, 1e-4, 90, 5);
		KernelReduction expected = KernelReduction.of(rows, outputs, few, HERE);
		assertEquals(90, expected.landmarks());
		try (Threads threads = new Threads(3)) {
			KernelReduction found = KernelReduction.of(rows, outputs, few, threads.workers());
			for (int c = 0; c < 10; c++) {
				assertEquals(expected.strength(c), found.strength(c));
			}
		}
		assertTrue(expected.strength(0) != KernelReduction.of(rows, outputs, new Settings(1, 1, 1e-4, 90, 6), HERE)
				.strength(0));
	}

	@Test
	void refusesTooLittleAndTooMuch() {
		SparseRows one = new DenseAsSparse(new double[][] { { 1, 2 } });
		assertThrows(IllegalArgumentException.class,
				() -> KernelReduction.of(one, new double[1][1], Settings.usual(1), HERE));
		SparseRows wide = new DenseAsSparse(new double[2][Pca.MAX_COLUMNS + 1]);
		assertThrows(IllegalArgumentException.class,
				() -> KernelReduction.of(wide, new double[2][1], Settings.usual(1), HERE));
		assertThrows(IllegalArgumentException.class, () -> new Settings(1, 1, 0, 100, 1));
		assertThrows(IllegalArgumentException.class, () -> new Settings(1, 1, 1, 2001, 1));
	}
}
