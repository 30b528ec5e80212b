package org.cairnfield.curation.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.curation.internal.rules.sample.FewReadingsRule;
import org.cairnfield.curation.internal.rules.sample.JumpRule;
import org.junit.jupiter.api.Test;

class SettingsTest {

	@Test
	void keepParametersWithinTheirRange() {
		Settings settings = Settings.USUAL.with(new JumpRule(), "fastest", 3.5);
		assertEquals(3.5, settings.of(JumpRule.SPEED));
		assertEquals(2, settings.of(JumpRule.SLACK), "the others as usual");
		IllegalArgumentException tooFast = assertThrows(IllegalArgumentException.class,
				() -> Settings.USUAL.with(JumpRule.SPEED, 21));
		assertEquals("fastest must be within 0.5 … 20 m/s, was 21", tooFast.getMessage());
		assertThrows(IllegalArgumentException.class, () -> Settings.USUAL.with(JumpRule.SPEED, Double.NaN));
		assertThrows(IllegalArgumentException.class, () -> Settings.USUAL.with(FewReadingsRule.FEWEST, 2.5));
		IllegalArgumentException unknown = assertThrows(IllegalArgumentException.class,
				() -> Settings.USUAL.with(new JumpRule(), "slowest", 1));
		assertTrue(unknown.getMessage().contains("slack-metres"), unknown.getMessage());
	}

	@Test
	void haveAKeyOfTheirValues() {
		assertEquals(Settings.USUAL.with(JumpRule.SPEED, 3).key(), Settings.USUAL.with(JumpRule.SPEED, 3).key());
		assertNotEquals(Settings.USUAL.with(JumpRule.SPEED, 3).key(), Settings.USUAL.with(JumpRule.SPEED, 4).key());
		assertNotEquals(Settings.USUAL.with(JumpRule.SPEED, 3).key(), Settings.USUAL.with(JumpRule.SLACK, 3).key());
	}

	@Test
	void everyRuleDescribesItself() {
		List<Rule> rules = CleaningRules.registry().all();
		assertEquals(27, rules.size());
		for (Rule rule : rules) {
			assertTrue(rule.id().matches("[a-z]+(-[a-z]+)*"), rule.id());
			assertTrue(rule.explanation().endsWith(".") && rule.explanation().length() > 40, rule.id());
			assertTrue(rule.title().length() < 60 && !rule.title().endsWith("."), rule.id());
			Set<String> ids = new HashSet<>();
			rule.parameters()
					.forEach(p -> assertTrue(ids.add(p.id()) && p.id().matches("[a-z0-9]+(-[a-z0-9]+)*"), p.id()));
		}
		assertEquals("jump", CleaningRules.registry().rule("jump").id());
		assertThrows(IllegalArgumentException.class, () -> CleaningRules.registry().rule("jumps"));
		assertThrows(IllegalArgumentException.class,
				() -> new RuleRegistry(List.of(new JumpRule(), new JumpRule())));
	}
}
