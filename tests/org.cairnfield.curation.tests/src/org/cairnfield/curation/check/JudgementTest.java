package org.cairnfield.curation.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.junit.jupiter.api.Test;

class JudgementTest {

	private static Finding judged(Severity severity, double precision) {
		return Judgement.judge(
				new Finding("wrong-floor", severity, "…", List.of(new Subject.OfSurvey("one")), List.of(), List.of(),
						Optional.of(new Remedy.SetFloor(List.of("one/1"), 2))),
				precision);
	}

	@Test
	void letsAnErrorStandFromFourOfFiveOn() {
		assertEquals(Severity.ERROR, judged(Severity.ERROR, 0.8).severity());
		assertEquals(Severity.WARNING, judged(Severity.ERROR, 0.79).severity());
		assertEquals(Severity.NOTE, judged(Severity.ERROR, 0.49).severity());
		assertEquals(OptionalDouble.of(0.49), judged(Severity.ERROR, 0.49).precision());
	}

	@Test
	void makesNothingWorseThanTheRuleSays() {
		assertEquals(Severity.WARNING, judged(Severity.WARNING, 1).severity());
		assertEquals(Severity.NOTE, judged(Severity.NOTE, 1).severity());
	}

	@Test
	void offersARemedyWhereItMendsMoreThanItSpoils() {
		assertTrue(judged(Severity.ERROR, 0.5).remedy().isPresent());
		assertTrue(judged(Severity.ERROR, 0.49).remedy().isEmpty());
	}

	@Test
	void saysHowFarToTrust() {
		assertTrue(Judgement.words(judged(Severity.ERROR, 0.92)).startsWith("92 % of what this rule names here"));
		assertTrue(Judgement.words(judged(Severity.ERROR, 0.6)).endsWith("Look before you apply the remedy."));
		assertTrue(Judgement.words(judged(Severity.ERROR, 0.3)).endsWith("So no remedy is offered."));
	}
}
