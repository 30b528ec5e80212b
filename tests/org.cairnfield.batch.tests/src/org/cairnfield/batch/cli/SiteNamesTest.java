package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.model.Site;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two sites of one name, and one without: they are told apart by id, and no place of one is taken for that of the other. */
class SiteNamesTest {

	@TempDir
	Path folder;
	private Path archive;
	private Path survey;
	private List<String> ids;
	private String name;

	@BeforeEach
	void takeTwoSitesIn() throws IOException {
		RadioMap map = TestSurveys.map(60);
		survey = TestSurveys.wide(folder.resolve("survey.csv"), map, "S");
		archive = folder.resolve("archive");
		Cli.ok("intake", "-q", "--map", survey, "--archive", archive);
		change(sites -> {
			ids = sites.stream().map(Site::getId).toList();
			name = sites.get(0).getName();
		});
		assertEquals(2, ids.size());
	}

	private void change(Consumer<List<Site>> edit) throws IOException {
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT)) {
			edit.accept(open.archive().getSites());
			open.savePoint(Person.named("A. Steward"), null);
		}
	}

	private Cli locate(String site, int latitude) {
		return Cli.run("locate", "-q", "--archive", archive, "--site", site, "--latitude", latitude, "--longitude", 7);
	}

	@Test
	void locatesNoneOfTwoSitesOfOneNameButTheOneOfAnId() throws IOException {
		change(sites -> sites.get(1).setName(name));
		String before = Files.readString(archive.resolve("archive.xmi"));
		locate(name, 10).ended(ExitCode.ARCHIVE).says(ids.get(0), ids.get(1), "2 sites have the name");
		assertEquals(before, Files.readString(archive.resolve("archive.xmi")));
		locate(ids.get(0), 10).ended(ExitCode.OK);
		locate(ids.get(1), 40).ended(ExitCode.OK);
		Path out = folder.resolve("out");
		Cli.ok("export", "-q", "--archive", archive, "--format", "geojson,wide", "--out", out);
		Set<String> placed = new HashSet<>();
		for (JsonElement feature : JsonParser.parseString(Files.readString(out.resolve("archive.geojson")))
				.getAsJsonObject().getAsJsonArray("features")) {
			if (feature.getAsJsonObject().getAsJsonObject("geometry").get("type").getAsString().equals("Point")) {
				long latitude = Math.round(feature.getAsJsonObject().getAsJsonObject("geometry")
						.getAsJsonArray("coordinates").get(1).getAsDouble());
				placed.add(feature.getAsJsonObject().getAsJsonObject("properties").get("site").getAsString() + " "
						+ latitude);
			}
		}
		assertEquals(Set.of(name + " (" + ids.get(0) + ") 10", name + " (" + ids.get(1) + ") 40"), placed);
	}

	@Test
	void opensWithANoteAndIsMendedByAnotherName() throws IOException {
		change(sites -> sites.get(1).setName(name));
		Cli.run("check", "--archive", archive)
				.says("note: sites " + ids.get(0) + ", " + ids.get(1) + " have the same name");
		Path more = TestSurveys.wide(folder.resolve("more.csv"), TestSurveys.map(40), "M");
		Cli.run("intake", "-q", "--map", more, "--archive", archive).ended(ExitCode.NOT_ENOUGH).says("several sites",
				name + " (" + ids.get(0) + ")");
		Cli.run("rename", "-q", "--archive", archive, "--site", name, "--name", "Elsewhere").ended(ExitCode.ARCHIVE)
				.says(ids.get(1));
		Cli.run("rename", "-q", "--archive", archive, "--site", ids.get(1), "--name", name).ended(ExitCode.ARCHIVE)
				.says(ids.get(0));
		Cli.ok("rename", "-q", "--archive", archive, "--site", ids.get(1), "--name", "Elsewhere");
		assertFalse(Cli.run("check", "--archive", archive).err().contains("have the same name"));
		locate(name, 10).ended(ExitCode.OK);
	}

	/** Files of one name from two folders: their surveys have different names, and may be given others. */
	@Test
	void takesFilesOfOneNameAsSurveysOfDifferentNames() throws IOException {
		Path other = Files.createDirectory(folder.resolve("autumn")).resolve("survey.csv");
		TestSurveys.wide(other, TestSurveys.map(40), "M");
		Cli.ok("intake", "-q", "--map", other, "--archive", archive);
		Set<String> names = new HashSet<>();
		change(sites -> sites.forEach(
				site -> site.getSurveys().forEach(each -> assertTrue(names.add(site.getId() + "/" + each.getName())))));
		assertTrue(names.containsAll(Set.of(ids.get(0) + "/survey", ids.get(0) + "/survey (2)")), names::toString);
		assertFalse(Cli.run("check", "--archive", archive).err().contains("have the same name"));
		String id = surveysNamed("survey").get(0);
		Cli.run("rename", "-q", "--archive", archive, "--survey", id, "--name", "survey (2)").ended(ExitCode.ARCHIVE)
				.says("already");
		Cli.run("rename", "-q", "--archive", archive, "--survey", "survey", "--name", "Spring").ended(ExitCode.ARCHIVE)
				.says("2 surveys have");
		Cli.ok("rename", "-q", "--archive", archive, "--survey", id, "--name", "Spring");
		assertEquals(List.of(id), surveysNamed("Spring"));
	}

	private List<String> surveysNamed(String wanted) throws IOException {
		List<String> found = new ArrayList<>();
		change(sites -> sites.forEach(site -> site.getSurveys().stream().filter(each -> wanted.equals(each.getName()))
				.forEach(each -> found.add(each.getId()))));
		return found;
	}

	@Test
	void renamesOneThingAtATime() {
		Cli.run("rename", "-q", "--archive", archive, "--name", "Elsewhere").ended(ExitCode.USAGE);
		Cli.run("rename", "-q", "--archive", archive, "--site", ids.get(0), "--device", "A", "--name", "B")
				.ended(ExitCode.USAGE);
		Cli.run("rename", "-q", "--archive", archive, "--device", "nobody's", "--name", "B").ended(ExitCode.ARCHIVE)
				.says("no device 'nobody's'");
	}

	@Test
	void exportsASiteWithoutANameByItsId() throws IOException {
		for (String none : new String[] { null, " " }) {
			change(sites -> sites.get(1).setName(none));
			Cli.run("check", "--archive", archive).says("note: site " + ids.get(1) + " has no name");
			locate(ids.get(1), 10).ended(ExitCode.OK);
			Path out = folder.resolve("out");
			Cli.ok("export", "-q", "--archive", archive, "--format", "geojson,wide", "--out", out);
			try (Stream<String> lines = Files.lines(out.resolve("archive-wide.csv"))) {
				assertTrue(lines.anyMatch(line -> line.contains("," + ids.get(1) + ",")));
			}
			Cli.run("gate", "-q", "--archive", archive).ended(ExitCode.GATES);
			Cli.ok("report", "-q", "--archive", archive, "--out", folder.resolve("report.html"));
		}
	}
}
