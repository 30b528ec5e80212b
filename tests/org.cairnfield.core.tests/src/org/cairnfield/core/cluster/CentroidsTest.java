package org.cairnfield.core.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.Stream;
import org.cairnfield.core.distance.DenseForm;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CentroidsTest {

	private static final int SAMPLES = 50;

	static Stream<Arguments> all() {
		return Stream.of("positive", "exponential")
				.flatMap(r -> Arrays.stream(Distance.values()).map(d -> Arguments.of(r, d)));
	}

	/** Dense values, not heard at 0 as the centroids have it. */
	private static double[][] values(Signals signals) {
		double[][] values = new double[signals.size()][signals.map().accessPointCount()];
		SignalRows rows = signals.rows();
		for (int s = 0; s < values.length; s++) {
			for (int k = rows.start(s); k < rows.end(s); k++) {
				values[s][rows.column(k)] = signals.value(rows.step(k));
			}
		}
		return values;
	}

	private static int[][] cells(long seed) {
		int[] order = ScatteredMap.shuffled(SAMPLES, seed);
		return new int[][] { Arrays.copyOfRange(order, 0, 1), Arrays.copyOfRange(order, 1, 20),
				Arrays.copyOfRange(order, 20, 23), Arrays.copyOfRange(order, 23, 45) };
	}

	private static double[] mean(double[][] values, int[] cell) {
		double[] mean = new double[values[0].length];
		for (int s : cell) {
			for (int a = 0; a < mean.length; a++) {
				mean[a] += values[s][a] / cell.length;
			}
		}
		return mean;
	}

	private static void assertStandAt(double[][] expected, Centroids found, Signals signals, double[][] values) {
		DenseForm dense = DenseForm.of(signals);
		assertEquals(expected.length, found.size());
		double[] out = new double[found.size() + 1];
		out[found.size()] = -7;
		for (int s = 0; s < SAMPLES; s++) {
			found.distances(signals.rows(), s, out);
			for (int c = 0; c < expected.length; c++) {
				double d = dense.between(values[s], expected[c]);
				assertEquals(d, out[c], 1e-7);
				assertEquals(d, found.distance(c, values[s], signals.rows().magnitude(s)), 1e-7);
			}
		}
		assertEquals(-7, out[found.size()]);
	}

	@ParameterizedTest
	@MethodSource("all")
	void standAtTheMeanOfTheirMembers(String representation, Distance kind) {
		for (long seed = 1; seed <= 20; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, SAMPLES), Representation.named(representation), kind);
			double[][] values = values(signals);
			double[][] expected = Arrays.stream(cells(seed)).map(cell -> mean(values, cell)).toArray(double[][]::new);
			Centroids found = Centroids.of(signals, cells(seed), Centroids.Kind.MEAN);
			assertStandAt(expected, found, signals, values);
			for (int c = 0; c < expected.length; c++) {
				assertEquals(Arrays.stream(expected[c]).map(kind::magnitude).sum(), found.magnitude(c), 1e-9);
			}
		}
	}

	@ParameterizedTest
	@MethodSource("all")
	void standAtTheMedoidOfTheirMembers(String representation, Distance kind) {
		for (long seed = 1; seed <= 20; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, SAMPLES), Representation.named(representation), kind);
			double[][] values = values(signals);
			double[][] matrix = DenseForm.of(signals).matrix();
			double[][] expected = new double[4][];
			for (int c = 0; c < 4; c++) {
				expected[c] = values[medoid(matrix, cells(seed)[c])];
			}
			assertStandAt(expected, Centroids.of(signals, cells(seed), Centroids.Kind.MEDOID), signals, values);
		}
	}

	/** The first of those whose sums differ by rounding only. */
	private static int medoid(double[][] matrix, int[] cell) {
		int best = -1;
		double least = Double.POSITIVE_INFINITY;
		for (int s : cell) {
			double sum = Arrays.stream(cell).mapToDouble(o -> matrix[s][o]).sum();
			if (sum < least - 1e-9) {
				least = sum;
				best = s;
			}
		}
		return best;
	}

	@ParameterizedTest
	@MethodSource("all")
	void groupsStandAtTheMeanOfTheirCentroids(String representation, Distance kind) {
		for (long seed = 1; seed <= 20; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, SAMPLES), Representation.named(representation), kind);
			double[][] values = values(signals);
			double[][] means = Arrays.stream(cells(seed)).map(cell -> mean(values, cell)).toArray(double[][]::new);
			int[][] groups = { { 3, 0, 1 }, { 2 } };
			double[][] expected = Arrays.stream(groups).map(g -> mean(means, g)).toArray(double[][]::new);
			Centroids cells = Centroids.of(signals, cells(seed), Centroids.Kind.MEAN);
			Centroids found = cells.grouped(groups);
			assertStandAt(expected, found, signals, values);
			DenseForm dense = DenseForm.of(signals);
			double[] out = new double[2];
			for (int c = 0; c < 4; c++) {
				found.distances(cells, c, out);
				assertEquals(dense.between(means[c], expected[0]), out[0], 1e-7);
				assertEquals(dense.between(means[c], expected[1]), out[1], 1e-7);
			}
		}
	}

	@Test
	void holdManyColumnsAndRows() {
		RadioMapBuilder b = new RadioMapBuilder();
		for (int s = 0; s < SAMPLES; s++) {
			b.sample("Tide House", 0, 0, 0);
			for (int a = 0; a < 60; a++) {
				b.reading("AP " + (s * 7 + a) % 400, -40 - (s + a) % 50);
			}
		}
		RadioMap map = b.build();
		Signals signals = Signals.of(map);
		int[][] each = new int[SAMPLES][];
		Arrays.setAll(each, s -> new int[] { s });
		assertStandAt(values(signals), Centroids.of(signals, each, Centroids.Kind.MEAN), signals, values(signals));
	}
}
