package org.cairnfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class SurfacesTest {

	private static final Workers HERE = Workers.inline();

	/** The cell whose middle is at a point, which must be one. */
	private static double at(Surface surface, double x, double y) {
		double column = (x - surface.leftMetres()) / surface.sideMetres() - 0.5;
		double row = (y - surface.bottomMetres()) / surface.sideMetres() - 0.5;
		assertEquals(Math.rint(column), column, 1e-9);
		assertEquals(Math.rint(row), row, 1e-9);
		return surface.value((int) Math.rint(column), (int) Math.rint(row));
	}

	/**
	 * By hand, w = 1/d² as in Shepard 1968: places 2 m apart, so nothing is said beyond 4 m and cells of half a metre have their
	 * middles at odd quarters. At (0.25, 0.25): d² = 0.125 and 3.125, w = 8 and 0.32, (8 · −40 + 0.32 · −60) / 8.32 = −40.769230….
	 */
	@Test
	void spreadsLevelsByInverseSquares() {
		Surface surface = Surfaces.level(new double[] { 0, 2 }, new double[] { 0, 0 }, new double[] { -40, -60 }, HERE);
		assertEquals(4, surface.reachMetres());
		assertEquals(0.5, surface.sideMetres());
		assertEquals(-40.76923076923077, at(surface, 0.25, 0.25), 1e-12);
		assertEquals(-59.23076923076923, at(surface, 1.75, -0.25), 1e-12);
		assertEquals(Double.NaN, at(surface, -3.75, 3.75), "4.05 m and more away");
		assertEquals(-40, at(surface, -2.25, 3.25), "the other is too far");
		assertEquals(20, surface.error(), 1e-12, "each told from the other");
	}

	/** Three scans at one place, two of which hear it; beside a place that does not. */
	@Test
	void leavesOutWhereItIsHardlyHeard() {
		double[] x = { 0, 0, 0, 2 };
		Surface surface = Surfaces.level(x, new double[4], new double[] { -50, Double.NaN, -70, Double.NaN }, HERE);
		assertEquals(-60, at(surface, 0.25, 0.25), 1e-12);
		assertEquals(Double.NaN, at(surface, 1.75, 0.25));
		assertEquals(Double.NaN, surface.error(), "no other place hears it");
		Surface silent = Surfaces.level(x, new double[4], new double[] { -50, Double.NaN, Double.NaN, Double.NaN },
				HERE);
		assertTrue(Double.isNaN(silent.highest()));
	}

	@Test
	void countsSamplesInACircle() {
		Surface surface = Surfaces.density(new double[] { 0, 0, 2 }, new double[] { 0, 0, 0 }, HERE);
		double area = Math.PI * 16;
		assertEquals(300 / area, at(surface, 0.25, 0.25), 1e-12);
		assertEquals(200 / area, at(surface, -2.25, 0.25), 1e-12);
		assertEquals(300 / area, surface.highest(), 1e-12);
	}

	@Test
	void hasNothingToSayOfNothing() {
		assertEquals(0, Surfaces.density(new double[0], new double[0], HERE).values().length);
		assertTrue(Double.isNaN(Surfaces.level(new double[0], new double[0], new double[0], HERE).highest()));
	}

	/** Against a look at all places from every cell. */
	@Test
	void comesToWhatALookAtAllPlacesDoes() {
		int told = 0;
		for (int seed = 0; seed < 12; seed++) {
			SplittableRandom random = new SplittableRandom(seed);
			int n = 3 + random.nextInt(60);
			double[] x = random.doubles(n, -20, 30).map(Math::rint).toArray();
			double[] y = random.doubles(n, 4_860_000, 4_860_030).map(Math::rint).toArray();
			double[] level = random.doubles(n, -95, -30).map(v -> v < -80 ? Double.NaN : v).toArray();
			int[] first = IntStream.range(0, n)
					.filter(i -> IntStream.range(0, i).noneMatch(j -> x[i] == x[j] && y[i] == y[j])).toArray();
			Surface surface = Surfaces.level(x, y, level, HERE);
			Surface density = Surfaces.density(x, y, HERE);
			double spacing = Median.of(Arrays.stream(first).mapToDouble(i -> Arrays.stream(first).filter(j -> j != i)
					.mapToDouble(j -> Math.hypot(x[i] - x[j], y[i] - y[j])).min().orElseThrow()).toArray());
			assertEquals(Math.max(1, 2 * spacing), surface.reachMetres(), 1e-9);
			for (int row = 0; row < surface.rows(); row++) {
				for (int column = 0; column < surface.columns(); column++) {
					double atX = surface.leftMetres() + (column + 0.5) * surface.sideMetres();
					double atY = surface.bottomMetres() + (row + 0.5) * surface.sideMetres();
					double reach = surface.reachMetres();
					long count = IntStream.range(0, n).filter(i -> Math.hypot(x[i] - atX, y[i] - atY) <= reach).count();
					assertEquals(count == 0 ? Double.NaN : 100 * count / (Math.PI * reach * reach),
							density.value(column, row), 1e-9);
					double expected = naive(x, y, level, first, atX, atY, reach);
					assertEquals(expected, surface.value(column, row), 1e-6, "seed " + seed);
					told += Double.isNaN(expected) ? 0 : 1;
				}
			}
		}
		assertTrue(told > 5000, "told " + told);
	}

	private static double naive(double[] x, double[] y, double[] level, int[] first, double atX, double atY,
			double reach) {
		int[] near = Arrays.stream(first).boxed().filter(i -> Math.hypot(x[i] - atX, y[i] - atY) <= reach)
				.sorted(Comparator.comparingDouble(i -> Math.hypot(x[i] - atX, y[i] - atY))).limit(Surfaces.MOST_PLACES)
				.mapToInt(i -> i).toArray();
		double heard = 0;
		double silent = 0;
		double sum = 0;
		for (int i : near) {
			double weight = Math.pow(Math.hypot(x[i] - atX, y[i] - atY), -2);
			double[] here = IntStream.range(0, x.length).filter(j -> x[j] == x[i] && y[j] == y[i])
					.mapToDouble(j -> level[j]).toArray();
			double[] heardHere = Arrays.stream(here).filter(v -> !Double.isNaN(v)).toArray();
			if (2 * heardHere.length < here.length) {
				silent += weight;
			} else {
				heard += weight;
				sum += weight * Median.of(heardHere);
			}
		}
		return heard == 0 || heard < silent ? Double.NaN : sum / heard;
	}

	/** Levels that fall by one decibel a metre, known every metre: told to a fraction of a decibel. */
	@Test
	void saysHowFarOffItUsuallyIs() {
		double[] x = IntStream.range(0, 400).mapToDouble(i -> i % 20).toArray();
		double[] y = IntStream.range(0, 400).mapToDouble(i -> i / 20).toArray();
		Surface surface = Surfaces.level(x, y, Arrays.stream(x).map(v -> -40 - v).toArray(), HERE);
		assertTrue(surface.error() > 0 && surface.error() < 0.2, "error " + surface.error());
	}
}
