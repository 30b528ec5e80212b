package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.model.AccessPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IntakeCommandTest {

	@TempDir
	Path folder;

	private Path text(String name, String text) {
		return TestSurveys.text(folder.resolve(name), text);
	}

	/** What a survey is read as, in Cairnfield's own table. */
	private Csv wide(Object... args) {
		Path wide = folder.resolve("wide.csv");
		Cli.ok("intake", "--wide", wide, List.of(args));
		return Csv.of(wide);
	}

	@Test
	void understandsTheUsualWideTableWithoutOptions() {
		RadioMap map = TestSurveys.map(50);
		Path survey = TestSurveys.plain(folder.resolve("survey.csv"), map);
		JsonObject json = Cli.ok("intake", "--map", survey, "--json").json();
		assertEquals(50, json.get("samples").getAsInt());
		assertEquals(map.accessPointCount(), json.get("accessPoints").getAsInt());
		assertEquals(map.readingCount(), json.get("readings").getAsLong());
		assertEquals("empty", json.get("notHeard").getAsString());
		assertEquals(0, json.get("quarantined").getAsInt());
		assertEquals(map.sites().size(), json.getAsJsonArray("sites").size());
		Csv wide = wide("--map", survey);
		Csv raw = Csv.of(survey);
		for (int row = 0; row < 50; row++) {
			assertEquals(raw.number(row, "x"), wide.number(row, "x"));
			assertEquals(raw.number(row, "y"), wide.number(row, "y"));
			assertEquals(raw.text(row, "floor"), wide.text(row, "floor"));
			for (String name : map.accessPoints()) {
				assertEquals(raw.text(row, name), wide.text(row, name));
			}
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "100", "-110", "NaN" })
	void guessesTheSignForNotHeard(String sign) throws IOException {
		RadioMap map = TestSurveys.map(50);
		Path survey = TestSurveys.plain(folder.resolve("survey.csv"), map, sign);
		// under the header x,y,floor,building a level of -110 is a level: there a blank means not heard
		Files.writeString(survey, Files.readString(survey).replace("x,y,floor,building", "x,y,storey,building"));
		JsonObject json = Cli.ok("split", "--json", "--map", survey).json();
		assertEquals(sign.toLowerCase(java.util.Locale.ROOT),
				json.get("notHeard").getAsString().toLowerCase(java.util.Locale.ROOT));
		JsonObject empty = Cli.ok("split", "--json", "--map", TestSurveys.plain(folder.resolve("empty.csv"), map))
				.json();
		assertEquals(empty.get("split"), json.get("split"));
	}

	@Test
	void readsGzipWhateverItsName() throws IOException {
		Path plain = TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(30));
		Path gzip = folder.resolve("packed.csv");
		try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(gzip))) {
			Files.copy(plain, out);
		}
		assertEquals(wide("--map", plain), wide("--map", gzip));
	}

	@Test
	void saysWhatItUnderstoodAndWhy() {
		Path survey = TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(30), "100");
		Cli done = Cli.ok("intake", "--preview", "--map", survey);
		for (String word : List.of("survey.csv", "separator: comma", "header: yes", "not heard: 100")) {
			assertTrue(done.out().contains(word), word + done);
		}
		JsonObject guesses = Cli.ok("intake", "--preview", "--json", "--map", survey).json().getAsJsonArray("files")
				.get(0)
				.getAsJsonObject().getAsJsonObject("guesses");
		assertEquals("100", guesses.getAsJsonObject("not heard").get("value").getAsString());
		assertTrue(!guesses.getAsJsonObject("not heard").get("evidence").getAsString().isBlank());
	}

	@Test
	void takesALongTable() {
		Path survey = text("long.csv", "id,x,y,floor,building,mac,rssi\nA,1,2,0,Quay,00:00:5E:00:53:01,-50\n"
				+ "A,1,2,0,Quay,00:00:5E:00:53:02,-60\nB,3,2,0,Quay,00:00:5E:00:53:01,-70\n");
		Csv wide = wide("--map", survey);
		assertEquals(List.of("A", "B"), wide.texts("id"));
		assertEquals(List.of("-60", ""), wide.texts("00:00:5E:00:53:02"));
		// a line a sample, not a row
		Path labels = folder.resolve("labels.csv");
		Cli.ok("split", "--map", survey, "--epsilon", 1, "--min-pts", 1, "--labels", labels);
		assertEquals(List.of("A", "B"), Csv.of(labels).texts("sample"));
	}

	@Test
	void takesPairedTables() {
		Path signals = text("walk-rss.csv", "-50,-60,100\n-51,-61,-90\n-70,100,-40\n");
		Path places = text("walk-crd.csv", "1,2,0\n2,2,0\n3,2,1\n");
		Csv wide = wide("--map", signals, places);
		assertEquals(List.of("1", "2", "3"), wide.texts("x"));
		assertEquals(List.of("0", "0", "1"), wide.texts("floor"));
		assertEquals(3, wide.columnsAfter("y").length);
	}

	@Test
	void layoutIsAsTold() {
		Path survey = text("survey.csv",
				"id,x,y,floor,building,mac,rssi\nA,1,2,0,Quay,00:00:5E:00:53:01,-50\nB,3,2,0,Quay,00:00:5E:00:53:01,-70\n");
		assertEquals("LONG", layout("--map", survey));
		assertEquals("WIDE", layout("--map", survey, "--layout", "wide"));
	}

	private static String layout(Object... args) {
		return Cli.ok("intake", "--json", List.of(args)).json().getAsJsonArray("files").get(0).getAsJsonObject()
				.get("layout")
				.getAsString();
	}

	@Test
	void notHeardIsAsTold() {
		Path survey = text("survey.csv",
				"x,y,floor,building,A,B\n1,2,0,Quay,-50,-60\n2,2,0,Quay,-95,-61\n3,2,0,Quay,-70,-95\n");
		assertEquals(List.of("-50", "-95", "-70"), wide("--map", survey).texts("A"));
		Csv told = wide("--map", survey, "--not-heard", "-95");
		assertEquals(List.of("-50", "", "-70"), told.texts("A"));
		assertEquals(List.of("-60", "-61", ""), told.texts("B"));
	}

	@Test
	void separatorIsAsTold() {
		Path survey = text("survey.csv", "x|y|floor|building|A|B\n1|2|0|Quay|-50|-60\n2|2|0|Quay|-51|-61\n");
		assertEquals(List.of("-50", "-51"), wide("--map", survey, "--separator", "|").texts("A"));
		Path tabs = text("tabs.csv", "x;y\ty\tfloor\tA\tB\n1\t2\t0\t-50\t-60\n2\t2\t0\t-51\t-61\n");
		assertEquals(List.of("1", "2"), wide("--map", tabs, "--separator", "tab", "--column", "x;y=x").texts("x"));
	}

	@Test
	void characterSetIsAsTold() {
		Path survey = TestSurveys.bytes(folder.resolve("survey.csv"),
				"x,y,floor,building,A,B\n1,2,0,Maison Énergie,-50,-60\n2,2,0,Maison Énergie,-51,-61\n"
						.getBytes(StandardCharsets.UTF_16LE));
		assertEquals("Maison Énergie", wide("--map", survey, "--charset", "UTF-16LE").text(0, "building"));
		Path cyrillic = TestSurveys.bytes(folder.resolve("cyrillic.csv"),
				"x,y,floor,building,A,B\n1,2,0,Мол,-50,-60\n2,2,0,Мол,-51,-61\n"
						.getBytes(java.nio.charset.Charset.forName("windows-1251")));
		assertEquals("Мол", wide("--map", cyrillic, "--charset", "windows-1251").text(0, "building"));
	}

	@Test
	void decimalMarkIsAsTold() {
		Path survey = text("survey.csv", "x;y;floor;building;A;B\n1,500;2;0;Quay;-50;-60\n2,500;2;0;Quay;-51;-61\n");
		assertEquals(List.of("1.5", "2.5"), wide("--map", survey, "--decimal", ",").texts("x"));
		Cli.run("intake", "--map", survey, "--decimal", ".", "--column", "x=x").ended(ExitCode.NOT_ENOUGH)
				.says("2 rows quarantined");
	}

	@Test
	void columnsAreAsTold() {
		Path survey = text("survey.csv",
				"east,north,storey,house,A,B,junk\n1,2,3,Quay,-50,-60,-70\n2,2,3,Quay,-51,-61,-71\n");
		Csv wide = wide("--map", survey, "--column", "east=x", "--column", "#2=y", "--column", "storey=floor",
				"--column",
				"house=site", "--column", "junk=ignored");
		assertEquals(List.of("1", "2"), wide.texts("x"));
		assertEquals(List.of("2", "2"), wide.texts("y"));
		assertEquals(List.of("3", "3"), wide.texts("floor"));
		assertEquals(List.of("Quay", "Quay"), wide.texts("building"));
		assertEquals(2, wide.columnsAfter("y").length);
	}

	@Test
	void placeAndDeviceAreAsTold() {
		Path survey = text("survey.csv", "x,y,A,B\n1,2,-50,-60\n2,2,-51,-61\n");
		Csv wide = wide("--map", survey, "--site", "Lantern Store", "--floor", "-2", "--device", "Wrist guide A");
		assertEquals(List.of("Lantern Store", "Lantern Store"), wide.texts("building"));
		assertEquals(List.of("-2", "-2"), wide.texts("floor"));
		assertEquals(List.of("Wrist guide A", "Wrist guide A"), wide.texts("device"));
	}

	@Test
	void coordinatesAreTurnedAndScaledAsTold() {
		Path survey = text("survey.csv", "x,y,A,B\n10,20,-50,-60\n30,20,-51,-61\n");
		Csv wide = wide("--map", survey, "--swap-xy", "--metres-per-unit", "0.5");
		assertEquals(List.of("10", "10"), wide.texts("x"));
		assertEquals(List.of("5", "15"), wide.texts("y"));
	}

	@Test
	void accessPointsOfOneNameAreToldApartBySite() {
		Path survey = text("survey.csv", "x,y,floor,building,A,B\n1,2,0,Quay,-50,-60\n2,2,0,Yard,-51,-61\n");
		assertEquals(2, wide("--map", survey).columnsAfter("y").length);
		Csv apart = wide("--map", survey, "--access-points-per-site");
		assertEquals(4, apart.columnsAfter("y").length);
		assertEquals(List.of("-50", ""), apart.texts("Quay/A"));
	}

	private JsonObject takenInto(String archive, String file, String... more) {
		List<Object> arguments = new ArrayList<>(
				List.of("intake", "--json", "--map", text(file, "x,y,floor,building,A1,A2\n1,2,0,Quay,-50,-60\n"
						+ "2,2,0," + file.replace(".csv", "") + ",-51,-61\n"), "--archive", folder.resolve(archive)));
		arguments.addAll(List.of(more));
		return Cli.ok(arguments.toArray()).json().getAsJsonObject("archive");
	}

	private List<String> addresses(String archive) {
		JsonObject exported = Cli.ok("check", "--json", "-q", "--archive", folder.resolve(archive)).json();
		assertTrue(exported.get("samples").getAsInt() > 0);
		try (OpenArchive open = new ArchiveStore().open(folder.resolve(archive), Mode.READ)) {
			return open.archive().getAccessPoints().stream().map(AccessPoint::getAddress).sorted().toList();
		} catch (Exception e) {
			throw new AssertionError(e);
		}
	}

	@Test
	void asksWhetherNamesAtSeveralSitesAreOneSender() {
		JsonObject asked = takenInto("one", "Yard.csv").getAsJsonObject("sameNames");
		assertEquals("one-sender", asked.get("answer").getAsString());
		assertTrue(asked.get("question").getAsString().contains("A1, A2 at Quay, Yard"), asked::toString);
		assertEquals(List.of("A1", "A2"), addresses("one"));
		assertEquals("per-site", takenInto("apart", "Yard.csv", "--same-names", "per-site").getAsJsonObject("sameNames")
				.get("answer").getAsString());
		assertEquals(List.of("Quay/A1", "Quay/A2", "Yard/A1", "Yard/A2"), addresses("apart"));
	}

	@Test
	void keepsTheAnswerWithTheArchive() {
		takenInto("apart", "Yard.csv", "--same-names", "per-site");
		assertEquals("per-site",
				takenInto("apart", "Lantern.csv").getAsJsonObject("sameNames").get("answer").getAsString());
		assertEquals(List.of("Lantern/A1", "Lantern/A2", "Quay/A1", "Quay/A2", "Yard/A1", "Yard/A2"),
				addresses("apart"));
	}

	@Test
	void asksNothingOfAddresses() {
		Path survey = text("survey.csv", "x,y,floor,building,00:00:5E:00:53:01\n1,2,0,Quay,-50\n2,2,0,Yard,-51\n");
		assertTrue(Cli.ok("intake", "--json", "--map", survey, "--archive", folder.resolve("a")).json()
				.getAsJsonObject("archive")
				.get("sameNames").isJsonNull());
	}

	@Test
	void keepsAMappingThatReadsTheSameAgain() {
		Path survey = text("survey.csv", "east;north;A;B\n1,5;2;-50;-60\n2,5;2;-51;-99\n");
		Path mapping = folder.resolve("mapping.txt");
		Csv told = wide("--map", survey, "--column", "east=x", "--column", "north=y", "--not-heard", "-99", "--site",
				"Tide House",
				"--keep-mapping", mapping);
		assertEquals(told, wide("--map", survey, "--mapping", mapping));
		assertEquals("Tide House", told.text(0, "building"));
		// what is said on the command line goes before what a mapping says
		assertEquals("Yard", wide("--map", survey, "--mapping", mapping, "--site", "Yard").text(0, "building"));
	}

	@Test
	void namesTheLineOfAMappingThatIsWrong() {
		Path survey = text("survey.csv", "x,y,A,B\n1,2,-50,-60\n2,2,-51,-61\n");
		Path mapping = text("mapping.txt", "# mine\nlayout = round\n");
		Cli.run("intake", "--map", survey, "--mapping", mapping).ended(ExitCode.INPUT).says(mapping + ", line 2",
				"layout = round");
	}

	@Test
	void writesAWideTableThatReadsBackToTheSameBytes() throws IOException {
		Path first = folder.resolve("first.csv");
		Path second = folder.resolve("second.csv");
		Cli.ok("intake", "--map", TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(40)), "--wide",
				first);
		Cli.ok("intake", "--map", first, "--wide", second);
		assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second));
	}

	@Test
	void countsEachFileInTheTableAsInJson() {
		Path a = TestSurveys.plain(folder.resolve("a.csv"), TestSurveys.map(30));
		Path b = text("b.csv",
				"x,y,floor,building,A,B\n1,2,0,Quay,-50,-60\n2,2,0,Quay,-51,-61\neast,2,0,Quay,-51,-61\n");
		JsonObject file = Cli.run("intake", "--map", a, b, "--json").ended(ExitCode.QUARANTINED).json()
				.getAsJsonArray("files").get(1)
				.getAsJsonObject();
		assertEquals(3, file.get("rows").getAsInt());
		assertEquals(2, file.get("accepted").getAsInt());
		assertEquals(1, file.get("quarantined").getAsInt());
		String out = Cli.run("intake", "--map", a, b).out();
		assertTrue(out.lines().anyMatch(l -> l.matches("b\\.csv +WIDE +table +3 +2 +1 +empty")), out);
		assertTrue(out.contains("32 samples"), out);
	}
}
