package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cairnfield.ui.charts.Fingerprints.Order;
import org.junit.jupiter.api.Test;

class FingerprintsTest {

	private static final double NONE = Double.NaN;

	private final Fingerprints two = new Fingerprints(List.of("S1", "S2"), List.of("A", "B", "C", "D", "E"),
			new double[][] { { -80, -60, NONE, NONE, -70 }, { -75, -65, -50, NONE, -70 } });

	@Test
	void leavesOutWhatNobodyHears() {
		assertEquals(List.of("A", "B", "C", "E"), two.accessPoints());
	}

	@Test
	void sortsByTheStrongestLevel() {
		Fingerprints sorted = two.sorted(Order.STRENGTH);
		assertEquals(List.of("C", "B", "E", "A"), sorted.accessPoints());
		assertEquals(-65, sorted.levelDbm(1, 1), 0);
	}

	@Test
	void putsSharedOnesFirst() {
		assertEquals(List.of("B", "E", "A", "C"), two.sorted(Order.SHARED_FIRST).accessPoints());
		assertEquals(3, two.shared());
	}

	@Test
	void knowsWhatOneAloneHears() {
		assertTrue(two.isHeardByOneOnly(2));
		assertFalse(two.isHeardByOneOnly(0));
		Fingerprints single = new Fingerprints(List.of("S1"), List.of("A"), new double[][] { { -60 } });
		assertFalse(single.isHeardByOneOnly(0));
	}

	@Test
	void refusesShapesThatDoNotAgree() {
		assertThrows(IllegalArgumentException.class,
				() -> new Fingerprints(List.of("S1"), List.of("A", "B"), new double[][] { { -60 } }));
		assertThrows(IllegalArgumentException.class, () -> new Fingerprints(List.of(), List.of(), new double[0][]));
		assertThrows(IllegalArgumentException.class,
				() -> new Fingerprints(List.of("1", "2", "3", "4", "5"), List.of(), new double[5][0]));
	}
}
