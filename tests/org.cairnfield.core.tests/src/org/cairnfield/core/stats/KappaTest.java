package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class KappaTest {

	@Test
	void agreesWithFiftyApplicationsJudgedByTwo() {
		// The worked example of two readers of 50 applications that text books give for Cohen 1960; counts from memory.
		Kappa kappa = Kappa.of(new long[][] { { 20, 5 }, { 10, 15 } });
		assertEquals(50, kappa.items());
		assertEquals(0.7, kappa.observed(), 1e-12);
		assertEquals(0.5, kappa.expected(), 1e-12);
		assertEquals(0.4, kappa.value(), 1e-12);
		// Fleiss, Cohen and Everitt 1969, computed independently
		assertEquals(.126996063, kappa.standardError(), 1e-9);
		assertEquals(.151092, kappa.interval(0.95).low(), 1e-6);
		assertEquals(.648908, kappa.interval(0.95).high(), 1e-6);
	}

	@Test
	void tellsTablesOfEqualAgreementApart() {
		// Same observed agreement, .6, other margins; computed independently.
		assertEquals(.130434783, Kappa.of(new long[][] { { 45, 15 }, { 25, 15 } }).value(), 1e-9);
		assertEquals(.259259259, Kappa.of(new long[][] { { 25, 35 }, { 5, 35 } }).value(), 1e-9);
	}

	@Test
	void isOneForFullAgreementAndMinusOneForNone() {
		assertEquals(1, Kappa.of(new long[][] { { 7, 0, 0 }, { 0, 2, 0 }, { 0, 0, 4 } }).value(), 1e-12);
		assertEquals(0, Kappa.of(new long[][] { { 7, 0 }, { 0, 2 } }).standardError(), 1e-9);
		assertEquals(-1, Kappa.of(new long[][] { { 0, 25 }, { 25, 0 } }).value(), 1e-12);
	}

	@Test
	void isUndefinedWhereBothGaveOneAnswerOnly() {
		assertTrue(Double.isNaN(Kappa.of(new long[][] { { 9, 0 }, { 0, 0 } }).value()));
		assertTrue(Double.isNaN(Kappa.of(new long[3][3]).value()));
		assertTrue(Double.isNaN(Kappa.of(new long[3][3]).interval(0.95).low()));
	}

	@Test
	void ignoresAnswersThatNobodyGave() {
		Kappa two = Kappa.of(new long[][] { { 20, 5 }, { 10, 15 } });
		Kappa three = Kappa.of(new long[][] { { 20, 5, 0 }, { 10, 15, 0 }, { 0, 0, 0 } });
		assertEquals(two, three);
	}

	@Test
	void refusesWhatIsNoTable() {
		assertThrows(IllegalArgumentException.class, () -> Kappa.of(new long[][] { { 1, 2 }, { 3 } }));
		assertThrows(IllegalArgumentException.class, () -> Kappa.of(new long[][] { { 1, -2 }, { 3, 4 } }));
	}
}
