package org.cairnfield.core.reduce;

import java.io.Serializable;
import java.util.Arrays;
import org.cairnfield.core.stats.Draw;
import org.cairnfield.core.task.Workers;

/**
 * The few directions of the columns that carry the outputs: supervised kernel dimension reduction (K. Fukumizu, F. R. Bach,
 * M. I. Jordan, "Kernel dimension reduction in regression", Annals of Statistics 37, 2009) in the gradient form, gKDR (K. Fukumizu,
 * C. Leng, "Gradient-based kernel dimension reduction for regression", Journal of the American Statistical Association 109, 2014).
 * The directions are the leading eigenvectors of the mean over rows i of
 *
 * <pre>∇k(xᵢ)ᵀ (K + nεI)⁻¹ G (K + nεI)⁻¹ ∇k(xᵢ),</pre>
 *
 * K and G the Gaussian kernel matrices of n rows and of their outputs, ∇k(x) the gradients of k(xⱼ, ·) at x. With
 * F = (K + nεI)⁻¹ G (K + nεI)⁻¹ that mean is Xᵀ Q X / (nσ⁴), where
 *
 * <pre>Q = KK ∘ F − K ∘ (KF + FK) + diag(KFK)</pre>
 *
 * and ∘ multiplies element by element, so gradients are never stored. Cost: about 4·n³ steps, six n × n matrices, and the eigenvectors
 * of columns × columns. 2,000 rows took 22 s of processor time and 200 MB with 111 columns, 44 s and 290 MB with 1,000. Where there are
 * more rows, landmarks are drawn by seed.
 */
public final class KernelReduction implements Reduction, Serializable {

	/** The most rows that may be landmarks. */
	public static final int MOST_LANDMARKS = 2_000;

	private static final long serialVersionUID = 1;

	/**
	 * How it is done.
	 *
	 * @param inputScale  σ of the rows' kernel, in median distances of two of them
	 * @param outputScale σ of the outputs' kernel, likewise
	 * @param ridge       ε
	 * @param landmarks   2 … {@link #MOST_LANDMARKS}
	 * @param seed        draws landmarks
	 */
	public record Settings(double inputScale, double outputScale, double ridge, int landmarks, long seed)
			implements Serializable {

		/** @throws IllegalArgumentException for a number out of range */
		public Settings {
			if (!(inputScale > 0) || !(outputScale > 0) || !(ridge > 0) || landmarks < 2
					|| landmarks > MOST_LANDMARKS) {
				throw new IllegalArgumentException(
						"scales and ridge must be above 0, landmarks 2 to " + MOST_LANDMARKS + ": " + inputScale + ", "
								+ outputScale + ", " + ridge + ", " + landmarks);
			}
		}

		/** Median distances, ε = 10⁻⁴, as many landmarks as may be. */
		public static Settings usual(long seed) {
			return new Settings(1, 1, 1e-4, MOST_LANDMARKS, seed);
		}
	}

	private final double[][] directions;
	private final double[] strength;
	private final int landmarks;

	private KernelReduction(Eigenvectors eigenvectors, int landmarks) {
		directions = eigenvectors.vectors();
		strength = eigenvectors.values();
		this.landmarks = landmarks;
	}

	/**
	 * @param rows    at least two, with 1 to {@link Pca#MAX_COLUMNS} columns
	 * @param outputs by row, then output, in units in which all outputs weigh alike, such as those of {@link PlaceOutputs}
	 * @param workers hears of the progress and may cancel until the decomposition begins
	 * @throws IllegalArgumentException for too few rows, or too many columns
	 */
	public static KernelReduction of(SparseRows rows, double[][] outputs, Settings settings, Workers workers) {
		if (rows.size() < 2 || outputs.length != rows.size() || rows.columns() < 1
				|| rows.columns() > Pca.MAX_COLUMNS) {
			throw new IllegalArgumentException(
					"need two rows, an output for each, and 1 to " + Pca.MAX_COLUMNS + " columns; had " + rows.size()
							+ " rows, " + outputs.length + " outputs, " + rows.columns() + " columns");
		}
		int[] some = Draw.some(settings.landmarks(), rows.size(), settings.seed());
		double[][] ofSome = new double[some.length][];
		for (int i = 0; i < some.length; i++) {
			ofSome[i] = outputs[some[i]];
		}
		workers.progress().begin(Messages.KernelReduction_kernelReduction, 6L * some.length);
		double[][] squares = GaussianKernel.squares(rows, some);
		double width = settings.inputScale() * GaussianKernel.medianDistance(squares);
		double[][] outputSquares = GaussianKernel.squares(ofSome);
		double[][] g = GaussianKernel.inPlace(outputSquares,
				settings.outputScale() * GaussianKernel.medianDistance(outputSquares));
		double[][] q = weights(GaussianKernel.inPlace(squares, width), g, settings.ridge(), workers);
		double[][] mean = between(rows, some, q, some.length * Math.pow(width, 4), workers);
		return new KernelReduction(Eigenvectors.of(mean), some.length);
	}

	/**
	 * Q. With A = (K + nεI)⁻¹ it is KA = I − nεA, so KF = GA − nεF and KFK = G − nε(AG + GA) + (nε)²F.
	 */
	static double[][] weights(double[][] k, double[][] g, double ridge, Workers workers) {
		int n = k.length;
		double shift = n * ridge;
		double[][] shifted = new double[n][];
		for (int i = 0; i < n; i++) {
			shifted[i] = k[i].clone();
			shifted[i][i] += shift;
		}
		double[][] a = Cholesky.of(shifted, workers).inverse(workers);
		double[][] ga = Dense.multiply(g, a, workers);
		double[][] f = Dense.multiply(a, ga, workers);
		double[][] q = Dense.multiply(k, k, workers);
		for (int i = 0; i < n; i++) {
			for (int j = 0; j < n; j++) {
				double both = ga[i][j] + ga[j][i] - shift * (f[i][j] + f[j][i]);
				q[i][j] = q[i][j] * f[i][j] - k[i][j] * both;
			}
			q[i][i] += g[i][i] - 2 * shift * ga[i][i] + shift * shift * f[i][i];
		}
		return q;
	}

	/** Xᵀ·Q·X / scale, made symmetric where rounding has it otherwise. */
	private static double[][] between(SparseRows rows, int[] some, double[][] q, double scale, Workers workers) {
		double[][] product = new double[rows.columns()][rows.columns()];
		double[] weighted = new double[rows.columns()];
		for (int i = 0; i < some.length; i++) {
			workers.checkCancelled();
			Arrays.fill(weighted, 0);
			for (int j = 0; j < some.length; j++) {
				for (int e = rows.start(some[j]); e < rows.end(some[j]); e++) {
					weighted[rows.column(e)] += q[i][j] * rows.value(e);
				}
			}
			for (int e = rows.start(some[i]); e < rows.end(some[i]); e++) {
				double[] line = product[rows.column(e)];
				for (int c = 0; c < line.length; c++) {
					line[c] += rows.value(e) * weighted[c] / scale;
				}
			}
			workers.progress().advance(1);
		}
		for (int c = 0; c < product.length; c++) {
			for (int o = 0; o < c; o++) {
				product[c][o] = product[o][c] = (product[c][o] + product[o][c]) / 2;
			}
		}
		return product;
	}

	@Override
	public int columns() {
		return directions.length;
	}

	/** The eigenvalue of a component: how much outputs change along it; comparable within one reduction only. */
	public double strength(int component) {
		return strength[component];
	}

	/** The weight of a column in a component's unit vector. */
	public double weight(int column, int component) {
		return directions[column][component];
	}

	/** Rows that it was fitted to. */
	public int landmarks() {
		return landmarks;
	}

	@Override
	public double[] scores(SparseRows rows, int row, int components) {
		double[] scores = new double[components];
		for (int e = rows.start(row); e < rows.end(row); e++) {
			double[] weights = directions[rows.column(e)];
			for (int c = 0; c < components; c++) {
				scores[c] += rows.value(e) * weights[c];
			}
		}
		return scores;
	}
}
