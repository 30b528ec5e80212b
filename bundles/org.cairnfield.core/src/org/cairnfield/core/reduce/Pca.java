package org.cairnfield.core.reduce;

import java.io.Serializable;
import java.util.Arrays;
import org.cairnfield.core.task.Workers;

/**
 * Principal components (Jolliffe, "Principal Component Analysis", 2002; NIST/SEMATECH e-Handbook, 6.5.5),
 * from the eigenvectors of the covariance or correlation matrix of the columns. Components come in order
 * of falling variance; the loading of largest size in each is positive, so the same data give the same
 * signs.
 */
public final class Pca implements Reduction, Serializable {

	/**
	 * The most columns accepted. The time grows with their cube and more: half a second for 520, two for 1000,
	 * a minute for 2000. Above this, leave out access points heard by few samples first.
	 */
	public static final int MAX_COLUMNS = 2000;

	private static final long serialVersionUID = 1;

	/** What is done to a column before its variance counts. */
	public enum Scaling {
		/** Its mean is taken off: columns that vary more weigh more. */
		CENTRED,
		/** Its mean is taken off and it is divided by its standard deviation (n - 1): all weigh alike. */
		STANDARDISED
	}

	private final Scaling scaling;
	private final double[] means;
	private final double[] scales;
	private final double[] eigenvalues;
	/** By column, then component. */
	private final double[][] loadings;
	/** What an all-zero row scores on each component. */
	private final double[] zeroScores;

	/**
	 * Of rows most of whose values are 0.
	 *
	 * @param rows    at least two, with 1 to {@link #MAX_COLUMNS} columns
	 * @param workers hears of the progress and may cancel until the decomposition begins
	 * @throws IllegalArgumentException for too few rows or columns, too many columns, or a value that is not
	 *                                  finite
	 */
	public static Pca of(SparseRows rows, Scaling scaling, Workers workers) {
		check(rows.size(), rows.columns());
		ColumnMoments moments = ColumnMoments.sparse(rows, workers);
		return new Pca(moments, scaling);
	}

	/**
	 * Of full rows.
	 *
	 * @param rows at least two, of one length from 1 to {@link #MAX_COLUMNS}
	 * @throws IllegalArgumentException as above, or where the lengths differ
	 */
	public static Pca of(double[][] rows, Scaling scaling) {
		check(rows.length, rows.length == 0 ? 0 : rows[0].length);
		for (double[] row : rows) {
			if (row.length != rows[0].length) {
				throw new IllegalArgumentException("rows differ in length: " + rows[0].length + " and " + row.length);
			}
		}
		return new Pca(ColumnMoments.dense(rows), scaling);
	}

	private static void check(int rows, int columns) {
		if (rows < 2 || columns < 1) {
			throw new IllegalArgumentException("principal components need two rows and a column at least; had "
					+ rows + " rows, " + columns + " columns");
		}
		if (columns > MAX_COLUMNS) {
			throw new IllegalArgumentException("principal components of " + columns + " columns: at most "
					+ MAX_COLUMNS + " are taken; leave out access points that few samples heard");
		}
	}

	private Pca(ColumnMoments moments, Scaling scaling) {
		this.scaling = scaling;
		this.means = moments.means();
		int p = means.length;
		double[][] matrix = moments.covariance();
		this.scales = new double[p];
		for (int j = 0; j < p; j++) {
			if (!Double.isFinite(matrix[j][j])) {
				throw new IllegalArgumentException("column " + j + " has a value that is not finite");
			}
			double sd = Math.sqrt(Math.max(0, matrix[j][j]));
			// A column that does not vary has nothing to scale, and its deviations are 0 anyway.
			scales[j] = scaling == Scaling.STANDARDISED && sd > 0 ? sd : 1;
		}
		for (int i = 0; i < p; i++) {
			for (int j = 0; j < p; j++) {
				matrix[i][j] /= scales[i] * scales[j];
			}
		}
		Eigenvectors found = Eigenvectors.of(matrix);
		this.eigenvalues = found.values();
		this.loadings = found.vectors();
		this.zeroScores = new double[p];
		for (int j = 0; j < p; j++) {
			for (int c = 0; c < p; c++) {
				zeroScores[c] -= means[j] / scales[j] * loadings[j][c];
			}
		}
	}

	/** How columns were treated. */
	public Scaling scaling() {
		return scaling;
	}

	/** How many columns, and components. */
	@Override
	public int columns() {
		return means.length;
	}

	/** The variance of a component: squared units of the data, or none where standardised. */
	public double variance(int component) {
		return eigenvalues[component];
	}

	/** A component's share of the total variance; NaN where nothing varies. */
	public double varianceShare(int component) {
		return eigenvalues[component] / Arrays.stream(eigenvalues).sum();
	}

	/**
	 * The fewest components that together explain a share of the variance.
	 *
	 * @param share above 0, at most 1
	 */
	public int componentsFor(double share) {
		double wanted = share * Arrays.stream(eigenvalues).sum();
		double sum = 0;
		for (int c = 0; c < eigenvalues.length; c++) {
			sum += eigenvalues[c];
			// The last components may add nothing but rounding.
			if (sum >= wanted * (1 - 1e-12)) {
				return c + 1;
			}
		}
		return eigenvalues.length;
	}

	/** The mean of a column. */
	public double mean(int column) {
		return means[column];
	}

	/** The weight of a column in a component's unit vector. */
	public double loading(int column, int component) {
		return loadings[column][component];
	}

	/** The first {@code components} coordinates of a row among those analysed, or of any with the same columns. */
	@Override
	public double[] scores(SparseRows rows, int row, int components) {
		double[] scores = Arrays.copyOf(zeroScores, components);
		for (int k = rows.start(row), end = rows.end(row); k < end; k++) {
			add(scores, rows.column(k), rows.value(k));
		}
		return scores;
	}

	/** The first {@code components} coordinates of a full row. */
	public double[] scores(double[] row, int components) {
		double[] scores = new double[components];
		for (int j = 0; j < means.length; j++) {
			add(scores, j, row[j] - means[j]);
		}
		return scores;
	}

	private void add(double[] scores, int column, double value) {
		double scaled = value / scales[column];
		double[] weights = loadings[column];
		for (int c = 0; c < scores.length; c++) {
			scores[c] += scaled * weights[c];
		}
	}
}
