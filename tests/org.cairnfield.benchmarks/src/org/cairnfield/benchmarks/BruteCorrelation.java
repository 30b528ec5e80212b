package org.cairnfield.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.Signals;

/**
 * Pearson correlation of distance rows as it is written down: the n × n matrix as doubles, rows centred and of unit
 * length, one product of two rows a pair. The matrix is filled by the core's own distances and only pairs of noise
 * and labelled samples are multiplied, so it is quicker than a general-purpose correlation matrix would be.
 */
final class BruteCorrelation {

	/** The best cluster and the best r of it and of any other. */
	record Best(int sample, int cluster, double r, double runnerUpR) {
	}

	private BruteCorrelation() {
	}

	static List<Best> of(Signals signals, Clustering clustering) {
		double[][] unit = unitRows(signals);
		List<Best> found = new ArrayList<>();
		for (int s = 0; s < unit.length; s++) {
			if (clustering.isNoise(s)) {
				found.add(best(unit, s, clustering));
			}
		}
		return found;
	}

	private static double[][] unitRows(Signals signals) {
		int n = signals.size();
		Components components = signals.components();
		DistanceKernel kernel = signals.kernel();
		double[] near = new double[components.largest()];
		double[][] rows = new double[n][n];
		for (int s = 0; s < n; s++) {
			kernel.row(s, near);
			double sum = 0;
			for (int other = 0; other < n; other++) {
				boolean within = components.componentOf(other) == components.componentOf(s);
				rows[s][other] = within ? near[components.placeOf(other)] : signals.apart(s, other);
				sum += rows[s][other];
			}
			double squares = 0;
			for (int other = 0; other < n; other++) {
				rows[s][other] -= sum / n;
				squares += rows[s][other] * rows[s][other];
			}
			double length = Math.sqrt(squares);
			for (int other = 0; other < n; other++) {
				rows[s][other] /= length;
			}
		}
		return rows;
	}

	private static Best best(double[][] unit, int sample, Clustering clustering) {
		double[] byCluster = new double[clustering.clusters()];
		Arrays.fill(byCluster, Double.NEGATIVE_INFINITY);
		for (int other = 0; other < unit.length; other++) {
			if (!clustering.isNoise(other)) {
				int cluster = clustering.label(other);
				byCluster[cluster] = Math.max(byCluster[cluster], product(unit[sample], unit[other]));
			}
		}
		int first = 0;
		double second = Double.NEGATIVE_INFINITY;
		for (int c = 1; c < byCluster.length; c++) {
			second = Math.max(second, Math.min(byCluster[c], byCluster[first]));
			first = byCluster[c] > byCluster[first] ? c : first;
		}
		return new Best(sample, first, byCluster[first], second);
	}

	/** Four sums at once: one alone would wait for each addition. */
	private static double product(double[] a, double[] b) {
		double s0 = 0;
		double s1 = 0;
		double s2 = 0;
		double s3 = 0;
		int i = 0;
		for (; i + 3 < a.length; i += 4) {
			s0 += a[i] * b[i];
			s1 += a[i + 1] * b[i + 1];
			s2 += a[i + 2] * b[i + 2];
			s3 += a[i + 3] * b[i + 3];
		}
		for (; i < a.length; i++) {
			s0 += a[i] * b[i];
		}
		return s0 + s1 + s2 + s3;
	}
}
