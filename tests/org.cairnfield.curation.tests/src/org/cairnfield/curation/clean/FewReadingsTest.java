package org.cairnfield.curation.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.junit.jupiter.api.Test;

class FewReadingsTest {

	/** Samples that hear so many access points each. */
	private static RadioMap hearing(int... heard) {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int s = 0; s < heard.length; s++) {
			builder.sample("Tide House", 0, s, 0);
			for (int ap = 0; ap < heard[s]; ap++) {
				builder.reading("AP" + ap, -50 - ap);
			}
		}
		return builder.build();
	}

	@Test
	void setsAsideSamplesThatHeardFewerThanThree() {
		FewReadings cleaned = FewReadings.setAside(hearing(3, 5, 4, 2, 3, 3, 3, 3, 3, 3, 9));
		assertEquals(1, cleaned.setAside());
		assertEquals(10, cleaned.kept().size());
		assertEquals(3, cleaned.fewest());
		// the fourth is gone
		assertEquals(4, cleaned.kept().row(3));
		assertEquals("1 of 11 samples set aside (fewer than 3 access points heard)", cleaned.summary());
	}

	@Test
	void aTenthOfPoorSamplesIsStillTheUsualCase() {
		assertEquals(9, FewReadings.setAside(hearing(2, 3, 3, 3, 3, 3, 3, 3, 3, 3)).kept().size());
	}

	@Test
	void inASparseSurveyOnlyEmptySamplesGo() {
		FewReadings cleaned = FewReadings.setAside(hearing(2, 1, 0, 3, 3, 3, 3, 3, 3, 3));
		assertEquals(1, cleaned.setAside());
		assertEquals(9, cleaned.kept().size());
		assertEquals(1, cleaned.fewest());
		assertEquals("1 of 10 samples set aside (fewer than 1 access point heard)", cleaned.summary());
	}

	@Test
	void nothingIsLeftOfASurveyThatHeardNothing() {
		FewReadings cleaned = FewReadings.setAside(hearing(0, 0));
		assertEquals(0, cleaned.kept().size());
		assertEquals(2, cleaned.setAside());
	}

	@Test
	void anEmptyMapStaysEmpty() {
		assertEquals(0, FewReadings.setAside(hearing()).setAside());
	}
}
