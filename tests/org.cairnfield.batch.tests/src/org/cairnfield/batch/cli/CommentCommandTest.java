package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

@Isolated
class CommentCommandTest {

	@TempDir
	Path folder;

	private static JsonArray comments(Path archive, Object... on) {
		Object[] all = new Object[on.length + 5];
		System.arraycopy(new Object[] { "comments", "--json", "-q", "--archive", archive }, 0, all, 0, 5);
		System.arraycopy(on, 0, all, 5, on.length);
		return Cli.ok(all).json().getAsJsonArray("comments");
	}

	@Test
	void commentsOnAReleaseAndKeepsTheCommentWhenThatIsRestored() throws IOException {
		Path archive = ReleasedArchive.make(folder);
		Cli.ok("comment", "-q", "--archive", archive, "--on", "release 1.0.0", "--text",
				"The lift is out of order until June.", "--person", "Ada");
		Cli.run("comment", "-q", "--archive", archive, "--on", "release 2.0.0", "--text", "Which?")
				.ended(ExitCode.ARCHIVE).says("there is no release 2.0.0");
		Cli.ok("restore", "1.0.0", "-q", "--archive", archive);
		JsonObject said = comments(archive).get(0).getAsJsonObject();
		assertEquals("release 1.0.0 / Ada / The lift is out of order until June.",
				said.get("on").getAsString() + " / " + said.get("person").getAsString() + " / "
						+ said.get("text").getAsString());
		Cli.ok("verify", "-q", "--archive", archive);
		assertTrue(Cli.ok("releases", "-q", "--archive", archive).out().contains("the next would be 1.0.1"),
				"a comment changes no position");
	}

	@Test
	void commentsOnAProposalAndAFindingThatAreThere() {
		Path archive = SmallArchive.make(folder);
		Path table = folder.resolve("verdicts.csv");
		Cli.ok("verdicts", "-q", "--archive", archive, "--export", table);
		Csv csv = Csv.of(table);
		String sample = IntStream.range(0, csv.size()).mapToObj(row -> csv.text(row, "sample")).findFirst()
				.orElseThrow();
		JsonObject finding = Cli.run("check", "--json", "-q", "--archive", archive).json().getAsJsonArray("findings")
				.get(0).getAsJsonObject();
		String found = "finding " + finding.get("rule").getAsString() + ' ' + finding.get("key").getAsString();
		Cli.ok("comment", "-q", "--archive", archive, "--on", "proposal all " + sample, "--text", "One", "--person",
				"Ada");
		Cli.ok("comment", "-q", "--archive", archive, "--on", found, "--text", "Two", "--person", "Ben");
		assertEquals(2, comments(archive).size());
		assertEquals("Two", comments(archive, "--on", found).get(0).getAsJsonObject().get("text").getAsString());
		assertEquals(0, comments(archive, "--on", "release 1.0.0").size());
		assertTrue(Cli.ok("comments", "-q", "--archive", archive).out()
				.contains("  Ada on proposal all " + sample + ": One"));
		Cli.run("comment", "-q", "--archive", archive, "--on", "proposal all " + sample + "-x", "--text", "x")
				.ended(ExitCode.ARCHIVE).says("is not noise in split all");
		Cli.run("comment", "-q", "--archive", archive, "--on", found.replaceFirst("[0-9a-f]{8}$", "00000000"), "--text",
				"x").ended(ExitCode.ARCHIVE)
				.says("has the key");
		Cli.run("comment", "-q", "--archive", archive, "--on", "survey th", "--text", "x").ended(ExitCode.USAGE)
				.says("a comment is on a \"proposal SPLIT");
		Cli.run("comment", "-q", "--archive", archive, "--on", found, "--text", " ").ended(ExitCode.USAGE)
				.says("it is empty");
		assertEquals(2, comments(archive).size());
	}
}
