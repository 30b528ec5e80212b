package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ItuIndoorTest {

	// ITU-R P.1238, classic form, worked out at 10 m; coefficients at 2.4 GHz from memory.
	@ParameterizedTest
	@CsvSource({ "OFFICE_2_4_GHZ, 2437, 0, 69.7371", "OFFICE_2_4_GHZ, 2437, 1, 83.7371",
			"OFFICE_1_9_GHZ, 2437, 1, 84.7371", "OFFICE_1_9_GHZ, 2437, 2, 88.7371",
			"RESIDENTIAL_1_9_GHZ, 2437, 0, 67.7371", "RESIDENTIAL_1_9_GHZ, 2437, 1, 71.7371",
			"RESIDENTIAL_2_4_GHZ, 2437, 0, 67.7371", "COMMERCIAL_1_9_GHZ, 2437, 0, 61.7371",
			"OFFICE_5_2_GHZ, 5180, 0, 77.2866", "OFFICE_5_2_GHZ, 5180, 1, 93.2866" })
	void followsThePublishedForm(ItuIndoor setting, double mhz, int floors, double lossDb) {
		assertEquals(lossDb, setting.lossDb(10, mhz, floors), 1e-4);
	}

	// Floor losses of ITU-R P.1238 at 1.8 to 2 GHz: 4n, 15 + 4(n - 1), 6 + 3(n - 1).
	@Test
	void addsFloors() {
		assertEquals(12, ItuIndoor.RESIDENTIAL_1_9_GHZ.floorLossDb(3), 1e-12);
		assertEquals(23, ItuIndoor.OFFICE_1_9_GHZ.floorLossDb(3), 1e-12);
		assertEquals(12, ItuIndoor.COMMERCIAL_1_9_GHZ.floorLossDb(3), 1e-12);
		assertEquals(0, ItuIndoor.OFFICE_1_9_GHZ.floorLossDb(0), 1e-12);
	}

	@Test
	void beginsAtOneMetre() {
		assertEquals(20 * Math.log10(2437) - 28, ItuIndoor.OFFICE_2_4_GHZ.lossDb(0.2, 2437, 0), 1e-9);
	}
}
