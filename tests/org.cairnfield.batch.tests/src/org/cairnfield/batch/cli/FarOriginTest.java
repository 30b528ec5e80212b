package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo in projected coordinates: the same figures, from the gates to the pack. */
class FarOriginTest {

	private static final double EAST = 420_000;
	private static final double NORTH = 4_860_000;

	@TempDir
	Path folder;

	private static List<Path> files(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.sorted().toList();
		}
	}

	/** The tables with x and y moved; other fields are copied. */
	private static void shift(Path from, Path to) throws IOException {
		Files.createDirectories(to);
		for (Path file : files(from)) {
			List<String> lines = new ArrayList<>();
			int x = -1;
			int y = -1;
			for (String line : Files.readAllLines(file)) {
				String[] cells = line.split(",", -1);
				if (x < 0) {
					x = List.of(cells).indexOf("x");
					y = List.of(cells).indexOf("y");
				} else {
					cells[x] = String.format(java.util.Locale.ROOT, "%.3f", Double.parseDouble(cells[x]) + EAST);
					cells[y] = String.format(java.util.Locale.ROOT, "%.3f", Double.parseDouble(cells[y]) + NORTH);
				}
				lines.add(String.join(",", cells));
			}
			Files.write(to.resolve(file.getFileName()), lines);
		}
	}

	private Path archive(Path surveys, Path test, String name) throws IOException {
		Path archive = folder.resolve(name).resolve("marrow-quay");
		Cli.ok("intake", "-q", "--map", files(surveys), "--archive", archive);
		Cli.ok("intake", "-q", "--map", files(test), "--test-survey", "--archive", archive);
		Cli.ok("split", "-q", "--archive", archive, "--name", "all", "--epsilon", 163, "--min-pts", 3);
		Cli.ok("propose", "-q", "--archive", archive);
		for (String site : List.of("Tide House", "Lantern Store", "Sailmakers' Hall")) {
			Cli.ok("locate", "-q", "--archive", archive, "--site", site, "--latitude", 0, "--longitude", 15);
		}
		return archive;
	}

	/** Numbers within a millionth of each other, all else the same. */
	private static void same(JsonElement expected, JsonElement actual, String at) {
		if (expected.isJsonObject()) {
			JsonObject object = expected.getAsJsonObject();
			assertEquals(object.keySet(), actual.getAsJsonObject().keySet(), at);
			object.keySet().forEach(key -> same(object.get(key), actual.getAsJsonObject().get(key), at + "." + key));
		} else if (expected.isJsonArray()) {
			assertEquals(expected.getAsJsonArray().size(), actual.getAsJsonArray().size(), at);
			for (int i = 0; i < expected.getAsJsonArray().size(); i++) {
				same(expected.getAsJsonArray().get(i), actual.getAsJsonArray().get(i), at + "[" + i + "]");
			}
		} else if (expected.isJsonPrimitive() && expected.getAsJsonPrimitive().isNumber()) {
			assertEquals(expected.getAsDouble(), actual.getAsDouble(), 1e-6, at);
		} else {
			assertEquals(expected, actual, at);
		}
	}

	@Test
	void hasTheSameFiguresInGatesMeasuresReportAndPack() throws IOException {
		Path demo = folder.resolve("demo");
		Cli.ok("simulate", "--clean", "--out", demo, "-q");
		shift(demo.resolve("surveys"), folder.resolve("far/surveys"));
		shift(demo.resolve("test"), folder.resolve("far/test"));
		Path near = archive(demo.resolve("surveys"), demo.resolve("test"), "near-archive");
		Path far = archive(folder.resolve("far/surveys"), folder.resolve("far/test"), "far-archive");

		Cli gates = Cli.run("gate", "--json", "-q", "--archive", far);
		same(Cli.run("gate", "--json", "-q", "--archive", near).ended(gates.code()).json(), gates.json(), "gate");
		same(Cli.ok("measure", "--json", "-q", "--archive", near).json(),
				Cli.ok("measure", "--json", "-q", "--archive", far).json(), "measure");
		for (Path archive : List.of(near, far)) {
			Cli.ok("release", "-q", "--archive", archive, "--person", "L. Lead", "--override", "proposals-open=a trial",
					"--override",
					"error-to-plain=a trial");
			Cli.ok("export", "-q", "--archive", archive, "--release", "1.0.0", "--format", "wide,geojson,pack", "--out",
					archive.resolveSibling("out"));
			Cli.ok("report", "-q", "--archive", archive, "--release", "1.0.0", "--out",
					archive.resolveSibling("report.html"));
		}
		assertEquals(figures(near.resolveSibling("report.html")), figures(far.resolveSibling("report.html")));
		Path nearPack = near.resolveSibling("out/marrow-quay-1.0.0.cfpk");
		Path farPack = far.resolveSibling("out/marrow-quay-1.0.0.cfpk");
		assertEquals(1, Files.readAllBytes(nearPack)[4]);
		assertEquals(2, Files.readAllBytes(farPack)[4]);
		Cli.ok("verify", far.resolveSibling("out"));
	}

	/** All table cells of the page that are numbers. */
	private static List<String> figures(Path page) throws IOException {
		List<String> found = new ArrayList<>();
		Matcher cell = Pattern.compile("<td class=\"n\">([^<]*)</td>").matcher(Files.readString(page));
		while (cell.find()) {
			found.add(cell.group(1));
		}
		assertTrue(found.size() > 20, found::toString);
		return found;
	}
}
