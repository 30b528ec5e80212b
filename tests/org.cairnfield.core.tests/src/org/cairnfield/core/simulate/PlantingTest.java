package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlantingTest {

	private final RadioMap clean = RandomMap.of(2, CampusSize.of(2, 2, 60), 1000, Workers.inline());
	private final Planting.Planted planted = new Planting(0.02, 0.01, 0.03, 0.02, 0.01, 0.005).plant(clean, 3);

	private long count(FaultKind kind) {
		return Arrays.stream(planted.kinds()).filter(k -> k == kind).count();
	}

	@Test
	void plantsTheSharesAskedFor() {
		assertEquals(20, count(FaultKind.WRONG_POSITION));
		assertEquals(10, count(FaultKind.WRONG_FLOOR));
		assertEquals(30, count(FaultKind.FAULTY_DEVICE));
		assertEquals(20, count(FaultKind.PERMUTED_READINGS));
		assertEquals(10, count(FaultKind.SPARSE));
		assertEquals(5, count(FaultKind.EMPTY));
	}

	@Test
	void spoilsWhatTheKindSaysAndNothingElse() {
		RadioMap map = planted.map();
		assertEquals(clean.size(), map.size());
		assertEquals(clean.accessPoints(), map.accessPoints());
		for (int s = 0; s < map.size(); s++) {
			FaultKind kind = planted.kinds()[s];
			boolean samePlace = map.x(s) == clean.x(s) && map.y(s) == clean.y(s);
			boolean sameFloor = map.floor(s) == clean.floor(s);
			boolean sameReadings = Arrays.equals(levels(clean, s), levels(map, s));
			if (kind == null) {
				assertEquals(MapText.sample(clean, s), MapText.sample(map, s));
				continue;
			}
			assertEquals(kind != FaultKind.WRONG_POSITION, samePlace, kind + " place");
			assertEquals(kind != FaultKind.WRONG_FLOOR, sameFloor, kind + " floor");
			assertEquals(kind == FaultKind.WRONG_POSITION || kind == FaultKind.WRONG_FLOOR, sameReadings,
					kind + " readings");
			switch (kind) {
			case WRONG_POSITION ->
				assertTrue(Math.hypot(map.x(s) - clean.x(s), map.y(s) - clean.y(s)) >= 10);
			case FAULTY_DEVICE -> {
				for (int k = map.firstReading(s); k < map.endReading(s); k++) {
					int before = clean.rssiDbm(s, map.accessPoint(k), 0);
					assertTrue(before - map.rssiDbm(k) >= 8 && before - map.rssiDbm(k) <= 14);
				}
			}
			case PERMUTED_READINGS -> {
				int[] before = levels(clean, s);
				int[] after = levels(map, s);
				Arrays.sort(before);
				Arrays.sort(after);
				assertArrayEquals(before, after);
			}
			case SPARSE -> assertTrue(map.heard(s) >= 1 && map.heard(s) <= 2);
			case EMPTY -> assertEquals(0, map.heard(s));
			default -> assertEquals(FaultKind.WRONG_FLOOR, kind);
			}
		}
	}

	@Test
	void faultyDeviceMissesAThirdOfTheAccessPoints() {
		int before = 0;
		int after = 0;
		for (int s = 0; s < clean.size(); s++) {
			if (planted.kinds()[s] == FaultKind.FAULTY_DEVICE) {
				before += clean.heard(s);
				after += planted.map().heard(s);
			}
		}
		// A third lost by chance, and those that fall below the range.
		assertTrue(after < 0.7 * before && after > 0.3 * before, after + " of " + before);
	}

	@Test
	void tellsTheTruthRowByRow() {
		var ids = MarrowQuay.ids("x", clean.size());
		var truth = planted.truth("x", ids);
		assertEquals(95, truth.size());
		PlantedFault floor = truth.stream().filter(f -> f.kind() == FaultKind.WRONG_FLOOR).findFirst().orElseThrow();
		int sample = ids.indexOf(floor.sample());
		assertEquals("true floor " + clean.floor(sample), floor.detail());
		assertEquals(PlantedFault.COLUMNS.size(), floor.fields().size());
		assertEquals("wrong-floor", floor.fields().get(0));
	}

	@Test
	void oneKindMoreLeavesTheOthersSamplesAlone() {
		Planting.Planted fewer = new Planting(0.02, 0.01, 0, 0, 0, 0).plant(clean, 3);
		for (int s = 0; s < clean.size(); s++) {
			if (fewer.kinds()[s] != null) {
				assertEquals(MapText.sample(fewer.map(), s), MapText.sample(planted.map(), s));
			}
		}
		assertNotEquals(MapText.of(fewer.map()),
				MapText.of(new Planting(0.02, 0.01, 0, 0, 0, 0).plant(clean, 4).map()));
	}

	@Test
	void leavesOutWhatCannotBe() {
		RadioMap oneFloor = clean.onFloor(0, 0);
		Planting.Planted none = new Planting(0, 0.1, 0, 0, 0, 0).plant(oneFloor, 1);
		assertTrue(Arrays.stream(none.kinds()).allMatch(k -> k == null));
		assertThrows(IllegalArgumentException.class, () -> new Planting(0.6, 0.6, 0, 0, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> new Planting(-0.1, 0, 0, 0, 0, 0));
	}

	private static int[] levels(RadioMap map, int s) {
		int[] levels = new int[map.accessPointCount()];
		for (int k = map.firstReading(s); k < map.endReading(s); k++) {
			levels[map.accessPoint(k)] = map.rssiDbm(k);
		}
		return levels;
	}
}
