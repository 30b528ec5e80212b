package org.cairnfield.core.cluster;

import static org.cairnfield.core.cluster.ClusteringAssert.assertLabels;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Worked examples, each twice: as points, and as a radio map. A coordinate becomes the level of one access
 * point that every sample hears, so Euclidean distances of levels are those of the points times the scale.
 */
class DbscanTest {

	// The six points of scikit-learn's documentation of DBSCAN; labels of minPts 3 and 4 by scikit-learn 1.2.1.
	private static final double[][] SIX = { { 1, 2 }, { 2, 2 }, { 2, 3 }, { 8, 7 }, { 8, 8 }, { 25, 80 } };
	private static final double[][] TEN = { { 0, 0 }, { 0, 1 }, { 1, 0 }, { 1, 1 }, { 2.4, 1 }, { 5, 5 }, { 5, 6 },
			{ 6, 5 }, { 6, 6 }, { 10, 0 } };

	private static List<PointSet> sets(double[][] points, int scale) {
		return List.of(scaled(points, scale), PointSet.of(signals(points, scale)));
	}

	private static PointSet scaled(double[][] points, int scale) {
		return new DensePoints(Arrays.stream(points)
				.map(p -> Arrays.stream(p).map(v -> Math.round(v * scale)).toArray()).toArray(double[][]::new),
				Distance.EUCLIDEAN);
	}

	private static Signals signals(double[][] points, int scale) {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (double[] point : points) {
			builder.sample("Tide House", 0, 0, 0);
			for (int c = 0; c < point.length; c++) {
				builder.reading("AP " + c, (int) Math.round(-110 + point[c] * scale));
			}
		}
		return Signals.of(builder.build(), Representation.positive(), Distance.EUCLIDEAN);
	}

	private static double[][] line(double... points) {
		return Arrays.stream(points).mapToObj(p -> new double[] { p }).toArray(double[][]::new);
	}

	private static Clustering cluster(PointSet points, double epsilon, int minPts) {
		return Dbscan.cluster(points, epsilon, minPts, Workers.inline());
	}

	private static int[] withRole(Clustering c, Role role) {
		return IntStream.range(0, c.size()).filter(s -> c.role(s) == role).toArray();
	}

	@Test
	void countsTheSampleItselfInMinPts() {
		for (PointSet six : sets(SIX, 1)) {
			Clustering two = cluster(six, 3, 2);
			assertLabels(two, 0, 0, 0, 1, 1, -1);
			assertArrayEquals(new int[] { 0, 1, 2, 3, 4 }, withRole(two, Role.CORE));
			Clustering three = cluster(six, 3, 3);
			assertLabels(three, 0, 0, 0, -1, -1, -1);
			assertArrayEquals(new int[] { 0, 1, 2 }, withRole(three, Role.CORE));
			Clustering four = cluster(six, 3, 4);
			assertLabels(four, -1, -1, -1, -1, -1, -1);
			assertEquals(6, four.noise());
		}
	}

	@Test
	void takesTheClosedBall() {
		for (PointSet line : sets(line(0, 1, 2, 3, 10), 1)) {
			assertLabels(cluster(line, 1, 2), 0, 0, 0, 0, -1);
			assertLabels(cluster(line, 0.999999, 2), -1, -1, -1, -1, -1);
		}
	}

	@Test
	void tellsCoreFromBorderAndNoise() {
		for (PointSet ten : sets(TEN, 10)) {
			Clustering four = cluster(ten, 15, 4);
			assertLabels(four, 0, 0, 0, 0, 0, 1, 1, 1, 1, -1);
			assertArrayEquals(new int[] { 4 }, withRole(four, Role.BORDER));
			assertArrayEquals(new int[] { 9 }, withRole(four, Role.NOISE));
			Clustering five = cluster(ten, 15, 5);
			assertLabels(five, 0, 0, 0, 0, 0, -1, -1, -1, -1, -1);
			assertArrayEquals(new int[] { 3 }, withRole(five, Role.CORE));
		}
	}

	@Test
	void putsABorderSampleBetweenTwoClustersIntoOneOfThem() {
		for (PointSet line : sets(line(0, 0.5, 1, 1.5, 3, 4.5, 5, 5.5, 6), 2)) {
			Clustering found = cluster(line, 3, 4);
			// Equally near to the cores at 1.5 and 4.5: the first in the map decides.
			assertLabels(found, 0, 0, 0, 0, 0, 1, 1, 1, 1);
			assertEquals(Role.BORDER, found.role(4));
		}
		for (PointSet line : sets(line(6, 5.5, 5, 4.5, 3, 1.5, 1, 0.5, 0), 2)) {
			assertLabels(cluster(line, 3, 4), 0, 0, 0, 0, 0, 1, 1, 1, 1);
		}
	}

	@ParameterizedTest
	@CsvSource({ "6, 0", "7, 0", "8, 1" })
	void putsABorderSampleToTheNearestCore(int between, int expected) {
		double[][] points = line(0, 0, 0, 0, 0, 4, between, 10, 14, 14, 14, 14, 14);
		for (PointSet set : sets(points, 1)) {
			Clustering found = cluster(set, 4, 6);
			assertEquals(Role.BORDER, found.role(6), "at " + between);
			assertEquals(expected, found.label(6), "at " + between);
			assertEquals(2, found.clusters());
		}
	}

	@Test
	void makesEverySampleACoreOfItsOwnWhereNoneNeedsCompany() {
		for (PointSet line : sets(line(0, 5, 5, 9), 1)) {
			assertLabels(cluster(line, 0, 1), 0, 1, 1, 2);
			assertLabels(cluster(line, 4, 1), 0, 1, 1, 1);
		}
	}

	@Test
	void joinsSamplesOutOfEarshotWhereTheyAreQuietEnough() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 0, 0).reading("a", -90);
		b.sample("Lantern Store", 0, 0, 0).reading("b", -89);
		b.sample("Lantern Store", 0, 0, 0);
		b.sample("Tide House", 0, 0, 0).reading("a", -80);
		RadioMap map = b.build();
		// Positive values 1, 2, none, 11: city-block distances 3, 1, 10 from the first, 2 and 11 between others.
		assertLabels(Dbscan.cluster(Signals.of(map), 1, 2, Workers.inline()), 0, -1, 0, -1);
		assertLabels(Dbscan.cluster(Signals.of(map), 2, 2, Workers.inline()), 0, 0, 0, -1);
		assertLabels(Dbscan.cluster(Signals.of(map), 10, 2, Workers.inline()), 0, 0, 0, 0);
	}

	/**
	 * A border sample that hears a alone, as near to the core at b, which comes first in the map, as to the one at
	 * a. For ε 4 and minPts 6.
	 */
	static Signals borderBetweenEarshots() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 0, 0).reading("a", -100); // positive 1: 4 from a at 5 and from b at 3
		b.sample("Lantern Store", 0, 0, 0).reading("b", -98);
		b.sample("Tide House", 0, 0, 0).reading("a", -96);
		for (int i = 0; i < 5; i++) { // 4 from those two, out of the first one's reach
			b.sample("Tide House", 0, 0, 0).reading("a", -92);
			b.sample("Lantern Store", 0, 0, 0).reading("b", -94);
		}
		return Signals.of(b.build());
	}

	@Test
	void putsABorderSampleToTheFirstOfEquallyNearCoresInOrOutOfEarshot() {
		Clustering found = Dbscan.cluster(borderBetweenEarshots(), 4, 6, Workers.inline());
		assertLabels(found, 0, 0, 1, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0);
		assertEquals(Role.BORDER, found.role(0));
	}

	@Test
	void findsNothingInAMapWithoutSamples() {
		Clustering found = Dbscan.cluster(Signals.of(new RadioMapBuilder().build()), 1, 2, Workers.inline());
		assertEquals(0, found.size());
		assertEquals(0, found.clusters());
		assertEquals(0, found.noiseShare());
	}

	@ParameterizedTest
	@ValueSource(doubles = { -1e-9, Double.NaN })
	void refusesAnEpsilonThatIsNoDistance(double epsilon) {
		PointSet points = scaled(SIX, 1);
		assertThrows(IllegalArgumentException.class, () -> cluster(points, epsilon, 2));
	}

	@Test
	void refusesMinPtsBelowOne() {
		PointSet points = scaled(SIX, 1);
		assertThrows(IllegalArgumentException.class, () -> cluster(points, 1, 0));
		assertTrue(cluster(points, Double.POSITIVE_INFINITY, 6).noise() == 0);
	}
}
