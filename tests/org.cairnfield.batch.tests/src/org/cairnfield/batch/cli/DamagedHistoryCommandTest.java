package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Commands on an archive whose history is damaged, or that is reached by a link. */
class DamagedHistoryCommandTest {

	@TempDir
	Path folder;
	private Path archive;
	private Path branch;
	private String last;

	@BeforeEach
	void makeArchive() throws IOException {
		archive = SmallArchive.make(folder);
		branch = archive.resolve(".git/refs/heads/main");
		last = Files.readString(branch).strip();
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "\0\0\0\0", "garbage" })
	void stopWhereTheBranchIsDamagedAndNameTheLineToPutBack(String content) throws IOException {
		Files.writeString(branch, content);
		for (List<String> command : List.of(List.of("history"), List.of("restore", "HEAD"),
				List.of("split", "--name", "b", "--epsilon", "90"),
				List.of("remedy", "--rule", "exact-duplicate"), List.of("check"))) {
			Cli.run(command, "-q", "--archive", archive).ended(ExitCode.DAMAGED).says(".git/refs/heads/main",
					"put the line '" + last + "'");
			assertEquals(content, Files.readString(branch), command::toString);
		}
		Files.writeString(branch, last + "\n");
		Cli.ok("history", "-q", "--archive", archive);
		Cli.ok("split", "-q", "--archive", archive, "--name", "b", "--epsilon", 90);
	}

	@Test
	void listTheHistoryUpToTheCommitThatCannotBeRead() throws IOException {
		JsonObject whole = Cli.ok("history", "-q", "--json", "--archive", archive).json();
		String broken = whole.getAsJsonArray("savePoints").get(2).getAsJsonObject().get("id").getAsString();
		Path object = archive.resolve(".git/objects/" + broken.substring(0, 2) + "/" + broken.substring(2));
		byte[] bytes = Files.readAllBytes(object);
		bytes[bytes.length / 2] ^= 4;
		Files.delete(object);
		Files.write(object, bytes);
		Cli listed = Cli.run("history", "-q", "--archive", archive).ended(ExitCode.DAMAGED).says(broken.substring(2));
		assertEquals(2, listed.out().lines().filter(line -> line.matches("[0-9a-f]{8} .*")).count(), listed::toString);
		JsonObject json = Cli.run("history", "-q", "--json", "--archive", archive).ended(ExitCode.DAMAGED).json();
		assertEquals(2, json.getAsJsonArray("savePoints").size());
		assertFalse(json.getAsJsonArray("damages").isEmpty());
	}

	@Test
	void refuseAnArchiveThatLeadsOut() throws IOException {
		Path precious = Files.writeString(folder.resolve("precious.txt"), "precious");
		Files.createSymbolicLink(archive.resolve(".cairnfield/lock.part"), precious);
		Cli.run("split", "-q", "--archive", archive, "--name", "b", "--epsilon", 90).ended(ExitCode.ARCHIVE)
				.says("lock.part", "symbolic link");
		assertEquals("precious", Files.readString(precious));
		assertTrue(Files.isSymbolicLink(archive.resolve(".cairnfield/lock.part")));
	}

	@Test
	void seeAllOfAnArchiveBehindALink() throws IOException {
		JsonObject direct = Cli.run("check", "-q", "--json", "--archive", archive).json();
		assertTrue(direct.get("samples").getAsInt() > 0, direct::toString);
		Path link = Files.createSymbolicLink(folder.resolve("link"), archive);
		for (Path way : List.of(link, Path.of(link + "/"), link.resolve("../archive"))) {
			assertEquals(direct, Cli.run("check", "-q", "--json", "--archive", way).json(), way::toString);
		}
		Cli.ok("split", "-q", "--archive", link, "--name", "b", "--epsilon", 90);
		assertEquals(Cli.ok("history", "-q", "--archive", archive).out(),
				Cli.ok("history", "-q", "--archive", link).out());
		Cli.ok("verify", "--archive", link);
	}
}
