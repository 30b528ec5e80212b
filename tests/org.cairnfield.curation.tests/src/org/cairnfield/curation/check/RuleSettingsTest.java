package org.cairnfield.curation.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleRegistry;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.RuleSetting;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleSettingsTest {

	private static final RuleRegistry RULES = CleaningRules.registry();
	private static final Rule FEW = RULES.rule("few-readings");
	private static final Parameter FEWEST = FEW.parameter("fewest-readings");
	private static final Rule JUMP = RULES.rule("jump");
	private static final Parameter FASTEST = JUMP.parameter("fastest");

	private final Archive archive = ModelFactory.eINSTANCE.createArchive();

	private void keep(String rule, String parameter, String value, String reason) {
		RuleSetting setting = ModelFactory.eINSTANCE.createRuleSetting();
		setting.setRule(rule);
		setting.setParameter(parameter);
		setting.setValue(value);
		setting.setReason(reason);
		archive.getRuleSettings().add(setting);
	}

	private void set(RuleSettings settings) {
		SetRuleSettingsCommand command = new SetRuleSettingsCommand(archive, settings);
		assertTrue(command.canExecute());
		command.execute();
	}

	private static boolean asks(RulesAsTold told, Rule rule) {
		return told.run().rules().contains(rule);
	}

	@Test
	void keepOnlyWhatIsNotAsUsual() {
		RuleSettings set = RuleSettings.USUAL.with(JUMP, FASTEST, 4, null).with(FEW, FEWEST, 5, " the cellar ")
				.off(JUMP, "walked by bicycle");
		assertEquals("few-readings.fewest-readings = 5: the cellar\njump = off: walked by bicycle\njump.fastest = 4",
				set.toString());
		assertEquals(RuleSettings.USUAL, set.with(FEW, FEWEST, FEWEST.usual(), "again").without("jump"));
		assertEquals("jump.fastest = 4", set.without("few-readings").without("jump", null).toString());
		assertEquals(set, RuleSettings.USUAL.off(JUMP, "walked by bicycle").with(FEW, FEWEST, 5, "the cellar")
				.with(JUMP, FASTEST, 4, ""));
		assertEquals(List.of("few-readings.fewest-readings", "jump"),
				set.changesTo(RuleSettings.USUAL.with(JUMP, FASTEST, 4, null)));
	}

	@Test
	void refuseWhatCannotBeKept() {
		assertThrows(IllegalArgumentException.class, () -> RuleSettings.USUAL.with(JUMP, FASTEST, 500, null));
		assertThrows(IllegalArgumentException.class, () -> RuleSettings.USUAL.with(JUMP, FASTEST, Double.NaN, null));
		assertThrows(IllegalArgumentException.class, () -> RuleSettings.USUAL.with(FEW, FEWEST, 2.5, null));
		assertThrows(IllegalArgumentException.class, () -> RuleSettings.USUAL.off(JUMP, "  "));
		assertThrows(IllegalArgumentException.class, () -> RuleSettings.USUAL.off(JUMP, "two\nlines"));
		assertThrows(IllegalArgumentException.class,
				() -> RuleSettings.USUAL.off(JUMP, "a".repeat(RuleSettings.LONGEST_REASON + 1)));
	}

	@Test
	void tellTheRulesOfTheArchive() {
		set(RuleSettings.USUAL.with(FEW, FEWEST, 5, "the cellar").off(JUMP, "a bicycle"));
		RulesAsTold told = RuleSettings.of(archive).rules();
		assertEquals(5, told.run().settings(FEW).of(FEWEST));
		assertFalse(asks(told, JUMP));
		assertEquals(RULES.all().size() - 1, told.run().rules().size());
		assertEquals(List.of("few-readings.fewest-readings = 5, default 3 (kept with the archive: the cellar)",
				"jump is switched off (kept with the archive: a bicycle)"), told.words());
		assertEquals(List.of(), told.problems());
	}

	@Test
	void giveWayToWhatIsSaidForOneRun() {
		RuleSettings kept = RuleSettings.USUAL.with(FEW, FEWEST, 5, "the cellar").off(JUMP, "a bicycle");
		RuleSettings usualForOnce = RuleSettings.just(List.of(RuleSettings.One.of(FEW, FEWEST, FEWEST.usual(), null)));
		RulesAsTold told = RulesAsTold.of(List.of(FEW, JUMP), kept, usualForOnce, true);
		assertEquals(FEWEST.usual(), told.run().settings(FEW).of(FEWEST));
		assertTrue(asks(told, JUMP), "who names a rule wants it asked");
		assertEquals(List.of("jump is asked for this once; the archive does not ask it: a bicycle",
				"few-readings.fewest-readings = 3, default 3 (for this once)"), told.words());
		assertEquals(List.of(),
				RulesAsTold.of(List.of(RULES.rule("wrong-floor")), kept, RuleSettings.USUAL, true).told());
	}

	/** Of a newer version, edited by hand, or written with intent. */
	@ParameterizedTest
	@CsvSource(nullValues = "-", value = { "rule-of-tomorrow,steepness,4,does not know",
			"few-readings,number-of-tomorrow,4,does not know",
			"jump,-,loud,does not know", "-,-,-,does not know", "few-readings,fewest-readings,many,is not a number",
			"few-readings,fewest-readings,-,is not a number",
			"few-readings,fewest-readings,1e300,must be within", "few-readings,fewest-readings,NaN,must be within",
			"few-readings,fewest-readings,2.5,whole number",
			"few-readings,fewest-readings,'',is not a number" })
	void areKeptAndNamedWhereTheyCannotBeFollowed(String rule, String parameter, String value, String problem) {
		keep(rule, parameter, value, null);
		RulesAsTold told = RuleSettings.of(archive).rules();
		assertEquals(List.of(), told.told());
		assertEquals(RULES.all(), told.run().rules());
		assertEquals(FEWEST.usual(), told.run().settings(FEW).of(FEWEST));
		assertEquals(1, told.problems().size());
		assertTrue(told.problems().get(0).contains(problem) && told.problems().get(0).contains("reset it"),
				told.problems()::toString);
		RuleSetting before = archive.getRuleSettings().get(0);
		set(RuleSettings.of(archive).with(JUMP, FASTEST, 4, null));
		assertEquals(2, archive.getRuleSettings().size());
		assertSame(before,
				archive.getRuleSettings().stream().filter(setting -> setting == before).findFirst().orElseThrow(),
				"another change leaves it alone");
	}

	@Test
	void areAsUsualWhereAMergeByPlainGitHasLeftTwo() {
		keep("few-readings", "fewest-readings", "4", null);
		keep("few-readings", "fewest-readings", "5", null);
		RulesAsTold told = RuleSettings.of(archive).rules();
		assertEquals(FEWEST.usual(), told.run().settings(FEW).of(FEWEST));
		assertEquals(List.of(
				"few-readings.fewest-readings is set 2 times, to 4 and 5: the default is used; set it again, or reset it"),
				told.problems());
		set(RuleSettings.of(archive).with(FEW, FEWEST, 5, null));
		assertEquals(5, RuleSettings.of(archive).rules().run().settings(FEW).of(FEWEST));
		assertEquals(1, archive.getRuleSettings().size());
	}

	@Test
	void areShownCutWhereSomebodyHasWrittenABook() {
		keep("jump", null, "off", "x".repeat(1_000_000));
		assertTrue(RuleSettings.of(archive).rules().words().get(0).length() < 2 * RuleSettings.LONGEST_REASON);
		assertEquals(1_000_000, RuleSettings.of(archive).all().get(0).reason().length());
	}

	@Test
	void areOneChangeThatIsUndoneExactly() {
		keep("rule-of-tomorrow", "steepness", "4", null);
		keep("jump", "fastest", "4", null);
		Archive before = EcoreUtil.copy(archive);
		List<RuleSetting> objects = List.copyOf(archive.getRuleSettings());
		BasicCommandStack stack = new BasicCommandStack();
		RuleSettings wanted = RuleSettings.of(archive).without("jump").with(FEW, FEWEST, 5, null)
				.off(RULES.rule("hotspot"), "a ferry");
		stack.execute(new SetRuleSettingsCommand(archive, wanted));
		assertEquals(wanted, RuleSettings.of(archive));
		assertFalse(new SetRuleSettingsCommand(archive, wanted).canExecute());
		stack.undo();
		assertTrue(EcoreUtil.equals(before, archive));
		assertEquals(objects, archive.getRuleSettings());
		stack.redo();
		assertEquals(wanted, RuleSettings.of(archive));
	}
}
