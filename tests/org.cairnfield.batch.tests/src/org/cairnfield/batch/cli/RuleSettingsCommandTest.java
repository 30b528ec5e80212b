package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.RuleSetting;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an archive tells the rules, from keeping it to the release that was checked under it. */
class RuleSettingsCommandTest {

	private static final String FEWEST = "few-readings.fewest-readings";

	@TempDir
	static Path folder;
	private static Path archive;

	@BeforeAll
	static void makeArchive() {
		archive = SmallArchive.make(folder);
	}

	private static JsonObject check(Object... options) {
		Object[] all = new Object[options.length + 5];
		System.arraycopy(new Object[] { "check", "-q", "--json", "--archive", archive }, 0, all, 0, 5);
		System.arraycopy(options, 0, all, 5, options.length);
		return Cli.run(all).json();
	}

	private static long of(JsonObject check, String rule) {
		long count = 0;
		for (var finding : check.getAsJsonArray("findings")) {
			count += finding.getAsJsonObject().get("rule").getAsString().equals(rule) ? 1 : 0;
		}
		return count;
	}

	/** On standard output. */
	private static void prints(Cli done, String... words) {
		for (String word : words) {
			assertTrue(done.out().contains(word), "\"" + word + "\" is missing: " + done);
		}
	}

	@BeforeEach
	void reset() {
		Cli.ok("rules", "-q", "--archive", archive, "--reset-all");
	}

	@Test
	void keepsANumberForEveryCommandUntilItIsSetBack() {
		assertEquals(0, of(check(), "few-readings"));
		prints(Cli.ok("rules", "-q", "--archive", archive, "--set", FEWEST + "=6", "--reason",
				"devices of one kind hear six", "--note", "agreed in May"),
				"rule settings changed: " + FEWEST + " = 6",
				FEWEST + " = 6, default 3 (kept with the archive: devices of one kind hear six)");
		JsonObject checked = check();
		assertTrue(of(checked, "few-readings") > 0, checked::toString);
		JsonObject setting = checked.getAsJsonArray("settings").get(0).getAsJsonObject();
		assertEquals("few-readings fewest-readings 6.0 3.0 archive",
				String.join(" ", setting.get("rule").getAsString(), setting.get("parameter").getAsString(),
						setting.get("value").getAsString(), setting.get("default").getAsString(),
						setting.get("from").getAsString()));
		prints(Cli.run("check", "-q", "--archive", archive), "rule setting " + FEWEST + " = 6");
		prints(Cli.run("remedy", "-q", "--archive", archive, "--rule", "few-readings", "--dry-run"),
				"rule setting " + FEWEST + " = 6");

		assertEquals(0, of(check("--set", FEWEST + "=3"), "few-readings"), "the command line wins");
		assertEquals("command line", check("--set", FEWEST + "=4").getAsJsonArray("settings").get(0).getAsJsonObject()
				.get("from").getAsString());
		assertTrue(of(check(), "few-readings") > 0, "and is forgotten");

		prints(Cli.run("gate", "--archive", archive), "findings-error");
		assertTrue(
				Cli.run("gate", "--json", "--archive", archive).json().toString().contains(FEWEST + " = 6, default 3"));
		prints(Cli.ok("rules", "-q", "--archive", archive, "--reset", "few-readings"), FEWEST + " back to the default",
				"every rule has its default settings");
		assertEquals(0, of(check(), "few-readings"));
		prints(Cli.ok("rules", "-q", "--archive", archive, "--reset", "few-readings"), "nothing changed");
	}

	@Test
	void doesNotAskARuleThatIsOffUnlessItIsNamed() {
		Cli.ok("rules", "-q", "--archive", archive, "--off", "coverage-gap", "--reason", "an open square");
		assertEquals(0, of(check(), "coverage-gap"));
		assertTrue(Cli.run("check", "-q", "--archive", archive).out()
				.contains("rule setting coverage-gap is switched off (kept with the archive: an open square)"));
		assertTrue(check("--rule", "coverage-gap").getAsJsonArray("settings").get(0).getAsJsonObject().get("asked")
				.getAsBoolean());
		prints(Cli.run("check", "-q", "--archive", archive, "--rule", "coverage-gap"),
				"coverage-gap is asked for this once; the archive does not ask it: an open square");
		JsonArray settings = Cli.ok("rules", "-q", "--json", "--archive", archive).json().getAsJsonArray("settings");
		assertFalse(settings.get(0).getAsJsonObject().get("asked").getAsBoolean());
	}

	@Test
	void writesIntoAReleaseWhatItWasCheckedUnder() throws Exception {
		Cli.ok("rules", "-q", "--archive", archive, "--off", "coverage-gap", "--reason", "an open square");
		List<String> overrides = new ArrayList<>();
		for (var gate : Cli.run("gate", "-q", "--json", "--archive", archive).json().getAsJsonArray("gates")) {
			if (!gate.getAsJsonObject().get("met").getAsBoolean()) {
				overrides.addAll(List.of("--override", gate.getAsJsonObject().get("gate").getAsString() + "=a trial"));
			}
		}
		Cli.ok("release", "-q", "--archive", archive, "--prepare", "--version", "1.0.0", "--person", "L. Lead",
				overrides);
		String words = "coverage-gap is switched off (kept with the archive: an open square)";
		JsonObject manifest = JsonParser.parseString(Files.readString(archive.resolve("releases/1.0.0.json")))
				.getAsJsonObject();
		assertEquals(words, manifest.getAsJsonArray("rules").get(0).getAsString());
		Cli.ok("report", "-q", "--archive", archive, "--out", folder.resolve("report.html"));
		assertTrue(Files.readString(folder.resolve("report.html")).contains(words));
		reset();
		Cli.run("release", "-q", "--archive", archive, "--sign", "--version", "1.0.0", "--person", "S. Second")
				.says("the content is not what L. Lead prepared");
	}

	@Test
	void refusesWhatIsWrongAndChangesNothing() {
		Cli.run("rules", "--set", FEWEST + "=4").ended(ExitCode.USAGE).says("--archive");
		Cli.run("rules", "--archive", archive, "--set", FEWEST).ended(ExitCode.USAGE).says("RULE.NUMBER=VALUE");
		Cli.run("rules", "--archive", archive, "--set", FEWEST + "=many").ended(ExitCode.USAGE)
				.says("'many' is not a number");
		Cli.run("rules", "--archive", archive, "--set", FEWEST + "=4", "--set", "jump.fastest=500")
				.ended(ExitCode.USAGE).says("fastest must be within 0.5 … 20 m/s");
		Cli.run("rules", "--archive", archive, "--set", "few-readings.most=4").ended(ExitCode.USAGE)
				.says("fewest-readings");
		Cli.run("rules", "--archive", archive, "--off", "jump").ended(ExitCode.USAGE)
				.says("say why jump is not to be asked");
		Cli.run("rules", "--archive", archive, "--off", "no-such-rule", "--reason", "x").ended(ExitCode.USAGE)
				.says("no rule no-such-rule");
		Cli.run("rules", "--archive", archive, "--reset", "jump.slowest").ended(ExitCode.USAGE).says("fastest");
		Cli.run("check", "--archive", archive, "--set", FEWEST + "=-1").ended(ExitCode.USAGE).says("must be within");
		prints(Cli.ok("rules", "-q", "--archive", archive), "every rule has its default settings");
	}

	@Test
	void keepsNamesAndResetsWhatThisVersionDoesNotKnow(@TempDir Path elsewhere) throws Exception {
		Path other = SmallArchive.make(elsewhere);
		try (OpenArchive open = new ArchiveStore().open(other, Mode.EDIT)) {
			RuleSetting newer = ModelFactory.eINSTANCE.createRuleSetting();
			newer.setRule("rule-of-tomorrow");
			newer.setParameter("steepness");
			newer.setValue("\u001b[31m\u202e4");
			open.archive().getRuleSettings().add(newer);
			open.savePoint(Person.named("N. Newer"), null);
		}
		Cli result = Cli.run("check", "--archive", other);
		result.says("rule-of-tomorrow.steepness", "does not know what that means");
		assertFalse(result.err().contains("\u001b[31m") || result.err().contains("\u202e"), result::err);
		Cli.ok("rules", "-q", "--archive", other, "--set", FEWEST + "=4");
		assertEquals(2,
				Cli.ok("rules", "-q", "--json", "--archive", other).json().getAsJsonArray("settingProblems").size()
						+ Cli.ok("rules", "-q", "--json", "--archive", other).json().getAsJsonArray("settings").size());
		prints(Cli.ok("rules", "-q", "--archive", other, "--reset", "rule-of-tomorrow.steepness"),
				"rule-of-tomorrow.steepness back to the default");
		assertEquals(0,
				Cli.ok("rules", "-q", "--json", "--archive", other).json().getAsJsonArray("settingProblems").size());
	}
}
