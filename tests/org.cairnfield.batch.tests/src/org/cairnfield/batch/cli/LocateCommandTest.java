package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cairnfield.core.map.RadioMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A map whose frame has no place on Earth gets one, and can then leave in WGS 84. */
class LocateCommandTest {

	@TempDir
	Path folder;

	@Test
	void placesASiteSoThatItCanLeaveAsGeoJson() throws IOException {
		RadioMap map = TestSurveys.map(60);
		String site = map.sites().get(0);
		Path survey = TestSurveys.wide(folder.resolve("survey.csv"), map, "S");
		Path archive = folder.resolve("archive");
		Cli.ok("intake", "-q", "--map", survey, "--archive", archive);
		Path out = folder.resolve("out");
		Cli.run("export", "-q", "--archive", archive, "--format", "geojson", "--out", out).ended(ExitCode.INPUT)
				.says("locate");
		Cli.run("locate", "-q", "--archive", archive, "--site", site, "--latitude", "91", "--longitude", "0")
				.ended(ExitCode.USAGE)
				.says("latitude");
		Cli.run("locate", "-q", "--archive", archive, "--site", "none", "--latitude", "1", "--longitude", "0")
				.ended(ExitCode.ARCHIVE)
				.says(site);
		Cli.ok("locate", "-q", "--archive", archive, "--site", site, "--latitude", "12.5", "--longitude", "-30.25",
				"--bearing", "90");
		Cli.ok("export", "-q", "--archive", archive, "--format", "geojson", "--out", out);
		try (var files = Files.list(out)) {
			Path written = files.filter(file -> file.toString().endsWith(".geojson")).findFirst().orElseThrow();
			assertTrue(Files.readString(written).contains("-30.2"), "longitudes are those of the site");
		}
		assertTrue(Cli.ok("history", "--archive", archive).out().contains("site"), "the history tells");
	}

	@Test
	void exportsAMapThatIsNotPlacedInAllOtherFormats() throws IOException {
		Path archive = folder.resolve("archive");
		Cli.ok("intake", "-q", "--map", TestSurveys.wide(folder.resolve("survey.csv"), TestSurveys.map(60), "S"),
				"--archive", archive);
		Path out = folder.resolve("out");
		JsonObject json = Cli.ok("export", "-q", "--json", "--archive", archive, "--out", out).json();
		assertEquals(5, json.getAsJsonArray("files").size(), json::toString); // wide, long, pack, cautions, checksums
		assertEquals(2, json.getAsJsonArray("notes").size(), json::toString);
		assertTrue(Files.readString(out.resolve("CAUTION.txt")).contains("No geojson was written"));
		Cli.ok("verify", out);
		Cli.ok("export", "--archive", archive, "--out", out).says("note: No geopackage was written");
	}
}
