package org.cairnfield.core.distance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SignalsTest {

	private static RadioMap map() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 0, 0).reading("a", -50).reading("b", -90).reading("c", -61);
		b.sample("Tide House", 0, 1, 0).reading("c", -60);
		return b.build();
	}

	@Test
	void countsStepsFromOneBelowTheLowestLevel() {
		Signals signals = Signals.of(map());
		assertEquals(-90, signals.lowestRssiDbm());
		assertArrayEquals(new int[] { 41, 1, 30 }, steps(signals.rows(), 0));
		assertEquals(72, signals.rows().magnitude(0));
		assertEquals(92, signals.steps()); // 0 … 91, the last for 0 dBm
	}

	@Test
	void takesTheLowestLevelOfTheSamplesInView() {
		assertEquals(-60, Signals.of(map().view(new int[] { 1 })).lowestRssiDbm());
	}

	@Test
	void alignsByNameAndDropsWhatItNeverHeard() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Lantern Store", 2, 0, 0).reading("x", -40).reading("c", -70).reading("a", -80);
		b.sample("Lantern Store", 2, 0, 0).reading("x", -40);
		SignalRows rows = Signals.of(map()).align(b.build());
		assertEquals(2, rows.size());
		assertArrayEquals(new int[] { 0, 2 }, columns(rows, 0));
		assertArrayEquals(new int[] { 11, 21 }, steps(rows, 0));
		assertEquals(32, rows.magnitude(0));
		assertArrayEquals(new int[0], columns(rows, 1));
		assertEquals(0, rows.magnitude(1));
	}

	@Test
	void dropsALevelBelowItsLowest() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Lantern Store", 2, 0, 0).reading("a", -91).reading("b", -90).reading("c", 0);
		SignalRows rows = Signals.of(map()).align(b.build());
		assertArrayEquals(new int[] { 1, 2 }, columns(rows, 0));
		assertArrayEquals(new int[] { 1, 91 }, steps(rows, 0));
	}

	@Test
	void alignsSamplesWithTheSameNamesInAnotherOrder() {
		RadioMapBuilder b = new RadioMapBuilder();
		List.of("c", "b", "a").forEach(b::accessPoint);
		b.sample("Lantern Store", 2, 0, 0).reading("a", -50).reading("b", -90).reading("c", -61);
		Signals signals = Signals.of(map());
		SignalRows rows = signals.align(b.build());
		double[] row = new double[2];
		signals.kernel().row(rows, 0, 0, row);
		assertEquals(0, row[0]);
	}

	/** The same fingerprint is at distance 0 however its file lists access points, rounding or not. */
	@ParameterizedTest
	@ValueSource(strings = { "positive", "normalised", "exponential", "powed" })
	void alignsToTheVeryRowsOfItsOwnSamples(String representation) {
		for (long seed = 1; seed <= 10; seed++) {
			RadioMap map = ScatteredMap.of(seed, 40);
			int[] order = ScatteredMap.shuffled(40, seed);
			for (Distance distance : Distance.values()) {
				Signals signals = Signals.of(map, Representation.named(representation), distance);
				SignalRows aligned = signals.align(ScatteredMap.rebuilt(map, order));
				for (int i = 0; i < 40; i++) {
					assertArrayEquals(columns(signals.rows(), order[i]), columns(aligned, i));
					assertArrayEquals(steps(signals.rows(), order[i]), steps(aligned, i));
					assertEquals(signals.rows().magnitude(order[i]), aligned.magnitude(i), 0);
				}
			}
		}
	}

	@Test
	void takesAMapWithoutSamples() {
		Signals signals = Signals.of(new RadioMapBuilder().build());
		assertEquals(0, signals.size());
		assertEquals(0, signals.components().count());
		assertEquals(0, signals.components().largest());
	}

	@Test
	void usesPositiveCityBlockUnlessTold() {
		Signals signals = Signals.of(map());
		assertEquals(Representation.positive(), signals.representation());
		assertEquals(Distance.CITY_BLOCK, signals.distance());
		assertTrue(signals.distance().isSum());
	}

	private static int[] columns(SignalRows rows, int row) {
		return IntStream.range(rows.start(row), rows.end(row)).map(rows::column).toArray();
	}

	private static int[] steps(SignalRows rows, int row) {
		return IntStream.range(rows.start(row), rows.end(row)).map(rows::step).toArray();
	}
}
