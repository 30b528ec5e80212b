package org.cairnfield.ui.review.internal.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.cairnfield.curation.propose.Warning;
import org.junit.jupiter.api.Test;

class QueueRowTest {

	@Test
	void saysWhatDiffersByWordNotByColour() {
		QueueRow row = new QueueRow(Rows.evidence("A", true, 7, 0.943, 2, Warning.NEAREST_DIFFERS, Warning.FAR), "close", "floor 1");
		assertEquals("differ !", row.agreement());
		assertEquals("▲ differs, far", row.warnings());
		assertEquals("0.94", row.strength());
		assertEquals("C7", row.cluster());
		assertEquals("1.8 m", row.floorDistance());
	}

	@Test
	void proposesNoClusterForWhatIsUnplaced() {
		QueueRow row = Rows.unplaced("U");
		assertEquals("–", row.cluster());
		assertEquals("–", row.agreement());
		assertEquals("–", row.floorDistance());
		assertEquals("0.05", row.strength());
	}
}
