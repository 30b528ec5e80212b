package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Path;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SetCommandTest {

	@TempDir
	Path folder;
	private Path archive;
	private String site;

	@BeforeEach
	void makeAnArchive() throws IOException {
		archive = folder.resolve("archive");
		Cli.ok("intake", "-q", "--map", TestSurveys.wide(folder.resolve("survey.csv"), TestSurveys.map(60), "S"),
				"--archive", archive);
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.READ)) {
			site = open.archive().getSites().get(0).getId();
		}
	}

	private int savePoints() {
		return Cli.ok("history", "--json", "--archive", archive).json().getAsJsonArray("savePoints").size();
	}

	private JsonObject values(String object) {
		return Cli.ok("set", "-q", "--json", "--archive", archive, object).json().getAsJsonObject("values");
	}

	@Test
	void changesSeveralValuesAsOneSavePoint() {
		int before = savePoints();
		Cli.ok("set", "-q", "--archive", archive, "site:" + site, "name=Tide House", "georeference=52.5 -3.25 10");
		assertEquals(before + 1, savePoints());
		assertEquals("52.5 -3.25 10.0", values("site:Tide House").get("georeference").getAsString());
		Cli.ok("set", "-q", "--archive", archive, "floor:Tide House/0", "height-metres=3.2",
				"outline=0,0 400,0 400,300 0,300");
		assertEquals("3.2", values("floor:" + site + "/0").get("height-metres").getAsString());
		Cli.ok("set", "-q", "--archive", archive, "floor:Tide House/0", "height-metres=");
		assertTrue(values("floor:" + site + "/0").get("height-metres").isJsonNull());
		Cli.ok("set", "-q", "--archive", archive, "archive", "name=Quay");
		assertEquals("Quay", values("archive").get("name").getAsString());
		Cli.ok("set", "-q", "--archive", archive, "archive", "site-order=" + site);
		assertEquals(site, values("archive").get("site-order").getAsString());
	}

	@Test
	void knowsWhereAnAccessPointIsMounted() throws IOException {
		String accessPoint;
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.READ)) {
			accessPoint = "access-point:" + open.archive().getAccessPoints().get(0).getAddress();
		}
		Cli.ok("set", "-q", "--archive", archive, accessPoint, "place=" + site + "/0 12.5,3");
		assertEquals(site + "/0 12.5,3.0", values(accessPoint).get("place").getAsString());
		Cli.run("set", "--archive", archive, accessPoint, "place=" + site + "/9 12.5,3").ended(ExitCode.USAGE)
				.says("has a floor 9");
		Cli.ok("set", "-q", "--archive", archive, accessPoint, "place=");
		assertTrue(values(accessPoint).get("place").isJsonNull());
	}

	@Test
	void makesASurveyOneForTesting() throws IOException {
		String survey;
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.READ)) {
			survey = open.archive().getSites().get(0).getSurveys().get(0).getId();
		}
		Cli.ok("set", "-q", "--archive", archive, "survey:" + survey, "kind=test", "date=2031-10-05");
		assertEquals("test", values("survey:" + survey).get("kind").getAsString());
	}

	@Test
	void refusesAndChangesNothing() {
		int before = savePoints();
		Cli.run("set", "--archive", archive, "site:" + site, "name=Tide House", "georeference=north")
				.ended(ExitCode.USAGE).says("nothing was changed");
		Cli.run("set", "--archive", archive, "floor:" + site + "/0", "outline=0,0 9,7 9,0 0,4").ended(ExitCode.USAGE)
				.says("crosses or touches itself")
				.says("nothing was changed");
		Cli.run("set", "--archive", archive, "site:" + site, "colour=red").ended(ExitCode.USAGE).says("map-from");
		Cli.run("set", "--archive", archive, "site:" + site, "name").ended(ExitCode.USAGE).says("NAME=TEXT");
		Cli.run("set", "--archive", archive, "site:nowhere").ended(ExitCode.ARCHIVE).says("its sites are");
		Cli.run("set", "--archive", archive, "roof").ended(ExitCode.ARCHIVE).says("floor:SITE/LEVEL");
		Cli.run("set", "--archive", archive, "floor:" + site).ended(ExitCode.ARCHIVE).says("floor:SITE/LEVEL");
		Cli.run("set", "--archive", archive, "access-point:nobody").ended(ExitCode.ARCHIVE).says("by its address");
		assertEquals(before, savePoints());
	}
}
