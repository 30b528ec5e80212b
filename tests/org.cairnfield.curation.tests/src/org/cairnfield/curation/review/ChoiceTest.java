package org.cairnfield.curation.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.cairnfield.curation.propose.Warning;
import org.junit.jupiter.api.Test;

class ChoiceTest {

	@Test
	void approvesWithTheReasonThatEvidenceAgreesOnlyWhereNothingWarns() {
		assertEquals("fits", Choice.APPROVE.reason("", Rows.evidence("A", 7, 0.9)));
		assertNull(Choice.APPROVE.reason("", Rows.evidence("A", 7, 0.9, Warning.PLACE_DOUBTFUL)));
		assertEquals("fits", Choice.APPROVE.reason("", Rows.evidence("A", 7, 0.9, Warning.TIGHT_MARGIN)),
				"which is no mark");
	}

	@Test
	void poolsForTheGravestWarning() {
		assertEquals("other-floor",
				Choice.POOL.reason("", Rows.evidence("A", 7, 0.9, Warning.OTHER_FLOOR, Warning.FAR)));
		assertEquals("far", Choice.POOL.reason("", Rows.evidence("A", 7, 0.9, Warning.NEAREST_DIFFERS, Warning.FAR)));
	}

	@Test
	void alwaysHasAReasonToMoveAndToSetAside() {
		assertEquals("other-cluster", Choice.MOVE.reason("", Rows.evidence("A", 7, 0.9)));
		assertEquals("faulty", Choice.FAULTY.reason("far", Rows.evidence("A", 7, 0.9)));
		assertEquals("wrong-place", Choice.FAULTY.reason("wrong-place", null));
	}

	@Test
	void findsNoReasonToPoolWhatTheEvidenceSupports() {
		assertNull(Choice.POOL.reason("", Rows.evidence("A", 7, 0.9)));
	}

	@Test
	void takesTheChosenReasonWhereItSuitsTheDecision() {
		assertEquals("known-place", Choice.APPROVE.reason("known-place", Rows.evidence("A", 7, 0.9)));
		assertEquals("ask", Choice.DEFER.reason("ask", Rows.evidence("A", 7, 0.9)));
	}

	@Test
	void ignoresAReasonForAnotherDecision() {
		assertEquals("fits", Choice.APPROVE.reason("other-floor", Rows.evidence("A", 7, 0.9)));
		assertNull(Choice.DEFER.reason("fits", Rows.evidence("A", 7, 0.9)));
	}
}
