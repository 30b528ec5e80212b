package org.cairnfield.core.distance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class DistanceKernelTest {

	private static final List<String> REPRESENTATIONS = List.of("positive", "normalised", "exponential", "powed");

	static Stream<Arguments> all() {
		return REPRESENTATIONS.stream()
				.flatMap(r -> Arrays.stream(Distance.values()).map(d -> Arguments.of(r, d)));
	}

	@ParameterizedTest
	@MethodSource("all")
	void equalsTheDenseFormOnMapsByChance(String representation, Distance distance) {
		int several = 0;
		int silent = 0;
		for (long seed = 1; seed <= 40; seed++) {
			RadioMap map = ScatteredMap.of(seed, 60);
			several += compare(Signals.of(map, Representation.named(representation), distance)) > 1 ? 1 : 0;
			silent += map.where(s -> map.heard(s) == 0).size();
		}
		assertTrue(several > 20 && silent > 20, several + " maps of several components, " + silent + " silent samples");
	}

	@ParameterizedTest
	@MethodSource("all")
	void equalsTheDenseFormOnASimulatedCampus(String representation, Distance distance) {
		RadioMap map = RandomMap.of(3, CampusSize.of(3, 1, 36).apart(), 240, Workers.inline());
		assertEquals(3, compare(Signals.of(map, Representation.named(representation), distance)));
	}

	/** @return the number of components */
	private static int compare(Signals signals) {
		// Whole numbers leave no room for rounding; a root does not either, for it is the root of a whole number.
		double tolerance = signals.representation().equals(Representation.positive()) ? 0 : 1e-10;
		DenseForm dense = DenseForm.of(signals);
		Components components = signals.components();
		DistanceKernel kernel = signals.kernel();
		double[] row = new double[components.largest()];
		for (int a = 0; a < signals.size(); a++) {
			assertEquals(components.size(components.componentOf(a)), kernel.row(a, row));
			for (int b = 0; b < signals.size(); b++) {
				boolean together = components.componentOf(a) == components.componentOf(b);
				double d = together ? row[components.placeOf(b)] : signals.apart(a, b);
				assertEquals(dense.between(a, b), d, tolerance, a + " to " + b);
			}
		}
		return components.count();
	}

	@ParameterizedTest
	@MethodSource("all")
	void isExactlyZeroToTheSampleItselfAndToItsDoubles(String representation, Distance distance) {
		RadioMap twice = doubled(ScatteredMap.of(5, 40));
		Signals signals = Signals.of(twice, Representation.named(representation), distance);
		double[] row = new double[signals.components().largest()];
		for (int s = 0; s < 40; s++) {
			signals.kernel().row(s, row);
			assertEquals(0, row[signals.components().placeOf(s)], 0);
			if (twice.heard(s) > 0) {
				assertEquals(0, row[signals.components().placeOf(s + 40)], 0);
			}
		}
	}

	@ParameterizedTest
	@MethodSource("all")
	void isExactlySymmetricAndNeverNegative(String representation, Distance distance) {
		Signals signals = Signals.of(ScatteredMap.of(8, 80), Representation.named(representation), distance);
		Components components = signals.components();
		double[][] rows = new double[80][components.largest()];
		for (int s = 0; s < 80; s++) {
			signals.kernel().row(s, rows[s]);
		}
		for (int a = 0; a < 80; a++) {
			for (int b = 0; b < 80; b++) {
				if (components.componentOf(a) == components.componentOf(b)) {
					double d = rows[a][components.placeOf(b)];
					assertEquals(rows[b][components.placeOf(a)], d, 0);
					assertTrue(d >= 0, "distance " + d);
				}
			}
		}
	}

	@ParameterizedTest
	@EnumSource(Distance.class)
	void answersForQueriesOfAnotherMapInEveryComponent(Distance distance) {
		for (long seed = 1; seed <= 20; seed++) {
			RadioMap all = ScatteredMap.of(seed, 60);
			Signals whole = Signals.of(all, Representation.positive(), distance);
			RadioMap searched = all.where(s -> s % 3 != 0 || all.lowestRssiDbm() == lowest(all, s));
			RadioMap asked = all.where(s -> s % 3 == 0);
			Signals signals = Signals.of(searched, Representation.positive(), distance);
			SignalRows queries = signals.align(asked);
			DenseForm dense = DenseForm.of(whole);
			double[] row = new double[signals.components().largest()];
			for (int q = 0; q < asked.size(); q++) {
				for (int c = 0; c < signals.components().count(); c++) {
					int n = signals.kernel().row(queries, q, c, row);
					assertEquals(signals.components().size(c), n);
					for (int place = 0; place < n; place++) {
						int sample = searched.row(signals.components().member(c, place));
						assertEquals(dense.between(asked.row(q), sample), row[place], 0);
					}
				}
			}
		}
	}

	@Test
	void leavesAloneWhatLiesBeyondTheComponent() {
		Signals signals = Signals.of(ScatteredMap.of(2, 50));
		double[] row = new double[60];
		Arrays.fill(row, -7);
		int n = signals.kernel().row(0, row);
		double[] rest = Arrays.copyOfRange(row, n, 60);
		double[] untouched = new double[60 - n];
		Arrays.fill(untouched, -7);
		assertArrayEquals(untouched, rest);
	}

	private static int lowest(RadioMap map, int sample) {
		int lowest = 1;
		for (int k = map.firstReading(sample); k < map.endReading(sample); k++) {
			lowest = Math.min(lowest, map.rssiDbm(k));
		}
		return lowest;
	}

	private static RadioMap doubled(RadioMap map) {
		int[] samples = new int[2 * map.size()];
		Arrays.setAll(samples, i -> i % map.size());
		return map.view(samples);
	}
}
