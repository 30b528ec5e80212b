package org.cairnfield.ui.review.internal.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.cairnfield.curation.decide.ReviewPolicy;
import org.junit.jupiter.api.Test;

class ReviewNumberTest {

	@Test
	void readsWhatPeopleWrite() {
		assertEquals(0.125, ReviewNumber.GATE.parse(" 12,5 %"), 1e-12);
		assertEquals(-0.3, ReviewNumber.THRESHOLD.parse("−0.3"), 1e-12);
		assertEquals(1, ReviewNumber.GATE.parse("100"), 0);
		assertEquals(0.999, ReviewNumber.AUDIT_CONFIDENCE.parse("99.9"), 1e-12);
	}

	@Test
	void saysWhatIsAllowed() {
		for (String wrong : new String[] { "", "ten", "-1", "101", "NaN", "Infinity" }) {
			IllegalArgumentException e = assertThrows(IllegalArgumentException.class,
					() -> ReviewNumber.GATE.parse(wrong), wrong);
			assertEquals("Noise share: 0 to 100 %.", e.getMessage());
		}
		assertThrows(IllegalArgumentException.class, () -> ReviewNumber.THRESHOLD.parse("10 %"));
		assertThrows(IllegalArgumentException.class, () -> ReviewNumber.AUDIT_LIMIT.parse("0"));
		assertThrows(IllegalArgumentException.class, () -> ReviewNumber.AUDIT_CONFIDENCE.parse("100"));
	}

	@Test
	void writesWhatItReads() {
		assertEquals("10", ReviewNumber.GATE.text(0.1));
		assertEquals("12.5", ReviewNumber.GATE.text(0.125));
		assertEquals("-1", ReviewNumber.THRESHOLD.text(-1));
		assertEquals("−1 to 1", ReviewNumber.THRESHOLD.range());
		for (ReviewNumber which : ReviewNumber.values()) {
			assertEquals(which.usual(), which.parse(which.text(which.usual())), 1e-12);
			assertEquals(which.usual(), which.kept(which.toKeep(which.usual())), 0);
		}
	}

	@Test
	void takesWhatCannotBeReadForNotSet() {
		assertEquals(0.1, ReviewNumber.GATE.kept(""), 0);
		assertEquals(0.1, ReviewNumber.GATE.kept("7"), 0);
		assertEquals(0.25, ReviewNumber.GATE.kept("0.25"), 0);
	}

	@Test
	void auditsAsTheServicesDoUnlessSomebodySetsIt() {
		assertEquals(ReviewPolicy.USUAL.limitShare(), ReviewNumber.AUDIT_LIMIT.usual(), 0);
		assertEquals(ReviewPolicy.USUAL.confidence(), ReviewNumber.AUDIT_CONFIDENCE.usual(), 0);
	}
}
