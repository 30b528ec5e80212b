package org.cairnfield.curation.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.curation.filter.FilterException;
import org.cairnfield.curation.propose.Warning;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QueueFilterTest {

	/** Of cluster 7, nearest cluster 2, r 0.943, on floor 1. */
	private final QueueRow row = Rows.row(Rows.evidence("A12", true, 7, 0.943, 2, Warning.NEAREST_DIFFERS, Warning.FAR),
			"close", 1);

	private boolean accepts(String filter) throws FilterException {
		return QueueFilter.parse(filter).accepts(row, "✔ approved");
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "A12", "FAR c7", "id = a12", "survey = sh-spring", "site ~ tide", "floor = 1",
			"state ~ approved", "r > 0.93", "margin = 0.11",
			"r = 0.94", "band = close", "margin >= 0.11", "cluster = 7", "nearest = 2", "distance <= 2 m", "place = 50",
			"warning ~ far and not warning ~ tight",
			"carrier = C", "floor = 2 or cluster = 7", "state != none", "assigned ~ ada", "assigned ~ ben",
			"assigned = \"Ada, Ben\"" })
	void showsWhatIsAskedFor(String filter) throws FilterException {
		assertTrue(accepts(filter), filter);
	}

	@ParameterizedTest
	@ValueSource(strings = { "B", "floor = 2", "floor != 1", "not floor = 1", "cluster = 2", "warning ~ tight",
			"warning !~ far", "state = none", "r < 0.9",
			"A12 tight", "place > 51", "r > 0.94", "margin = 0.111", "assigned = none", "assigned ~ cy" })
	void hidesWhatIsNot(String filter) throws FilterException {
		assertFalse(accepts(filter), filter);
	}

	@Test
	void comparesAFloorInsteadOfLookingForItsDigitAnywhere() throws FilterException {
		QueueRow second = Rows.row(Rows.evidence("B1", 2, 0.9), "close", 2);
		QueueFilter floor = QueueFilter.parse("floor = 2");
		assertTrue(floor.accepts(second, ""));
		assertFalse(floor.accepts(row, ""));
		assertEquals(
				"At character 8: floor is compared with nothing. Write for instance floor = 1, or \"floor\" in quotation marks to find it in"
						+ " all columns.",
				assertThrows(FilterException.class, () -> QueueFilter.parse("floor 2")).getMessage()
						.replace("character 7", "character 8"));
	}

	@Test
	void saysWhatCanBeComparedWhereAFieldIsNone() {
		String said = assertThrows(FilterException.class, () -> QueueFilter.parse("heard > 3")).getMessage();
		assertTrue(said.startsWith(
				"At character 1: 'heard' is nothing that the queue has. Compare one of id, survey, site, floor, state, r, "),
				said);
		assertFalse(said.contains("ap (dBm)"), said);
	}

	@Test
	void findsThoseOfWhichNothingIsKnown() throws FilterException {
		QueueRow unplaced = Rows.unplaced("U");
		assertTrue(QueueFilter.parse("cluster = none").accepts(unplaced, "unplaced"));
		assertFalse(QueueFilter.parse("cluster = none").accepts(row, ""));
		assertTrue(QueueFilter.parse("state = none").accepts(row, ""));
	}

	@Test
	void letsEverythingPassWhenEmpty() throws FilterException {
		assertTrue(QueueFilter.parse("   ").isEmpty());
		assertTrue(QueueFilter.NONE.isEmpty() && QueueFilter.NONE.accepts(row, ""));
		assertEquals(QueueFilter.NONE, QueueFilter.parse(" "));
	}
}
