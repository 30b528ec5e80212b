package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.cairnfield.testkit.OpenSets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

@Isolated
class TimelineCommandTest {

	@TempDir
	Path folder;

	private static List<JsonObject> changes(Path archive) {
		return StreamSupport
				.stream(Cli.ok("timeline", "--json", "-q", "--archive", archive).json().getAsJsonArray("changes")
						.spliterator(), false)
				.map(JsonElement::getAsJsonObject).toList();
	}

	private static Set<String> strings(JsonObject of, String name) {
		Set<String> all = new HashSet<>();
		of.getAsJsonArray(name).forEach(each -> all.add(each.getAsString()));
		return all;
	}

	private static JsonObject on(List<JsonObject> changes, String date) {
		return changes.stream().filter(each -> each.get("date").getAsString().equals(date)).findFirst().orElseThrow();
	}

	/** One floor surveyed twelve times: twice as many addresses as usual in one month, another network from the next year on. */
	@Test
	void tellsTheChangesOfAnOpenSetAndNoOthers() throws IOException {
		Path archive = folder.resolve("twelve");
		List<Object> intake = new ArrayList<>(List.of("intake", "-q", "--archive", archive, "--map"));
		intake.addAll(OpenSets.files("twelve-surveys", ".csv"));
		Cli.ok(intake.toArray());
		List<JsonObject> changes = changes(archive);
		assertEquals(12, changes.size());
		assertEquals(List.of("2019-09-11", "2019-10-09", "2020-01-15"),
				changes.stream().filter(each -> each.get("changed").getAsBoolean())
						.map(each -> each.get("date").getAsString()).toList());
		JsonObject september = on(changes, "2019-09-11");
		Set<String> came = strings(september, "appeared");
		assertTrue(came.size() > 120 && strings(september, "vanished").size() < 10, september::toString);
		Set<String> gone = strings(on(changes, "2019-10-09"), "vanished");
		gone.retainAll(came);
		assertTrue(gone.size() > 0.9 * came.size(),
				() -> gone.size() + " of " + came.size() + " are gone a month later");
		JsonObject january = on(changes, "2020-01-15");
		assertTrue(strings(january, "vanished").size() + january.getAsJsonObject("replaced").size() >= 25,
				january::toString);
		assertTrue(january.getAsJsonObject("replaced").size() >= 8, january::toString);
		assertTrue(january.get("errorLowM").getAsDouble() > 4,
				"the map of the month before is stale: " + january.get("errorM"));
		assertTrue(on(changes, "2020-02-19").get("errorHighM").getAsDouble() < 2, "that of the new network is not");
	}

	@Test
	void hasNothingToCompareTheFirstSurveyWith() {
		Path archive = SmallArchive.make(folder);
		List<JsonObject> changes = changes(archive);
		assertEquals(2, changes.size(), "one survey of each site; test surveys make no map");
		for (JsonObject change : changes) {
			assertFalse(change.get("changed").getAsBoolean());
			assertTrue(change.get("errorM").isJsonNull());
		}
		String site = changes.get(0).get("site").getAsString();
		String told = Cli.ok("timeline", "-q", "--archive", archive, "--site", site).out();
		assertTrue(told.contains("the first"), told);
		Cli.run("timeline", "--archive", archive, "--site", "nowhere").ended(ExitCode.ARCHIVE).says("nowhere");
	}

	private static void takeIn(Path archive, String... surveys) throws IOException {
		List<Object> intake = new ArrayList<>(List.of("intake", "-q", "--archive", archive, "--map"));
		for (String survey : surveys) {
			intake.addAll(OpenSets.files("twelve-surveys", survey));
		}
		Cli.ok(intake.toArray());
	}

	/** Released before the network was changed, and measured on what came after. */
	@Test
	void tellsHowAReleaseAges() throws IOException {
		Path archive = folder.resolve("two");
		takeIn(archive, "2019-11-13", "2019-12-11");
		System.setProperty("cairnfield.state", folder.resolve("state").toString());
		ReleasedArchive.release(archive);
		assertEquals(0, Cli.ok("ageing", "--json", "-q", "--archive", archive).json().getAsJsonArray("ageing").size());
		takeIn(archive, "2020-01-15", "2020-02-19");
		List<JsonObject> rows = StreamSupport
				.stream(Cli.ok("ageing", "--json", "-q", "--archive", archive).json().getAsJsonArray("ageing")
						.spliterator(), false)
				.map(JsonElement::getAsJsonObject).toList();
		assertEquals(List.of("1.0.0 2020-01-15", "1.0.0 2020-02-19"),
				rows.stream().map(row -> row.get("release").getAsString() + ' ' + row.get("date").getAsString())
						.toList());
		assertTrue(rows.stream().allMatch(
				row -> row.get("newest").getAsString().equals("2019-12-11") && row.get("errorLowM").getAsDouble() > 4),
				rows::toString);
		assertTrue(Cli.ok("ageing", "-q", "--archive", archive).out()
				.contains("1.0.0      twelve-surveys of 2019-12-11, on 2020-01-15 of 2020-01-15: "));
	}
}
