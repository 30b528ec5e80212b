package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A team's work on the demo surveys, from an empty folder to releases, their comparison, and the way back. */
class ReleaseStoryTest {

	@TempDir
	Path folder;
	private Path archive;
	/** Samples of the split that are in no cluster. */
	private int noise;

	private static List<Path> files(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.sorted().toList();
		}
	}

	private void curate() throws IOException {
		Cli.ok("simulate", "--out", folder, "-q");
		// one reading of a sample that will be noise is weaker than any receiver can hear
		Path survey = folder.resolve("surveys").resolve("ls-spring.csv");
		Files.writeString(survey, Files.readString(survey).replace("-76,-20,-90", "-76,-20,-110"));
		archive = folder.resolve("marrow-quay");
		Cli.ok("intake", "-q", "--map", files(folder.resolve("surveys")), "--archive", archive);
		Cli.ok("intake", "-q", "--map", files(folder.resolve("test")), "--test-survey", "--archive", archive);
		Cli.ok("remedy", "-q", "--archive", archive, "--rule", "swapped-axes", "--rule", "wrong-floor", "--rule",
				"duplicate-survey", "--rule",
				"hotspot", "--person", "A. Steward");
		noise = Cli
				.ok("split", "--json", "-q", "--archive", archive, "--name", "all", "--epsilon", "163", "--min-pts",
						"3", "--search", "automatic")
				.json()
				.getAsJsonArray("splits").get(0).getAsJsonObject().get("noise").getAsInt();
		Cli.ok("propose", "-q", "--archive", archive);
	}

	private void approveEverything() throws IOException {
		Path table = folder.resolve("verdicts.csv");
		Cli.ok("verdicts", "-q", "--archive", archive, "--export", table);
		List<String> filled = new ArrayList<>();
		int decision = -1;
		for (String line : Files.readAllLines(table)) {
			String[] cells = line.split(",", -1);
			if (decision < 0) {
				decision = Arrays.asList(cells).indexOf("decision");
			} else {
				cells[decision] = "approve";
			}
			filled.add(String.join(",", cells));
		}
		Files.write(table, filled);
		Cli.ok("verdicts", "-q", "--archive", archive, "--import", table, "--person", "R. Reviewer");
	}

	private JsonObject release(Object... more) {
		List<Object> args = new ArrayList<>(
				List.of("release", "--json", "-q", "--archive", archive, "--person", "L. Lead"));
		args.addAll(List.of(more));
		return Cli.ok(args.toArray()).json();
	}

	@Test
	void fromAnEmptyFolderToReleasesAndBackWithTheSameDigest() throws IOException {
		curate();
		JsonObject asked = Cli.run("gate", "--json", "-q", "--archive", archive).ended(ExitCode.GATES).json();
		assertFalse(asked.get("met").getAsBoolean());
		Cli.run("release", "-q", "--archive", archive).ended(ExitCode.GATES).says("nothing was released");
		assertEquals(0, Cli.ok("releases", "--json", "--archive", archive).json().getAsJsonArray("releases").size());
		approveEverything();
		assertTrue(Cli.ok("gate", "--json", "-q", "--archive", archive).json().get("met").getAsBoolean());

		assertEquals("1.0.0", release("--prepare").get("prepared").getAsString());
		assertEquals("1.0.0", release("--discard", "--version", "1.0.0").get("discarded").getAsString());
		Cli.run("release", "-q", "--archive", archive, "--person", "L. Lead", "--sign", "--version", "1.0.0")
				.ended(ExitCode.ARCHIVE).says("1.0.0 was not prepared");
		JsonObject first = release("--notes", "First map of the quay");
		assertEquals("1.0.0", first.get("released").getAsString());
		Cli.ok("remedy", "-q", "--archive", archive, "--rule", "level-out-of-range", "--person", "A. Steward");
		Cli.run("release", "-q", "--archive", archive, "--override", "proposals-open=x").ended(ExitCode.USAGE)
				.says("--person");
		JsonObject second = release("--override", "proposals-open=one level of one sample was corrected");
		assertEquals("1.1.0", second.get("released").getAsString());
		assertTrue(second.getAsJsonArray("changes").toString().contains("1 reading removed"), second::toString);
		assertNotEquals(first.get("digest"), second.get("digest"));
		assertTrue(Cli.ok("compare", "-q", "--archive", archive, "1.0.0", "1.1.0").out().strip()
				.equals("1 reading removed"));
		String listed = Cli.ok("releases", "--archive", archive).out();
		assertTrue(listed.contains("overridden by L. Lead: one level of one sample was corrected"), listed);

		Cli.ok("restore", "-q", "--archive", archive, "1.0.0", "--person", "L. Lead");
		JsonObject again = release("--override", "error-to-last=the first map is wanted back as it was");
		assertEquals("1.2.0", again.get("released").getAsString());
		assertEquals(first.get("digest"), again.get("digest"));
		Cli.ok("verify", "--archive", archive);
		Cli.ok("verify", "--archive", archive, "--release", "1.0.0", "--folder");
		Cli.run("verify", "--archive", archive, "--release", "1.1.0", "--folder").ended(ExitCode.NOT_SOUND);
		exportsAndReports();
	}

	private void exportsAndReports() throws IOException {
		Path out = folder.resolve("out");
		Cli.ok("export", "-q", "--archive", archive, "--release", "1.0.0", "--format", "wide,long,pack", "--out", out);
		byte[] sums = Files.readAllBytes(out.resolve("SHA256SUMS"));
		Cli.ok("export", "-q", "--archive", archive, "--release", "1.2.0", "--format", "wide,pack", "--out",
				folder.resolve("other"));
		Cli.ok("export", "-q", "--archive", archive, "--release", "1.0.0", "--format", "wide,long,pack", "--out", out);
		assertEquals(new String(sums, StandardCharsets.UTF_8), Files.readString(out.resolve("SHA256SUMS")));
		Cli.ok("verify", out);
		Path pack = files(out).stream().filter(f -> f.toString().endsWith(".cfpk")).findFirst().orElseThrow();
		Cli.ok("verify", pack);
		byte[] bytes = Files.readAllBytes(pack);
		bytes[bytes.length / 2] ^= 4;
		Files.write(pack, bytes);
		Cli.run("verify", out).ended(ExitCode.NOT_SOUND);
		Cli.run("export", "-q", "--archive", archive, "--release", "1.0.0", "--format", "geojson", "--out",
				folder.resolve("geo")).ended(ExitCode.INPUT)
				.says("georeference");
		Path key = Files.write(folder.resolve("key"), "0123456789abcdef".getBytes(StandardCharsets.US_ASCII));
		Cli.ok("export", "-q", "--archive", archive, "--format", "wide", "--key-file", key, "--times", "none", "--out",
				folder.resolve("hidden"));
		for (Path file : files(folder.resolve("hidden"))) {
			String text = Files.readString(file);
			assertFalse(text.contains("00:00:5E") || text.contains("0123456789abcdef"), file::toString);
		}
		Path page = folder.resolve("report.html");
		Cli.ok("report", "-q", "--archive", archive, "--release", "1.1.0", "--out", page);
		String html = Files.readString(page);
		for (String said : List.of("release 1.1.0", "signed by L. Lead", "copy of th-spring", Integer.toString(noise),
				"overridden by L. Lead",
				"1 reading removed", "not for safety of life", "<svg")) {
			assertTrue(html.contains(said), said);
		}
		assertFalse(html.contains("<script") || html.contains("src=\"http") || html.contains("@import"));
	}

	@Test
	void saysWhatIsWrongWithTheCommandLine() {
		archive = folder.resolve("none");
		Cli.run("verify").ended(ExitCode.USAGE);
		Cli.run("verify", folder.resolve("gone.csv")).ended(ExitCode.NOT_SOUND);
		Cli.run("release", "--archive", archive, "--version", "1.0").ended(ExitCode.USAGE).says("1.0");
		Cli.run("release", "--archive", archive, "--sign").ended(ExitCode.USAGE).says("--version");
		Cli.run("release", "--archive", archive, "--discard").ended(ExitCode.USAGE).says("--version");
		Cli.run("release", "--archive", archive, "--discard", "--version", "1.0.0", "--prepare").ended(ExitCode.USAGE)
				.says("--prepare");
		Cli.run("release", "--archive", archive, "--person", "L. Lead", "--override", "no-such=x").ended(ExitCode.USAGE)
				.says("error-to-plain");
		Cli.run("export", "--archive", archive, "--out", folder, "--kind", "both").ended(ExitCode.USAGE).says("both");
		Cli.run("gate", "--archive", archive).ended(ExitCode.ARCHIVE);
		for (List<Object> command : List.<List<Object>>of(List.of("gate"), List.of("release"),
				List.of("report", "--out", folder.resolve("r.html")),
				List.of("export", "--out", folder))) {
			Cli.run(command, "--archive", archive, "--step-db", 0).ended(ExitCode.USAGE).says("steps of 1");
		}
		Cli.run("check", "--archive", archive, "--most", -1).ended(ExitCode.USAGE).says("--most");
		Cli.run("history", "--archive", archive, "--most", -1).ended(ExitCode.USAGE).says("--most");
	}
}
