package org.cairnfield.ui.internal.rules.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.RuleSetting;
import org.junit.jupiter.api.Test;

class RuleDraftsTest {

	private static final Rule FEW = CleaningRules.registry().rule("few-readings");
	private static final Parameter FEWEST = FEW.parameter("fewest-readings");
	private static final Rule JUMP = CleaningRules.registry().rule("jump");

	private final RuleDrafts drafts = new RuleDrafts(RuleSettings.USUAL);

	@Test
	void keepWhatIsRightAndShowWhatIsWrongAsItWasTyped() {
		assertEquals("3", drafts.number(FEW, FEWEST));
		assertEquals("default", drafts.words(FEW));
		drafts.number(FEW, FEWEST, " 5 ");
		assertEquals("few-readings.fewest-readings = 5", drafts.settings().toString());
		assertEquals("5, default 3", drafts.words(FEW));
		drafts.number(FEW, FEWEST, "5o");
		assertEquals("5o", drafts.number(FEW, FEWEST));
		assertTrue(drafts.problem().orElseThrow().startsWith(FEW.title() + ": '5o' is not a number; default 3, "),
				drafts.problem()::toString);
		assertEquals(drafts.problem(FEW), drafts.problem(FEW, FEWEST));
		assertEquals(Optional.empty(), drafts.problem(JUMP));
		drafts.number(FEW, FEWEST, "5000");
		assertTrue(drafts.problem(FEW, FEWEST).orElseThrow().contains("must be within"));
		drafts.number(FEW, FEWEST, "3");
		assertEquals(Optional.empty(), drafts.problem());
		assertEquals(RuleSettings.USUAL, drafts.settings());
	}

	@Test
	void readADecimalComma() {
		drafts.number(JUMP, JUMP.parameter("fastest"), "3,5");
		assertEquals("jump.fastest = 3.5", drafts.settings().toString());
	}

	@Test
	void wantAReasonForARuleThatIsNotAsked() {
		drafts.ask(JUMP, false);
		assertFalse(drafts.isAsked(JUMP));
		assertEquals("to be mended; switched off", drafts.words(JUMP));
		assertTrue(drafts.problem().orElseThrow().contains("say why jump is not to be asked"));
		drafts.why(JUMP, "walked by bicycle");
		assertEquals(Optional.empty(), drafts.problem());
		assertEquals("jump = off: walked by bicycle", drafts.settings().toString());
		drafts.why(JUMP, "");
		assertFalse(drafts.isAsked(JUMP));
		assertTrue(drafts.problem().isPresent());
		drafts.ask(JUMP, true);
		assertEquals(Optional.empty(), drafts.problem());
		assertEquals(RuleSettings.USUAL, drafts.settings());
	}

	@Test
	void sayOneReasonOfAllThatARuleIsTold() {
		drafts.number(JUMP, JUMP.parameter("fastest"), "4");
		drafts.why(JUMP, "a bicycle");
		drafts.number(JUMP, JUMP.parameter("slack-metres"), "3");
		drafts.ask(JUMP, false);
		assertEquals("jump = off: a bicycle\njump.fastest = 4: a bicycle\njump.slack-metres = 3: a bicycle",
				drafts.settings().toString());
		drafts.reset(JUMP);
		assertEquals("default", drafts.words(JUMP));
	}

	@Test
	void showWhatTheArchiveKeepsAndCannotBeUsedAndLeaveItAlone() {
		Archive archive = ModelFactory.eINSTANCE.createArchive();
		RuleSetting kept = ModelFactory.eINSTANCE.createRuleSetting();
		kept.setRule("few-readings");
		kept.setParameter("fewest-readings");
		kept.setValue("many");
		archive.getRuleSettings().add(kept);
		RuleDrafts read = new RuleDrafts(RuleSettings.of(archive));
		assertEquals("many", read.number(FEW, FEWEST));
		assertTrue(read.problem(FEW, FEWEST).orElseThrow().contains("so 3 is taken"));
		assertEquals(Optional.empty(), read.problem(), "what others have done keeps nobody from his work");
		read.why(FEW, "x");
		read.number(JUMP, JUMP.parameter("fastest"), "4");
		assertEquals("few-readings.fewest-readings = many\njump.fastest = 4", read.settings().toString());
		read.number(FEW, FEWEST, "4");
		assertEquals(Optional.empty(), read.problem(FEW, FEWEST));
		read.resetAll();
		assertEquals(RuleSettings.USUAL, read.settings());
	}
}
