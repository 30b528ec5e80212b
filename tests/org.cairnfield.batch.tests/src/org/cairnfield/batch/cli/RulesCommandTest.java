package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.junit.jupiter.api.Test;

class RulesCommandTest {

	@Test
	void listsEveryRuleWithItsNumbersAndTheirReasons() {
		String all = Cli.ok("rules").out();
		CleaningRules.registry().all().forEach(rule -> {
			assertTrue(all.contains(rule.id() + ": " + rule.title()), rule.id());
			rule.thresholds().forEach(each -> assertTrue(all.contains("  " + each.words()), each::words));
		});
		assertTrue(all.contains("  --alternative one-a-place: Keep one of each run at each place"), all);
	}

	@Test
	void listsOneAsJson() {
		JsonObject json = Cli.ok("rules", "--json", "--rule", "level-out-of-range").json();
		assertEquals(1, json.getAsJsonArray("rules").size());
		JsonObject highest = json.getAsJsonArray("rules").get(0).getAsJsonObject().getAsJsonArray("thresholds").get(0)
				.getAsJsonObject();
		assertEquals(-25, highest.get("value").getAsDouble());
		assertEquals("dBm", highest.get("unit").getAsString());
		assertEquals("standard", highest.get("basis").getAsString());
		for (JsonElement each : json.getAsJsonArray("rules").get(0).getAsJsonObject().getAsJsonArray("thresholds")) {
			assertTrue(!each.getAsJsonObject().get("reason").getAsString().isBlank(), each::toString);
		}
		Cli.run("rules", "--rule", "no-such-rule").ended(ExitCode.USAGE).says("no-such-rule", "level-out-of-range");
	}
}
