package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.maps.ArchiveMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Sailmakers' Hall after the winter in which part of its network was replaced, and the Tide House with two devices. */
class AgeCommandsTest {

	private static final String HALL = "Sailmakers' Hall";

	@TempDir
	static Path shared;
	private static Path files;

	@TempDir
	Path folder;
	private Path archive;

	@BeforeAll
	static void simulate() {
		files = shared.resolve("quay");
		Cli.ok("simulate", "--clean", "-q", "--out", files);
	}

	@BeforeEach
	void takeIn() {
		archive = folder.resolve("quay");
		Cli.ok("intake", "-q", "--archive", archive, "--map", survey("surveys/sh-spring"), survey("surveys/sh-autumn"),
				survey("surveys/th-spring"),
				survey("surveys/th-autumn"));
	}

	private static Path survey(String name) {
		return files.resolve(name + ".csv");
	}

	private void takeInNextSpring() {
		Cli.ok("intake", "-q", "--archive", archive, "--map", survey("later/sh-next-spring"));
	}

	private JsonObject refresh(String site, Object... more) {
		return only(Cli.ok(args(List.of("refresh", "--json", "-q", "--archive", archive, "--site", site), more)).json()
				.getAsJsonArray("sites"));
	}

	private static Object[] args(List<Object> first, Object... more) {
		return Stream.concat(first.stream(), Arrays.stream(more)).toArray();
	}

	private static JsonObject only(JsonArray array) {
		assertEquals(1, array.size());
		return array.get(0).getAsJsonObject();
	}

	private static List<JsonObject> all(JsonArray array) {
		return StreamSupport.stream(array.spliterator(), false).map(JsonElement::getAsJsonObject).toList();
	}

	@Test
	void refreshDoesWhatHelpsAndNothingTwice() {
		takeInNextSpring();
		JsonObject site = refresh(HALL);
		assertEquals("2032-04-05", site.get("day").getAsString());
		String chosen = site.get("chosen").getAsString();
		assertTrue(Set.of("vanished", "successors").contains(chosen), chosen);
		JsonObject remedy = all(site.getAsJsonArray("remedies")).stream()
				.filter(each -> each.get("name").getAsString().equals(chosen)).findFirst().orElseThrow();
		assertTrue(
				remedy.get("high").getAsDouble() < 0
						&& remedy.get("errorAfterM").getAsDouble() < 0.9 * remedy.get("errorBeforeM").getAsDouble(),
				remedy::toString);
		refresh(HALL, "--apply");
		assertTrue(refresh(HALL).get("chosen").isJsonNull(), "it is done");
		String timeline = Cli.ok("timeline", "-q", "--archive", archive, "--site", HALL).out();
		assertTrue(timeline.contains("2032-04-05  sh-next-spring  CHANGED"),
				"what happened stays in the timeline: " + timeline);
		List<JsonObject> points = all(
				Cli.ok("history", "--json", "-q", "--archive", archive).json().getAsJsonArray("savePoints"));
		Cli.ok("restore", "-q", "--archive", archive, points.get(1).get("id").getAsString());
		assertEquals(chosen, refresh(HALL).get("chosen").getAsString(), "it can be taken back");
	}

	@Test
	void refreshRefusesWhatItDoesNotKnow() {
		Cli.run("refresh", "--archive", archive, "--apply", "--remedy", "wishing").ended(ExitCode.USAGE).says("wishing",
				"vanished");
		Cli.run("refresh", "--archive", archive, "--remedy", "vanished").ended(ExitCode.USAGE).says("--apply");
	}

	/** The second device reads 5 dB less; its samples come into the map as the first one would have read them. */
	@Test
	void refreshCorrectsADevice() throws Exception {
		double before = meanDbm();
		JsonObject site = refresh("Tide House", "--apply");
		assertEquals("device", site.get("chosen").getAsString());
		assertEquals(before + 5, meanDbm(), 1.1, "mean level of the second device, in whole dB");
	}

	private double meanDbm() throws Exception {
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.READ)) {
			RadioMap map = ArchiveMap.of(open.archive()).map();
			double sum = 0;
			int count = 0;
			for (int s = 0; s < map.size(); s++) {
				for (int k = map.firstReading(s); k < map.endReading(s); k++) {
					boolean second = map.devices().get(map.device(s)).endsWith("B")
							&& map.sites().get(map.site(s)).equals("Tide House");
					sum += second ? map.rssiDbm(k) : 0;
					count += second ? 1 : 0;
				}
			}
			return sum / count;
		}
	}

	@Test
	void watchTakesInMeasuresAndTellsByItsExitCode() throws Exception {
		refresh("Tide House", "--apply");
		Path page = folder.resolve("age.html");
		Cli.run("watch", "-q", "--archive", archive, "--map", survey("later/sh-next-spring"), "--out", page)
				.ended(ExitCode.CONTRADICTED);
		String html = Files.readString(page);
		assertTrue(html.contains("Sailmakers&#39; Hall") || html.contains("Sailmakers' Hall"),
				"the site has a heading");
		assertTrue(
				html.contains("What helps most: ") && html.contains("not for safety of life") && html.contains("<svg"),
				"advice, cautions, picture");
		refresh(HALL, "--apply");
		JsonObject told = Cli.ok("watch", "-q", "--json", "--archive", archive, "--map", survey("later/sh-next-spring"))
				.json();
		assertEquals(0, told.get("takenIn").getAsInt(), "it has that survey");
		assertTrue(
				all(told.getAsJsonArray("sites")).stream().noneMatch(site -> site.get("contradicted").getAsBoolean()),
				told::toString);
	}

	@Test
	void aPeriodLeavesOtherSurveysOutOfTheMap() throws Exception {
		takeInNextSpring();
		JsonObject told = Cli.ok("period", "-q", "--json", "--archive", archive, "--site", HALL, "--from", "2032-01-01")
				.json();
		assertEquals(1, told.getAsJsonArray("surveys").size());
		JsonObject gates = Cli.run("gate", "-q", "--json", "--archive", archive).json();
		String age = gates.getAsJsonArray("ages").get(0).getAsString();
		assertTrue(age.startsWith("Sailmakers' Hall: surveys of 2032-04-05, 2 surveys of other days left out."), age);
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.READ)) {
			RadioMap map = ArchiveMap.of(open.archive()).map();
			assertEquals(648,
					IntStream.range(0, map.size()).filter(s -> map.sites().get(map.site(s)).equals(HALL)).count());
		}
		Cli.run("period", "--archive", archive, "--site", HALL, "--until", "2031-12-31").ended(ExitCode.USAGE)
				.says("cannot end");
		assertEquals(3, Cli.ok("period", "-q", "--json", "--archive", archive, "--site", HALL, "--all").json()
				.getAsJsonArray("surveys").size());
	}

	@Test
	void aGateHoldsBackAMapThatTheLatestSurveyContradicts() throws Exception {
		takeInNextSpring();
		refresh("Tide House", "--apply");
		Files.createDirectories(archive.resolve("releases"));
		Files.writeString(archive.resolve("releases/gates.txt"), "contradicted-sites at most 0\n");
		JsonObject held = only(Cli.run("gate", "-q", "--json", "--archive", archive).ended(ExitCode.GATES).json()
				.getAsJsonArray("gates"));
		assertEquals(1, held.get("figure").getAsInt());
		assertTrue(held.get("evidence").getAsString().startsWith("Sailmakers' Hall, survey of 2032-04-05: "),
				held::toString);
		refresh(HALL, "--apply");
		Cli.run("gate", "-q", "--json", "--archive", archive).ended(ExitCode.OK);
	}

	@Test
	void aWalkLeadsToThePlacesThatTellMost() throws Exception {
		takeInNextSpring();
		Path csv = folder.resolve("walk.csv");
		Path geo = folder.resolve("walk.geojson");
		Cli.run("walk", "--archive", archive, "--site", "Tide House", "--geojson", geo).ended(ExitCode.OK)
				.says("nobody has said where on Earth");
		Cli.ok("locate", "-q", "--archive", archive, "--site", "Tide House", "--latitude", 40, "--longitude", -40);
		JsonObject walk = only(Cli
				.ok("walk", "-q", "--json", "--archive", archive, "--site", "Tide House", "--places", 12, "--csv", csv,
						"--geojson", geo)
				.json()
				.getAsJsonArray("walks"));
		assertEquals(12, walk.getAsJsonArray("places").size());
		List<String> lines = Files.readAllLines(csv);
		assertEquals(13, lines.size());
		assertTrue(lines.get(0).startsWith("order,site,floor,x_m,y_m,longitude,latitude,why"), lines.get(0));
		List<JsonObject> features = all(
				JsonParser.parseString(Files.readString(geo)).getAsJsonObject().getAsJsonArray("features"));
		assertEquals(12, features.size());
		for (JsonObject feature : features) {
			JsonArray lonLat = feature.getAsJsonObject("geometry").getAsJsonArray("coordinates");
			assertEquals(-40, lonLat.get(0).getAsDouble(), 0.001);
			assertEquals(40, lonLat.get(1).getAsDouble(), 0.001);
			assertFalse(feature.getAsJsonObject("properties").get("why").getAsString().isEmpty());
		}
	}
}
