package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SimulateCommandTest {

	@TempDir
	Path folder;

	private static Map<String, byte[]> files(Path folder) throws IOException {
		Map<String, byte[]> files = new TreeMap<>();
		try (Stream<Path> all = Files.walk(folder)) {
			for (Path file : all.filter(Files::isRegularFile).toList()) {
				files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
			}
		}
		return files;
	}

	@Test
	void givesTheSameBytesForTheSameSeed() throws IOException {
		Cli.ok("simulate", "--out", folder.resolve("a"), "--seed", 4);
		Cli.ok("simulate", "--out", folder.resolve("b"), "--seed", 4);
		Cli.ok("simulate", "--out", folder.resolve("c"), "--seed", 5, "--clean");
		Map<String, byte[]> first = files(folder.resolve("a"));
		Map<String, byte[]> second = files(folder.resolve("b"));
		assertEquals(first.keySet(), second.keySet());
		first.forEach((name, bytes) -> assertArrayEquals(bytes, second.get(name), name));
		assertNotEquals(new String(first.get("test/th-test.csv"), StandardCharsets.UTF_8),
				Files.readString(folder.resolve("c/test/th-test.csv")));
	}

	@Test
	void truthNamesSurveysAndSamplesThatAreThere() throws IOException {
		JsonObject json = Cli.ok("simulate", "--out", folder, "--json").json();
		assertTrue(json.getAsJsonArray("surveys").size() >= 9, json::toString);
		Set<String> samples = new HashSet<>();
		Set<String> surveys = new HashSet<>();
		for (JsonElement each : json.getAsJsonArray("surveys")) {
			Path file = Path.of(each.getAsJsonObject().get("file").getAsString());
			Csv csv = Csv.of(file);
			assertEquals(csv.size(), each.getAsJsonObject().get("samples").getAsInt(), file::toString);
			surveys.add(file.getFileName().toString().replace(".csv", ""));
			samples.addAll(csv.texts("id"));
		}
		List<String> truth = Files.readAllLines(folder.resolve("truth.csv"));
		assertEquals("kind,survey,sample,access_point,detail", truth.get(0));
		assertEquals(truth.size() - 1, json.get("faults").getAsInt());
		assertTrue(truth.size() > 100);
		for (String line : truth.subList(1, truth.size())) {
			String[] cells = line.split(",");
			assertTrue(surveys.contains(cells[1]), line);
			assertTrue(cells[2].isEmpty() || samples.contains(cells[2]), line);
		}
	}

	@Test
	void plantsNothingInCleanSurveys() throws IOException {
		assertEquals(0, Cli.ok("simulate", "--out", folder, "--clean", "--json").json().get("faults").getAsInt());
		assertEquals(List.of("kind,survey,sample,access_point,detail"),
				Files.readAllLines(folder.resolve("truth.csv")));
	}

	@Test
	void refusesAFileForAFolder() throws IOException {
		Path file = Files.writeString(folder.resolve("taken"), "");
		Cli.run("simulate", "--out", file).ended(ExitCode.INPUT).says(file, "there is a file of the name");
	}
}
