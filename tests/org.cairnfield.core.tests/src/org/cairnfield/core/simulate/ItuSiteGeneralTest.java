package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ItuSiteGeneralTest {

	// Worked out from the coefficients of ITU-R P.1238-11, Table 2: 10 m and 20 m at 2.437 GHz, 10 m at 5.18 GHz.
	@ParameterizedTest
	@CsvSource({ "OFFICE_IN_SIGHT, 57.0732, 61.4682, 63.7209, 3.76",
			"OFFICE_OUT_OF_SIGHT, 63.3372, 70.7425, 71.1310, 5.04",
			"CORRIDOR_IN_SIGHT, 53.1242, 58.0310, 60.4924, 4.07",
			"CORRIDOR_OUT_OF_SIGHT, 66.5640, 74.9025, 74.6854, 7.63",
			"INDUSTRIAL_IN_SIGHT, 55.5892, 62.5430, 62.3352, 2.69",
			"INDUSTRIAL_OUT_OF_SIGHT, 64.0939, 75.5029, 68.4820, 9.05" })
	void followsThePublishedForm(ItuSiteGeneral setting, double ten, double twenty, double tenAtFive, double spread) {
		assertEquals(ten, setting.medianLossDb(10, 2437), 1e-4);
		assertEquals(twenty, setting.medianLossDb(20, 2437), 1e-4);
		assertEquals(tenAtFive, setting.medianLossDb(10, 5180), 1e-4);
		assertEquals(spread, setting.spreadDb(), 0);
	}

	@Test
	void knowsWhereItWasMeasured() {
		assertTrue(ItuSiteGeneral.OFFICE_IN_SIGHT.covers(27));
		assertFalse(ItuSiteGeneral.OFFICE_IN_SIGHT.covers(28));
		assertFalse(ItuSiteGeneral.INDUSTRIAL_OUT_OF_SIGHT.covers(4));
	}
}
