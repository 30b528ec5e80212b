package org.cairnfield.batch.cli;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.stream.IntStream;

/** The algorithms in their plainest, densest form, on a survey file read by {@link Csv}. */
final class Naive {

	private Naive() {
	}

	/** Levels by sample and access point, NaN where not heard. */
	static double[][] levels(Csv survey, String lastPlaceColumn) {
		int[] columns = survey.columnsAfter(lastPlaceColumn);
		return survey.rows().stream().map(row -> Arrays.stream(columns).mapToObj(row::get)
				.mapToDouble(cell -> cell.isEmpty() ? Double.NaN : Double.parseDouble(cell)).toArray())
				.toArray(double[][]::new);
	}

	static double lowest(double[][] levels) {
		return Arrays.stream(levels).flatMapToDouble(Arrays::stream).filter(v -> !Double.isNaN(v)).min().orElseThrow();
	}

	/** RSSI − (min − 1); 0 where not heard or below min. */
	static double[][] positive(double[][] levels, double lowest) {
		return Arrays.stream(levels).map(row -> Arrays.stream(row)
				.map(v -> Double.isNaN(v) ? 0 : Math.max(0, v - (lowest - 1))).toArray()).toArray(double[][]::new);
	}

	static double cityBlock(double[] a, double[] b) {
		return IntStream.range(0, a.length).mapToDouble(i -> Math.abs(a[i] - b[i])).sum();
	}

	static double euclidean(double[] a, double[] b) {
		return Math.sqrt(IntStream.range(0, a.length).mapToDouble(i -> (a[i] - b[i]) * (a[i] - b[i])).sum());
	}

	/** All n × n distances. */
	static double[][] matrix(double[][] points, java.util.function.ToDoubleBiFunction<double[], double[]> distance) {
		return Arrays.stream(points)
				.map(a -> Arrays.stream(points).mapToDouble(b -> distance.applyAsDouble(a, b)).toArray())
				.toArray(double[][]::new);
	}

	/** What DBSCAN made of the samples. */
	record Labels(int[] cluster, String[] role) {
	}

	/**
	 * Ester, Kriegel, Sander, Xu, KDD-96: cores have minPts samples within ε, themselves counted. What they
	 * leave open is settled as the product promises: clusters numbered by their first core, border samples
	 * with the nearest core.
	 */
	static Labels dbscan(double[][] d, double epsilon, int minPts) {
		int n = d.length;
		boolean[] core = new boolean[n];
		for (int i = 0; i < n; i++) {
			core[i] = Arrays.stream(d[i]).filter(v -> v <= epsilon).count() >= minPts;
		}
		int[] cluster = new int[n];
		String[] role = new String[n];
		Arrays.fill(cluster, -1);
		Arrays.fill(role, "noise");
		int next = 0;
		for (int i = 0; i < n; i++) {
			if (core[i] && cluster[i] < 0) {
				spread(d, epsilon, core, cluster, i, next++);
			}
		}
		for (int i = 0; i < n; i++) {
			if (core[i]) {
				role[i] = "core";
				continue;
			}
			int nearest = -1;
			for (int j = 0; j < n; j++) {
				if (core[j] && d[i][j] <= epsilon && (nearest < 0 || d[i][j] < d[i][nearest])) {
					nearest = j;
				}
			}
			if (nearest >= 0) {
				cluster[i] = cluster[nearest];
				role[i] = "border";
			}
		}
		return new Labels(cluster, role);
	}

	private static void spread(double[][] d, double epsilon, boolean[] core, int[] cluster, int from, int label) {
		Deque<Integer> open = new ArrayDeque<>();
		cluster[from] = label;
		open.add(from);
		while (!open.isEmpty()) {
			int i = open.remove();
			for (int j = 0; j < d.length; j++) {
				if (core[j] && cluster[j] < 0 && d[i][j] <= epsilon) {
					cluster[j] = label;
					open.add(j);
				}
			}
		}
	}

	static double pearson(double[] a, double[] b) {
		double meanA = Arrays.stream(a).average().orElseThrow();
		double meanB = Arrays.stream(b).average().orElseThrow();
		double ab = 0;
		double aa = 0;
		double bb = 0;
		for (int i = 0; i < a.length; i++) {
			ab += (a[i] - meanA) * (b[i] - meanB);
			aa += (a[i] - meanA) * (a[i] - meanA);
			bb += (b[i] - meanB) * (b[i] - meanB);
		}
		return ab / Math.sqrt(aa * bb);
	}

	/** The p-th percentile at place p(n + 1) of the sorted values, Hyndman and Fan's sixth definition. */
	static double percentile(double[] values, double p) {
		double[] sorted = values.clone();
		Arrays.sort(sorted);
		double place = p / 100 * (sorted.length + 1);
		if (place < 1 || place >= sorted.length) {
			return sorted[place < 1 ? 0 : sorted.length - 1];
		}
		int below = (int) place;
		return sorted[below - 1] + (place - below) * (sorted[below] - sorted[below - 1]);
	}
}
