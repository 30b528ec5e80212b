package org.cairnfield.core.reduce;

import java.io.Serializable;
import java.util.Arrays;
import org.cairnfield.core.task.Workers;

/**
 * Regression by a Gaussian process with mean 0 (C. E. Rasmussen, C. K. I. Williams, "Gaussian Processes for Machine Learning", 2006,
 * algorithm 2.1). With K of the inputs, k of them and the point asked for, and noise variance σ²,
 *
 * <pre>mean = kᵀ (K + σ²I)⁻¹ y (2.25), variance = k(x, x) − kᵀ (K + σ²I)⁻¹ k (2.26).</pre>
 *
 * Several targets share one kernel. Fitting n inputs takes n³/6 steps and n² numbers, a mean n, a variance n²/2.
 */
public final class GaussianProcess implements Serializable {

	/** The most inputs that it is fitted to. */
	public static final int MOST_INPUTS = 2_000;

	private static final long serialVersionUID = 1;
	private static final double[] LENGTHS = { 0.0625, 0.125, 0.25, 0.5, 1, 2 };
	private static final double[] NOISES = { 1e-3, 1e-2, 1e-1, 0.5 };

	/**
	 * The covariance s·exp(−d² / 2ℓ²) of two points a distance of d apart.
	 *
	 * @param lengthScale    ℓ, in units of the inputs
	 * @param signalVariance s, in squared units of the targets
	 * @param noiseVariance  of a target around the process, likewise
	 */
	public record Kernel(double lengthScale, double signalVariance, double noiseVariance) implements Serializable {

		/** @throws IllegalArgumentException unless all are above 0 */
		public Kernel {
			if (!(lengthScale > 0 && signalVariance > 0 && noiseVariance > 0)) {
				throw new IllegalArgumentException("length and variances must be above 0: " + lengthScale + ", "
						+ signalVariance + ", " + noiseVariance);
			}
		}

		double covariance(double square) {
			return signalVariance * GaussianKernel.of(square, lengthScale);
		}
	}

	private final double[][] inputs;
	private final Kernel kernel;
	private final double[][] lower;
	/** (K + σ²I)⁻¹ y, by target. */
	private final double[][] weights;
	private final double[] logLikelihood;

	private GaussianProcess(double[][] inputs, Kernel kernel, double[][] lower, double[][] weights,
			double[] logLikelihood) {
		this.inputs = inputs;
		this.kernel = kernel;
		this.lower = lower;
		this.weights = weights;
		this.logLikelihood = logLikelihood;
	}

	/**
	 * @param inputs  1 to {@link #MOST_INPUTS}, all of one length; not copied
	 * @param targets by input, then target; with mean 0, or what is to be expected far from all inputs is not
	 * @throws IllegalArgumentException for too few or too many inputs
	 */
	public static GaussianProcess of(double[][] inputs, double[][] targets, Kernel kernel, Workers workers) {
		int n = inputs.length;
		if (n < 1 || n > MOST_INPUTS || targets.length != n) {
			throw new IllegalArgumentException(
					"need 1 to " + MOST_INPUTS + " inputs, and targets for each; had " + n + " and " + targets.length);
		}
		return of(inputs, GaussianKernel.squares(inputs), targets, kernel, workers);
	}

	private static GaussianProcess of(double[][] inputs, double[][] squares, double[][] targets, Kernel kernel,
			Workers workers) {
		int n = inputs.length;
		double[][] covariance = new double[n][n];
		for (int i = 0; i < n; i++) {
			for (int j = 0; j <= i; j++) {
				covariance[i][j] = kernel.covariance(squares[i][j]);
			}
			covariance[i][i] += kernel.noiseVariance();
		}
		workers.progress().begin(Messages.GaussianProcess_gaussianProcess, n);
		Cholesky factor = Cholesky.of(covariance, workers);
		double[][] weights = new double[targets[0].length][n];
		double[] logLikelihood = new double[weights.length];
		for (int t = 0; t < weights.length; t++) {
			double fit = 0;
			for (int i = 0; i < n; i++) {
				weights[t][i] = targets[i][t];
			}
			factor.solve(weights[t]);
			for (int i = 0; i < n; i++) {
				fit += targets[i][t] * weights[t][i];
			}
			logLikelihood[t] = -fit / 2 - factor.logDeterminant() / 2 - n / 2.0 * Math.log(2 * Math.PI);
		}
		return new GaussianProcess(inputs, kernel, factor.lower(), weights, logLikelihood);
	}

	/**
	 * The kernel under which targets of variance 1 are most likely (2.30), all together: lengths of 1/16 to 2 median distances of the
	 * inputs, noise of 0.001 to 0.5. Fits 24 processes, so a few hundred inputs will do.
	 */
	public static Kernel likeliest(double[][] inputs, double[][] targets, Workers workers) {
		double[][] squares = GaussianKernel.squares(inputs);
		double median = GaussianKernel.medianDistance(squares);
		Kernel best = null;
		double most = Double.NEGATIVE_INFINITY;
		workers.progress().begin("kernel", (long) LENGTHS.length * NOISES.length);
		for (double length : LENGTHS) {
			for (double noise : NOISES) {
				Kernel kernel = new Kernel(length * median, 1, noise);
				double likelihood = Arrays.stream(of(inputs, squares, targets, kernel, workers.quietly()).logLikelihood)
						.sum();
				workers.progress().advance(1);
				if (likelihood > most) {
					most = likelihood;
					best = kernel;
				}
			}
		}
		return best;
	}

	public Kernel kernel() {
		return kernel;
	}

	/** How many inputs it was fitted to. */
	public int inputs() {
		return inputs.length;
	}

	/** The expected targets at a point. */
	public double[] means(double[] at) {
		double[] k = covariances(at);
		double[] means = new double[weights.length];
		for (int t = 0; t < means.length; t++) {
			means[t] = Dense.dot(weights[t], k, k.length);
		}
		return means;
	}

	/** The variance of each target at a point, without noise. */
	public double variance(double[] at) {
		double[] k = covariances(at);
		new Cholesky(lower).solveLower(k);
		return kernel.signalVariance() - Dense.dot(k, k, k.length);
	}

	/** The log of the marginal likelihood of a target (2.30). */
	public double logLikelihood(int target) {
		return logLikelihood[target];
	}

	private double[] covariances(double[] at) {
		double[] k = new double[inputs.length];
		Arrays.setAll(k, i -> kernel.covariance(GaussianKernel.square(inputs[i], at)));
		return k;
	}
}
