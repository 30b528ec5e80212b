package org.cairnfield.exchange.internal.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FloorNamesTest {

	@ParameterizedTest
	@CsvSource({ "2, 2", "-1, -1", "2.0, 2", "EG, 0", "1OG, 1", "1. OG, 1", "OG2, 2", "UG, -1", "2UG, -2", "B1, -1",
			"b2, -2", "Basement, -1", "Floor 2, 2", "floor -1, -1", "2nd, 2", "2nd floor, 2", "Ground, 0",
			"Ground floor, 0", "G, 0", "L3, 3", "F4, 4", "Level 05, 5", "first floor, 1", "wing-2, 2" })
	void readsTheNumberInAName(String name, int level) {
		assertEquals(OptionalInt.of(level), FloorNames.read(name));
		assertEquals(level, new FloorNames(Map.of()).level(name));
	}

	@Test
	void givesFreeLevelsToOtherNamesAndTells() {
		FloorNames floors = new FloorNames(Map.of());
		assertEquals(100, floors.level("Mezzanine"));
		assertEquals(101, floors.level("Roof"));
		assertEquals(100, floors.level("Mezzanine"));
		assertEquals(1, floors.level("1OG"));
		assertEquals(3, floors.level("3"));
		assertEquals(Map.of("Mezzanine", 100, "Roof", 101, "1OG", 1), floors.readings());
	}

	@Test
	void obeysTheCallerFirst() {
		FloorNames floors = new FloorNames(Map.of("Mezzanine", 1, "2", 7));
		assertEquals(1, floors.level("mezzanine"));
		assertEquals(7, floors.level("2"));
	}

	@ParameterizedTest
	@CsvSource({ "1e9", "1000", "1.5" })
	void refusesNumbersThatAreNoFloors(String text) {
		assertEquals(FloorNames.NONE, new FloorNames(Map.of()).level(text));
	}
}
