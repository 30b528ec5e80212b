package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.exchange.export.SiteFrame;
import org.cairnfield.testkit.MuseumPlans;
import org.cairnfield.testkit.SmallArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FloorsCommandTest {

	@TempDir
	Path folder;
	private Path archive;
	private Path plans;

	@BeforeEach
	void makeAnArchiveAndItsPlans() throws Exception {
		archive = folder.resolve("archive");
		try (OpenArchive open = SmallArchive.create(new ArchiveStore(), archive)) {
			open.savePoint(Person.named("A. Steward"), null);
		}
		plans = MuseumPlans.zip(folder.resolve("museums.zip"),
				MuseumPlans.texts(Map.of("Tide House", new SiteFrame.Anchor(40, -40, 30))));
	}

	private int savePoints() {
		return Cli.ok("history", "--json", "--archive", archive).json().getAsJsonArray("savePoints").size();
	}

	private String outline(int level) {
		return Cli.ok("set", "-q", "--json", "--archive", archive, "floor:th/" + level).json().getAsJsonObject("values")
				.get("outline").getAsString();
	}

	@Test
	void takesFloorsInAsOneSavePointAfterSayingWhatItWouldDo() {
		int before = savePoints();
		String first = outline(0);
		Cli dry = Cli.ok("floors", "--archive", archive, "--site", "Tide House", "--dry-run", plans);
		assertTrue(dry.out().contains("IMDF 1.0.0, nothing is changed:")
				&& dry.out().contains("floor 1 (Gallery 1): made"), dry::toString);
		assertTrue(dry.err().contains("note: ") && dry.err().contains("it is made"), dry::toString);
		assertEquals(before, savePoints());
		assertFalse(Files.exists(archive.resolve("plans")), "not even an image");
		JsonObject done = Cli.ok("floors", "-q", "--json", "--archive", archive, "--site", "th", plans).json();
		assertTrue(done.get("changes").getAsBoolean());
		assertEquals(1092, done.getAsJsonArray("floors").get(0).getAsJsonObject().get("areaM2").getAsDouble(), 0.1);
		assertTrue(Files.exists(archive
				.resolve(done.getAsJsonArray("floors").get(1).getAsJsonObject().get("planImage").getAsString())));
		assertEquals(before + 1, savePoints());
		assertEquals(4, outline(1).split(" ").length);
		Cli again = Cli.ok("floors", "--archive", archive, "--site", "th", plans);
		assertTrue(again.out().contains("nothing changed") && again.out().contains("as before"), again::toString);
		String savePoint = Cli.ok("history", "--json", "--archive", archive).json().getAsJsonArray("savePoints").get(1)
				.getAsJsonObject().get("id").getAsString();
		Cli.ok("restore", "-q", "--archive", archive, savePoint);
		assertEquals(first, outline(0));
		Cli.run("set", "--archive", archive, "floor:th/1").ended(ExitCode.ARCHIVE);
	}

	@Test
	void placesASiteThatHasNoPlace() {
		Cli.ok("set", "-q", "--archive", archive, "site:th", "georeference=");
		int before = savePoints();
		Cli.run("floors", "-q", "--archive", archive, "--site", "th", plans).ended(ExitCode.INPUT)
				.says("Tide House has no place on Earth", "--place");
		assertEquals(before, savePoints());
		JsonObject done = Cli.ok("floors", "-q", "--json", "--archive", archive, "--site", "th", "--place", plans)
				.json();
		assertEquals(done.get("placedAt").getAsString(),
				Cli.ok("set", "-q", "--json", "--archive", archive, "site:th").json().getAsJsonObject("values")
						.get("georeference").getAsString());
	}

	/** What it exports as GeoJSON it takes in again: the same outlines, to a tenth of a millimetre. */
	@Test
	void takesInTheGeoJsonThatItExports() throws Exception {
		String first = outline(0);
		Path out = folder.resolve("out");
		Cli.ok("export", "-q", "--archive", archive, "--format", "geojson", "--out", out);
		Path exported;
		try (var files = Files.list(out)) {
			exported = files.filter(file -> file.toString().endsWith(".geojson")).findFirst().orElseThrow();
		}
		Cli.ok("set", "-q", "--archive", archive, "floor:th/0", "outline=");
		Cli taken = Cli.ok("floors", "--archive", archive, "--site", "th", exported);
		assertTrue(taken.err().contains("points are left out"), taken::toString);
		assertEquals(first, outline(0));
	}

	@Test
	void refusesFilesInWordsAndChangesNothing() throws Exception {
		int before = savePoints();
		Path bad = Files.writeString(folder.resolve("bad.geojson"), "{\"type\":\"FeatureCollection\",\"features\":[");
		Cli.run("floors", "--archive", archive, "--site", "th", bad).ended(ExitCode.INPUT).says("bad.geojson",
				"it ends too early");
		Cli.run("floors", "--archive", archive, "--site", "attic", plans).ended(ExitCode.ARCHIVE)
				.says("no site 'attic'");
		Cli.run("floors", "--archive", archive, "--site", "th", "--building", "Boat Shed", plans).ended(ExitCode.INPUT)
				.says("Boat Shed", "Tide House");
		Cli.run("floors", "--archive", archive, "--site", "th").ended(ExitCode.USAGE);
		assertEquals(before, savePoints());
	}
}
