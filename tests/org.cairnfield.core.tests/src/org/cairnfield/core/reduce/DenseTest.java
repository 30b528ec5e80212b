package org.cairnfield.core.reduce;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Matrices against those of Commons Math. */
class DenseTest {

	private static final Workers HERE = Workers.inline();

	private static double[][] random(int rows, int columns, long seed) {
		Random random = new Random(seed);
		double[][] matrix = new double[rows][columns];
		for (double[] row : matrix) {
			Arrays.setAll(row, c -> random.nextInt(4) == 0 ? 0 : random.nextGaussian());
		}
		return matrix;
	}

	private static void assertMatrix(RealMatrix expected, double[][] found, double tolerance) {
		for (int i = 0; i < found.length; i++) {
			assertArrayEquals(expected.getRow(i), found[i], tolerance);
		}
	}

	@ParameterizedTest
	@ValueSource(ints = { 1, 2, 63, 64, 65, 150 })
	void multiplies(int n) {
		double[][] a = random(n, n, 1);
		double[][] b = random(n, n, 2);
		RealMatrix expected = new Array2DRowRealMatrix(a).multiply(new Array2DRowRealMatrix(b));
		assertMatrix(expected, Dense.multiply(a, b, HERE), 1e-12);
		try (Threads threads = new Threads(2)) {
			assertMatrix(expected, Dense.multiply(a, b, threads.workers()), 1e-12);
		}
	}

	@ParameterizedTest
	@ValueSource(ints = { 1, 2, 5, 40 })
	void factorsAndInverts(int n) {
		double[][] b = random(n, n, 3);
		RealMatrix positive = new Array2DRowRealMatrix(b).multiply(new Array2DRowRealMatrix(b).transpose());
		for (int i = 0; i < n; i++) {
			positive.addToEntry(i, i, 1);
		}
		LUDecomposition expected = new LUDecomposition(positive);
		Cholesky found = Cholesky.of(positive.getData(), HERE);
		assertMatrix(expected.getSolver().getInverse(), found.inverse(HERE), 1e-11);
		assertEquals(Math.log(expected.getDeterminant()), found.logDeterminant(), 1e-9);
		double[] solved = random(1, n, 4)[0];
		double[] wanted = expected.getSolver().solve(new ArrayRealVector(solved)).toArray();
		found.solve(solved);
		assertArrayEquals(wanted, solved, 1e-11);
	}

	@Test
	void refusesWhatIsNotPositive() {
		assertThrows(IllegalArgumentException.class, () -> Cholesky.of(new double[][] { { 1, 2 }, { 2, 1 } }, HERE));
	}

	@Test
	void makesKernelsOfSparseAndFullRowsAlike() {
		double[][] rows = random(40, 7, 5);
		int[] some = { 3, 4, 9, 30, 39 };
		double[][] found = GaussianKernel.inPlace(GaussianKernel.squares(new DenseAsSparse(rows), some), 1.7);
		double[][] full = GaussianKernel.inPlace(GaussianKernel.squares(rows), 1.7);
		for (int i = 0; i < some.length; i++) {
			for (int j = 0; j < some.length; j++) {
				double distance = new ArrayRealVector(rows[some[i]]).getDistance(new ArrayRealVector(rows[some[j]]));
				double expected = Math.exp(-distance * distance / (2 * 1.7 * 1.7));
				assertEquals(expected, found[i][j], 1e-14);
				assertEquals(expected, full[some[i]][some[j]], 1e-14);
			}
		}
	}

	@Test
	void measuresByTheMedianDistance() {
		double[][] line = { { 0 }, { 1 }, { 3 }, { 7 } }; // 1 2 3 4 6 7
		assertEquals(Math.sqrt((9 + 16) / 2.0), GaussianKernel.medianDistance(GaussianKernel.squares(line)), 1e-12);
		assertEquals(1, GaussianKernel.medianDistance(GaussianKernel.squares(new double[4][1])));
	}
}
