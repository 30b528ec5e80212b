package org.cairnfield.exchange.floors;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.cairnfield.exchange.IntakeException;
import org.cairnfield.testkit.MuseumPlans;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever a file holds, it is refused in words that name the file, the feature and what helps, or read. */
class HostilePlansTest {

	private static final int MEBI = 1 << 20;

	@TempDir
	Path folder;

	/** Reads it, which must fail by these words, in order. */
	private void refused(Path file, String... words) {
		IntakeException e = assertThrows(IntakeException.class, () -> MappedFloors.read(file));
		String said = e.getMessage();
		assertTrue(said.startsWith(file.toString()), said);
		int at = 0;
		for (String word : words) {
			at = said.indexOf(word, at);
			assertTrue(at >= 0, () -> "\"" + word + "\" is missing in " + said);
		}
		assertTrue(!e.remedy().isBlank() && !said.contains("Exception"), said);
	}

	private Path plain(String text) throws IOException {
		return Files.writeString(folder.resolve("plans.geojson"), text);
	}

	private Path level(String geometry) throws IOException {
		return MuseumPlans.zip(folder.resolve("plans.zip"), PlanTexts.archive(geometry));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', value = { "``|not GeoJSON", "{|ends too early",
			"{\"a\": tru}|something is wrong at line 1, column 7", "[1,2]|does not begin with an object",
			"{\"type\":\"FeatureCollection\",\"features\":[]} x|something follows",
			"{\"type\":\"Feature\"}|not a FeatureCollection",
			"{\"type\":\"FeatureCollection\"}|not a FeatureCollection",
			"{\"type\":\"FeatureCollection\",\"features\":[7]}|number 1 of the features is none",
			"{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"x\":NaN}]}|not valid JSON",
			"{\"type\":\"FeatureCollection\",\"features\":[]}|none of its 0 features" })
	void refusesWhatIsNoGeoJson(String text, String why) throws IOException {
		refused(plain(text), why);
	}

	@Test
	void refusesJsonThatIsNestedWithoutEnd() throws IOException {
		refused(plain("[".repeat(1_000_000)), "not valid JSON", "too deeply");
		refused(plain(
				"{\"type\":\"FeatureCollection\",\"features\":" + "[".repeat(100_000) + "]".repeat(100_000) + "}"),
				"not valid JSON");
	}

	@Test
	void refusesWhatIsNotInUtf8() throws IOException {
		refused(Files.write(folder.resolve("latin.geojson"),
				"{\"name\":\"Galerie à côté\"}".getBytes(StandardCharsets.ISO_8859_1)), "UTF-8");
	}

	/** RFC 7946 section 4: WGS 84 only. */
	@Test
	void refusesOtherCoordinateSystems() throws IOException {
		String projected = "{\"type\":\"Polygon\",\"coordinates\":[[[448251.9,5411943.8],[448301.9,5411943.8],[448301.9,5411993.8],[448251.9,5411943.8]]]}";
		refused(plain(PlanTexts.collection(PlanTexts.feature(projected, "\"level\":0"))), "feature number 1",
				"448251.9, 5411943.8", "WGS 84");
		refused(level(projected), "level.geojson: feature L0", "outside ±180°");
		String crs = "\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\"urn:ogc:def:crs:EPSG::32631\"}},";
		String square = PlanTexts.collection(PlanTexts.feature(PlanTexts.SQUARE, "\"level\":0"));
		refused(plain(square.replaceFirst("\\{", "{" + crs)), "urn:ogc:def:crs:EPSG::32631", "WGS 84");
		refused(plain(square.replaceFirst("\\{", "{\"crs\":null,")), "coordinate system is not known");
		assertTrue(readable(plain(square.replaceFirst("\\{", "{" + crs.replace("EPSG::32631", "OGC:1.3:CRS84")))));
	}

	private static boolean readable(Path file) {
		try {
			return !MappedFloors.read(file).levels().isEmpty();
		} catch (IntakeException e) {
			throw new AssertionError(e);
		}
	}

	@Test
	void refusesRingsThatBoundNothing() throws IOException {
		refused(level(PlanTexts.SQUARE.replace(",[11,48]]]", "]]")), "level.geojson: feature L0: a ring is open",
				"11.0, 48.001", "Repeat the first");
		refused(level(
				"{\"type\":\"Polygon\",\"coordinates\":[[[11,48],[11.001,48.001],[11.001,48],[11,48.001],[11,48]]]}"),
				"feature L0", "crosses itself",
				"in order, once around");
		refused(level("{\"type\":\"Polygon\",\"coordinates\":[[[11,48],[11.001,48],[11,48]]]}"), "feature L0",
				"2 corners");
		refused(level("{\"type\":\"Polygon\",\"coordinates\":[[[11,48],[11.001,48],[11.002,48],[11,48]]]}"),
				"feature L0", "encloses nothing");
		refused(level("{\"type\":\"Polygon\",\"coordinates\":[]}"), "feature L0", "no ring");
		refused(level("{\"type\":\"Polygon\",\"coordinates\":[[[11,48],[\"a\",48],[11.002,48],[11,48]]]}"),
				"feature L0", "not two numbers: [\"a\",48]");
		refused(level("{\"type\":\"Polygon\",\"coordinates\":[[[11],[11,48],[11.002,48],[11]]]}"), "feature L0",
				"not two numbers");
		refused(level("{\"type\":\"Polygon\",\"coordinates\":5}"), "feature L0", "not lists of positions");
		refused(level("{\"type\":\"Point\",\"coordinates\":[11,48]}"), "feature L0", "a Point, not a Polygon");
		refused(level("{\"type\":\"MultiPolygon\",\"coordinates\":[]}"), "feature L0", "no polygon");
		refused(level("null"), "feature L0", "no geometry");
	}

	/** OGC 20-094, Reference, Features, and Level: id, feature_type and ordinal are required. */
	@Test
	void refusesLevelsWithoutWhatTheStandardRequires() throws IOException {
		Map<String, String> texts = PlanTexts.archive(PlanTexts.SQUARE);
		String good = texts.get("level.geojson");
		for (String ordinal : new String[] { "\"ordinal\":0.5,", "", "\"ordinal\":99999,", "\"ordinal\":1e999999999,",
				"\"ordinal\":[0],", "\"ordinal\":null," }) {
			texts.put("level.geojson", good.replace("\"ordinal\":0,", ordinal));
			refused(MuseumPlans.zip(folder.resolve("plans.zip"), texts), "level.geojson: feature L0", "\"ordinal\"");
		}
		texts.put("level.geojson", good.replace("\"id\":\"L0\",", ""));
		refused(MuseumPlans.zip(folder.resolve("plans.zip"), texts), "level.geojson: feature number 1", "no \"id\"");
		texts.put("level.geojson", good.replace("\"level\"", "\"floor\""));
		refused(MuseumPlans.zip(folder.resolve("plans.zip"), texts), "level.geojson: feature L0",
				"\"feature_type\" is floor");
		texts.put("level.geojson", PlanTexts.collection());
		refused(MuseumPlans.zip(folder.resolve("plans.zip"), texts), "level.geojson: there are no levels");
		texts.put("level.geojson", good.replaceFirst("\\[(\\{.*\\})\\]\\}$", "[$1,$1]}"));
		refused(MuseumPlans.zip(folder.resolve("plans.zip"), texts), "feature L0", "two levels of this id");
		texts.remove("level.geojson");
		refused(MuseumPlans.zip(folder.resolve("plans.zip"), texts), "there is no level.geojson");
		refused(PlanTexts.folder(folder.resolve("imdf"), texts), "there is no level.geojson");
	}

	@Test
	void refusesArchivesThatReachOutOfThemselves() throws IOException {
		for (String name : new String[] { "../level.geojson", "/level.geojson", "a/../../level.geojson",
				"..\\level.geojson", "C:level.geojson" }) {
			refused(MuseumPlans.zip(folder.resolve("plans.zip"), Map.of(name, "{}")), "'" + name + "'",
					"points out of it");
		}
		refused(MuseumPlans.zip(folder.resolve("plans.zip"), Map.of("a/level.geojson", "{}", "b/level.geojson", "{}")),
				"two files called 'level.geojson'");
	}

	/** 33 MiB in a level of a few kilobytes; and five files that are too much in all. */
	@Test
	void refusesArchivesThatGrowWithoutEnd() throws IOException {
		Path bomb = folder.resolve("bomb.zip");
		try (OutputStream out = Files.newOutputStream(bomb); ZipOutputStream zip = new ZipOutputStream(out)) {
			zip.putNextEntry(new ZipEntry("level.geojson"));
			byte[] blanks = " ".repeat(MEBI).getBytes(StandardCharsets.US_ASCII);
			for (int i = 0; i < 33; i++) {
				zip.write(blanks);
			}
		}
		assertTrue(Files.size(bomb) < MEBI / 8, "it is small");
		refused(bomb, "level.geojson", "more text than a floor plan needs");
		Map<String, String> many = PlanTexts.archive(PlanTexts.SQUARE);
		String large = PlanTexts.collection() + " ".repeat(31 * MEBI);
		for (String type : new String[] { "unit", "fixture", "kiosk", "opening", "building" }) {
			many.put(type + ".geojson", large);
		}
		refused(MuseumPlans.zip(folder.resolve("many.zip"), many), "128 MiB in all");
	}

	@Test
	void refusesArchivesOfTooManyFiles() throws IOException {
		Path crowd = folder.resolve("crowd.zip");
		try (OutputStream out = Files.newOutputStream(crowd); ZipOutputStream zip = new ZipOutputStream(out)) {
			for (int i = 0; i <= 1000; i++) {
				zip.putNextEntry(new ZipEntry(i + ".txt"));
			}
		}
		refused(crowd, "1001 files");
	}

	@Test
	void refusesDamagedArchivesAndFilesThatAreNotThere() throws IOException {
		byte[] whole = Files.readAllBytes(level(PlanTexts.SQUARE));
		refused(Files.write(folder.resolve("cut.zip"), Arrays.copyOf(whole, whole.length / 2)), "damaged");
		byte[] bent = whole.clone();
		for (int i = 60; i < 120; i++) {
			bent[i] ^= 0x55;
		}
		refused(Files.write(folder.resolve("bent.zip"), bent));
		refused(folder.resolve("nowhere.zip"), "no such file");
	}
}
