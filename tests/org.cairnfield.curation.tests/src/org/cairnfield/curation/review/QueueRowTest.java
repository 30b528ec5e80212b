package org.cairnfield.curation.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.curation.propose.Warning;
import org.junit.jupiter.api.Test;

class QueueRowTest {

	@Test
	void saysWhatDiffersByWordNotByColour() {
		QueueRow row = Rows.row(Rows.evidence("A", true, 7, 0.943, 2, Warning.NEAREST_DIFFERS, Warning.FAR), "close",
				1);
		assertEquals("≠ C2", row.nearest());
		assertEquals("differs, far", row.warnings());
		assertEquals("0.94", row.strength());
		assertEquals("C7", row.cluster());
		assertEquals("1.8 m", row.floorDistance());
	}

	@Test
	void proposesNoClusterForWhatIsUnplaced() {
		QueueRow row = Rows.unplaced("U");
		assertEquals("–", row.cluster());
		assertEquals("–", row.nearest());
		assertEquals("–", row.margin());
		assertEquals("–", row.effect());
		assertEquals("–", row.floorDistance());
		assertEquals("0.05", row.strength());
	}

	@Test
	void marksFiguresWhoseDoubtHasEarnedIt() {
		QueueRow sound = Rows.row("A", 7, 0.9, "close", 1);
		assertEquals("0.110", sound.margin());
		assertEquals("= C7", sound.nearest());
		assertEquals("5/5", sound.floorVotes());
		assertEquals("50 %", sound.place());
		assertEquals("40 %", sound.readings());
		assertEquals("−0.80 m", sound.effect());
		QueueRow doubtful = Rows.row(
				Rows.evidence("A", 7, 0.9, Warning.TIGHT_MARGIN, Warning.PLACE_DOUBTFUL, Warning.READINGS_DOUBTFUL),
				"close", 1);
		assertEquals("0.110", doubtful.margin());
		assertEquals("▲ 50 %", doubtful.place());
		assertEquals("▲ 40 %", doubtful.readings());
	}

	@Test
	void summarisesWhereItIsAndEachWarning() {
		String text = Rows.row(Rows.evidence("A", 7, 0.9, Warning.FAR, Warning.TIGHT_MARGIN), "close", 1).summary();
		assertEquals(5, text.lines().count());
		assertTrue(text.startsWith(
				"sh-spring/A, Tide House, floor 1\ncarrier sh-spring/C\nassigned to Ada, Ben\n· the cluster's nearest sample"),
				text);
	}
}
