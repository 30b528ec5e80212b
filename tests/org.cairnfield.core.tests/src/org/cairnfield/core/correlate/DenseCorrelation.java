package org.cairnfield.core.correlate;

import java.util.Arrays;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.DenseForm;
import org.cairnfield.core.distance.Signals;

/** The brute form: the whole matrix of distances, its rows correlated by Commons Math. */
final class DenseCorrelation {

	private final double[][] matrix;
	private final double[][] r;

	DenseCorrelation(Signals signals) {
		matrix = DenseForm.of(signals).matrix();
		PearsonsCorrelation pearson = new PearsonsCorrelation();
		r = new double[matrix.length][matrix.length];
		for (int a = 0; a < r.length; a++) {
			for (int b = 0; b <= a; b++) {
				r[a][b] = matrix.length < 2 ? Double.NaN : pearson.correlation(matrix[a], matrix[b]);
				r[b][a] = r[a][b];
			}
		}
	}

	double r(int a, int b) {
		return r[a][b];
	}

	double distance(int a, int b) {
		return matrix[a][b];
	}

	/** The best r with a member of each cluster, negative infinity where none is defined. */
	double[] bestByCluster(int sample, Clustering clustering) {
		double[] best = new double[clustering.clusters()];
		Arrays.fill(best, Double.NEGATIVE_INFINITY);
		for (int other = 0; other < matrix.length; other++) {
			int cluster = clustering.label(other);
			if (cluster != Clustering.NOISE && !Double.isNaN(r[sample][other])) {
				best[cluster] = Math.max(best[cluster], r[sample][other]);
			}
		}
		return best;
	}

	/** The first of the nearest labelled samples, or −1. */
	int nearestLabelled(int sample, Clustering clustering) {
		int nearest = -1;
		for (int other = 0; other < matrix.length; other++) {
			if (!clustering.isNoise(other) && (nearest < 0 || matrix[sample][other] < matrix[sample][nearest])) {
				nearest = other;
			}
		}
		return nearest;
	}
}
