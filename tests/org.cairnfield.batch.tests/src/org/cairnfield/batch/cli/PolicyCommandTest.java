package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PolicyCommandTest {

	@TempDir
	Path folder;
	private Path archive;

	@BeforeEach
	void takeIn() {
		archive = folder.resolve("quay");
		Cli.ok("intake", "-q", "--map", TestSurveys.plain(folder.resolve("spring.csv"), TestSurveys.map(500)),
				"--archive", archive);
	}

	private JsonObject policy(Object... options) {
		Object[] all = new Object[options.length + 5];
		System.arraycopy(new Object[] { "policy", "--json", "-q", "--archive", archive }, 0, all, 0, 5);
		System.arraycopy(options, 0, all, 5, options.length);
		return Cli.ok(all).json();
	}

	private int savePoints() {
		return Cli.ok("history", "--json", "-q", "--archive", archive).json().getAsJsonArray("savePoints").size();
	}

	@Test
	void keepsThePolicyWithTheArchiveAsOneSavePoint() {
		assertEquals("loose -1.0; fair 0.5; close 0.8", policy().get("bands").getAsString());
		int before = savePoints();
		policy("--bands", "weak -1; strong 0.6", "--second", "strong", "--audit-limit", 0.02);
		assertEquals(before + 1, savePoints());
		JsonObject kept = policy();
		assertEquals("weak -1.0; strong 0.6", kept.get("bands").getAsString());
		assertEquals("[\"strong\"]", kept.getAsJsonArray("second").toString());
		assertEquals(0.02, kept.get("auditLimit").getAsDouble());
		assertEquals(0.95, kept.get("auditConfidence").getAsDouble());
		assertEquals("[]", policy("--no-second").getAsJsonArray("second").toString());
		assertEquals("weak -1.0; strong 0.6", policy().get("bands").getAsString());
	}

	@Test
	void isWhatVerdictsAndGatesUse() {
		Cli.ok("split", "-q", "--archive", archive, "--name", "whole", "--epsilon", 90, "--min-pts", 4);
		Cli.ok("propose", "-q", "--archive", archive);
		policy("--second", "close");
		assertTrue(Cli.run("gate", "-q", "--archive", archive).out().contains("bands close"));
		Path table = folder.resolve("verdicts.csv");
		Cli.ok("verdicts", "-q", "--archive", archive, "--bands", "all -1", "--export", table);
		assertEquals("all", band(table), "for this once");
		Cli.ok("verdicts", "-q", "--archive", archive, "--export", table);
		assertTrue(Set.of("loose", "fair", "close").contains(band(table)));
	}

	/** Of the first proposal in a table. */
	private static String band(Path table) {
		Csv csv = Csv.of(table);
		return IntStream.range(0, csv.size()).filter(row -> csv.text(row, "made").equals("yes"))
				.mapToObj(row -> csv.text(row, "band")).findFirst()
				.orElseThrow();
	}

	@Test
	void refusesWhatIsNoPolicy() {
		Cli.run("policy", "-q", "--archive", archive, "--bands", "weak").ended(ExitCode.USAGE).says("a band is a name");
		Cli.run("policy", "-q", "--archive", archive, "--second", "huge").ended(ExitCode.USAGE)
				.says("there is no band 'huge'");
		Cli.run("policy", "-q", "--archive", archive, "--audit-limit", 3).ended(ExitCode.USAGE).says("between 0 and 1");
		Cli.run("policy", "-q", "--archive", archive, "--second", "fair", "--no-second").ended(ExitCode.USAGE)
				.says("not both");
	}
}
