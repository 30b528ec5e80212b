package org.cairnfield.curation.review;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class QueueFilterTest {

	@Test
	void wantsAllWordsInAnyOrderAndCase() {
		QueueFilter filter = QueueFilter.of("  FAR c7 ");
		assertTrue(filter.accepts("S1-0412 C7 differ ▲ far"));
		assertFalse(filter.accepts("S1-0412 C7 differ"));
	}

	@Test
	void refusesWordsAfterAMinus() {
		QueueFilter filter = QueueFilter.of("differ -tight");
		assertTrue(filter.accepts("C7 differ ! far"));
		assertFalse(filter.accepts("C7 differ ! far, tight"));
	}

	@Test
	void takesALoneMinusAsAWord() {
		assertTrue(QueueFilter.of("-").accepts("S1-0412"));
		assertFalse(QueueFilter.of("-").accepts("S1"));
	}

	@Test
	void letsEverythingPassWhenEmpty() {
		assertTrue(QueueFilter.of("   ").isEmpty());
		assertTrue(QueueFilter.NONE.accepts(""));
	}
}
