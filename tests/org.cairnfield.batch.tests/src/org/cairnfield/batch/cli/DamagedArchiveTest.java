package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every command does with an archive that has lost a file. */
class DamagedArchiveTest {

	@TempDir
	Path folder;
	private Path archive;
	private String lost;

	@BeforeEach
	void loseAFile() throws IOException {
		archive = SmallArchive.make(folder);
		Path samples = SmallArchive.samples(archive);
		lost = archive.relativize(samples).toString();
		Files.delete(samples);
	}

	private List<List<Object>> reading() {
		return List.of(List.of("check"), List.of("gate"), List.of("measure"),
				List.of("export", "--format", "wide,long,pack", "--out", folder.resolve("out")),
				List.of("report", "--out", folder.resolve("report.html")),
				List.of("verdicts", "--export", folder.resolve("verdicts.csv")),
				List.of("releases"), List.of("compare", "HEAD"),
				List.of("remedy", "--rule", "exact-duplicate", "--dry-run"));
	}

	private Cli on(List<Object> command, Object... more) {
		List<Object> args = new ArrayList<>(command);
		args.addAll(List.of("-q", "--archive", archive));
		args.addAll(List.of(more));
		return Cli.run(args.toArray());
	}

	private void listsTheLostFile(JsonObject json) {
		assertTrue(json.getAsJsonArray("damages").asList().stream().map(d -> d.getAsJsonObject())
				.anyMatch(d -> d.get("file").getAsString().equals(lost) && d.get("line").getAsInt() == 0
						&& d.get("reason").getAsString().equals("is missing")
						&& !d.get("remedy").getAsString().isEmpty()),
				json::toString);
	}

	@Test
	void refusesToReadItAndListsTheDamage() {
		for (List<Object> command : reading()) {
			Cli refused = on(command, "--json").ended(ExitCode.DAMAGED).says(lost, "is missing", "--despite-damage");
			listsTheLostFile(refused.json());
			assertEquals(1, refused.json().size(), refused::toString);
			assertTrue(on(command).ended(ExitCode.DAMAGED).out().isEmpty());
		}
		assertFalse(Files.exists(folder.resolve("out")) || Files.exists(folder.resolve("report.html"))
				|| Files.exists(folder.resolve("verdicts.csv")), "something was written");
	}

	@Test
	void goesOnWithWhatIsLeftWhereAsked() {
		for (List<Object> command : reading()) {
			Cli done = on(command, "--json", "--despite-damage").ended(ExitCode.DAMAGED);
			listsTheLostFile(done.json());
			assertTrue(done.json().size() > 1, done::toString);
			assertTrue(on(command, "--despite-damage").ended(ExitCode.DAMAGED).out().startsWith("DAMAGED: "));
		}
	}

	@Test
	void namesTheDamageInWhatItExportsAndReports() throws IOException {
		Path out = folder.resolve("out");
		on(List.of("export", "--format", "wide,geopackage", "--out", out), "--despite-damage").ended(ExitCode.DAMAGED);
		String caution = Files.readString(out.resolve("CAUTION.txt"));
		assertTrue(caution.contains("DAMAGED") && caution.contains(lost + ": is missing"), caution);
		assertTrue(Files.exists(out.resolve("archive-damaged-wide.csv")), () -> SmallArchive.files(out).toString());
		Path page = folder.resolve("report.html");
		on(List.of("report", "--out", page), "--despite-damage").ended(ExitCode.DAMAGED);
		String html = Files.readString(page);
		assertTrue(html.contains("The archive is damaged") && html.contains(lost), html);
	}

	@Test
	void listsTheHistoryWhichIsTheWayBack() {
		Cli history = on(List.of("history"), "--json").ended(ExitCode.DAMAGED);
		listsTheLostFile(history.json());
		assertEquals(4, history.json().getAsJsonArray("savePoints").size());
	}

	@Test
	void verifiesTheReleasesAllTheSame() {
		for (List<Object> more : List.<List<Object>>of(List.of(), List.of("--despite-damage"))) {
			Cli verified = on(List.of("verify"), "--json", more).ended(ExitCode.DAMAGED).says(lost);
			listsTheLostFile(verified.json());
			assertTrue(verified.json().has("verified"), verified::toString);
		}
	}

	@Test
	void isNeverChangedWhateverIsAsked() {
		List<Path> before = SmallArchive.files(archive);
		Path more = TestSurveys.wide(folder.resolve("more.csv"), TestSurveys.visit(30), "M");
		for (List<Object> command : List.<List<Object>>of(
				List.of("remedy", "--rule", "exact-duplicate", "--despite-damage"),
				List.of("waive", "--rule", "exact-duplicate", "--reason", "x"),
				List.of("split", "--name", "other", "--epsilon", 10, "--min-pts", 2),
				List.of("propose"), List.of("release", "--despite-damage"), List.of("gate", "--init"),
				List.of("restore", "HEAD", "--only-its-change"), List.of("intake", "--map", more))) {
			listsTheLostFile(on(command, "--json").ended(ExitCode.DAMAGED).says("restore").json());
		}
		assertEquals(before, SmallArchive.files(archive));
	}

	@Test
	void isSoundAgainOnceItWasRestored() {
		JsonObject restored = on(List.of("restore", "HEAD"), "--json").ended(ExitCode.OK).says(lost).json();
		assertEquals(0, restored.getAsJsonArray("damages").size());
		assertEquals(0, on(List.of("gate"), "--json").ended(ExitCode.GATES).json().getAsJsonArray("damages").size());
	}
}
