package org.cairnfield.core.reduce;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.distribution.MultivariateNormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.cairnfield.core.reduce.GaussianProcess.Kernel;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class GaussianProcessTest {

	private static final Workers HERE = Workers.inline();

	/**
	 * Rasmussen and Williams 2006, eq. 2.25 and 2.26, worked by hand: inputs 0 and 1 with targets 1 and 2, length and signal variance 1,
	 * noise 0.1. With a = 1.1, b = e^(−1/2) and det = a² − b², (K + 0.1·I)⁻¹ = ((a, −b), (−b, a)) / det.
	 */
	@Test
	void agreesWithAPosteriorWorkedByHand() {
		GaussianProcess process = GaussianProcess.of(new double[][] { { 0 }, { 1 } }, new double[][] { { 1 }, { 2 } },
				new Kernel(1, 1, 0.1), HERE);
		double a = 1.1;
		double b = Math.exp(-0.5);
		double det = a * a - b * b;
		// at 0: k = (1, b); weights (a − 2b, 2a − b) / det
		assertEquals((a - 2 * b + b * (2 * a - b)) / det, process.means(new double[] { 0 })[0], 1e-14);
		assertEquals(1.0134, process.means(new double[] { 0 })[0], 1e-4);
		assertEquals(1 - (a - 2 * b * b + a * b * b) / det, process.variance(new double[] { 0 }), 1e-14);
		assertEquals(0.0869, process.variance(new double[] { 0 }), 1e-4);
		// at 1/2: k = (c, c), c = e^(−1/8)
		double c = Math.exp(-0.125);
		assertEquals(c * (a - 2 * b + 2 * a - b) / det, process.means(new double[] { 0.5 })[0], 1e-14);
		assertEquals(1 - 2 * c * c * (a - b) / det, process.variance(new double[] { 0.5 }), 1e-14);
		// far away nothing is known
		assertArrayEquals(new double[] { 0 }, process.means(new double[] { 50 }), 1e-14);
		assertEquals(1, process.variance(new double[] { 50 }), 1e-14);
	}

	@Test
	void agreesWithMatricesOfCommonsMath() {
		Random random = new Random(4);
		int n = 25;
		double[][] inputs = new double[n][3];
		double[][] targets = new double[n][2];
		for (int i = 0; i < n; i++) {
			inputs[i] = new double[] { random.nextGaussian(), random.nextGaussian(), random.nextGaussian() };
			targets[i] = new double[] { random.nextGaussian(), inputs[i][0] };
		}
		Kernel kernel = new Kernel(0.8, 1.7, 0.3);
		GaussianProcess process = GaussianProcess.of(inputs, targets, kernel, HERE);
		RealMatrix covariance = new Array2DRowRealMatrix(n, n);
		for (int i = 0; i < n; i++) {
			for (int j = 0; j < n; j++) {
				covariance.setEntry(i, j,
						1.7 * Math.exp(-GaussianKernel.square(inputs[i], inputs[j]) / (2 * 0.64)) + (i == j ? 0.3 : 0));
			}
		}
		RealMatrix inverse = new LUDecomposition(covariance).getSolver().getInverse();
		double[] at = { 0.1, -0.4, 0.9 };
		RealVector k = new ArrayRealVector(n);
		for (int i = 0; i < n; i++) {
			k.setEntry(i, 1.7 * Math.exp(-GaussianKernel.square(inputs[i], at) / (2 * 0.64)));
		}
		MultivariateNormalDistribution prior = new MultivariateNormalDistribution(new double[n], covariance.getData());
		for (int t = 0; t < 2; t++) {
			RealVector y = new Array2DRowRealMatrix(targets).getColumnVector(t);
			assertEquals(k.dotProduct(inverse.operate(y)), process.means(at)[t], 1e-12);
			assertEquals(Math.log(prior.density(y.toArray())), process.logLikelihood(t), 1e-8); // eq. 2.30
		}
		assertEquals(1.7 - k.dotProduct(inverse.operate(k)), process.variance(at), 1e-12);
	}

	/** Drawn from a process of known length and noise, targets are most likely under a kernel near it. */
	@Test
	void findsTheKernelThatTargetsCameFrom() {
		int n = 200;
		for (double length : new double[] { 1, 4 }) {
			Random random = new Random(3);
			double[][] inputs = new double[n][1];
			for (double[] input : inputs) {
				input[0] = 10 * random.nextDouble();
			}
			RealMatrix covariance = new Array2DRowRealMatrix(n, n);
			for (int i = 0; i < n; i++) {
				for (int j = 0; j < n; j++) {
					covariance.setEntry(i, j,
							Math.exp(-GaussianKernel.square(inputs[i], inputs[j]) / (2 * length * length))
									+ (i == j ? 0.01 : 0));
				}
			}
			double[][] lower = Cholesky.of(covariance.getData(), HERE).lower();
			double[] white = random.ints(n).mapToDouble(i -> random.nextGaussian()).toArray();
			double[][] targets = new double[n][1];
			for (int i = 0; i < n; i++) {
				targets[i][0] = Dense.dot(lower[i], white, i + 1);
			}
			Kernel found = GaussianProcess.likeliest(inputs, targets, HERE);
			assertEquals(0.01, found.noiseVariance());
			assertTrue(found.lengthScale() > length / 2 && found.lengthScale() < length * 2, length + ": " + found);
		}
	}

	@Test
	void refusesNothingTooMuchAndKernelsWithoutNoise() {
		assertThrows(IllegalArgumentException.class,
				() -> GaussianProcess.of(new double[0][], new double[0][], new Kernel(1, 1, 1), HERE));
		assertThrows(IllegalArgumentException.class,
				() -> GaussianProcess.of(new double[2001][1], new double[2001][1], new Kernel(1, 1, 1), HERE));
		assertThrows(IllegalArgumentException.class, () -> new Kernel(1, 1, 0));
	}
}
