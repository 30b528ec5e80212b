package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FewerCommandTest {

	@TempDir
	Path folder;

	@Test
	void measuresFewerAccessPointsAndSetsTheOthersAsideWhenAsked() {
		Path archive = folder.resolve("archive");
		Cli.ok("intake", "-q", "--archive", archive, "--map",
				TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(300)));
		String before = Cli.ok("check", "-q", "--archive", archive, "--json").out();
		JsonObject found = Cli.ok("fewer", "-q", "--archive", archive, "--json").json();
		JsonArray steps = found.getAsJsonArray("steps");
		assertTrue(steps.size() >= 3, steps::toString);
		for (int s = 1; s < steps.size(); s++) {
			JsonObject more = steps.get(s - 1).getAsJsonObject();
			JsonObject fewer = steps.get(s).getAsJsonObject();
			assertTrue(fewer.get("accessPoints").getAsInt() < more.get("accessPoints").getAsInt(), steps::toString);
			assertTrue(fewer.get("packBytes").getAsDouble() < more.get("packBytes").getAsDouble(), steps::toString);
			assertEquals(steps.get(0).getAsJsonObject().get("accessPoints").getAsInt(),
					fewer.get("accessPoints").getAsInt() + fewer.getAsJsonArray("others").size());
		}
		JsonObject least = steps.get(steps.size() - 1).getAsJsonObject();
		assertTrue(least.get("errorM").getAsDouble() > steps.get(0).getAsJsonObject().get("errorM").getAsDouble(),
				"a quarter of them tells less");
		assertEquals(before, Cli.ok("check", "-q", "--archive", archive, "--json").out(), "nothing is done unasked");
		Cli.run("fewer", "-q", "--archive", archive, "--keep", "1").ended(ExitCode.USAGE).says("--keep must be one of",
				least.get("accessPoints").getAsString());
		Cli.ok("fewer", "-q", "--archive", archive, "--keep", least.get("accessPoints").getAsString());
		assertEquals(least.get("accessPoints").getAsInt(),
				Cli.ok("fewer", "-q", "--archive", archive, "--json").json().getAsJsonArray("steps").get(0)
						.getAsJsonObject().get("accessPoints").getAsInt(),
				"those are all that the map has now");
	}
}
