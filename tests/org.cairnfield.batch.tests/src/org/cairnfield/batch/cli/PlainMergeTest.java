package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.model.Verdict;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** What commands do with an archive that several people have brought together with plain Git. */
@Isolated
class PlainMergeTest {

	@TempDir
	Path folder;
	private Path archive;

	@BeforeEach
	void release() throws IOException {
		archive = ReleasedArchive.make(folder);
	}

	private String git(String... arguments) {
		return ReleasedArchive.git(archive, arguments);
	}

	private void rename(String name) {
		Cli.ok("rename", "-q", "--archive", archive, "--site", "tide-house", "--name", name, "--person", "A. Steward");
	}

	private void give(String id) throws IOException {
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT)) {
			List<Verdict> verdicts = open.archive().getLedgers().get(0).getVerdicts();
			Verdict verdict = EcoreUtil.copy(verdicts.get(0));
			verdict.setId(id);
			verdicts.add(verdict);
			open.savePoint(Person.named("R. Reviewer"), null);
		}
	}

	@Test
	void everyCommandCallsAHalfMergedFolderThat() throws IOException {
		git("checkout", "-qb", "side");
		rename("Tide House, west wing");
		git("checkout", "-q", "main");
		rename("Tide House, east wing");
		assertThrows(AssertionError.class, () -> git("merge", "--no-edit", "side"),
				"the merge was to end in a conflict");
		byte[] half = Files.readAllBytes(archive.resolve("archive.xmi"));
		for (List<Object> command : List.<List<Object>>of(List.of("check"), List.of("history"), List.of("verify"),
				List.of("releases"),
				List.of("waivers"), List.of("compare", "1.0.0"), List.of("gate"),
				List.of("release", "--person", "L. Lead"),
				List.of("export", "--out", folder.resolve("out")),
				List.of("report", "--out", folder.resolve("report.html")),
				List.of("remedy", "--rule", "few-readings"), List.of("rename", "--site", "tide-house", "--name", "x"),
				List.of("restore", "HEAD"), List.of("restore", "HEAD", "--only-its-change"))) {
			Cli.run(command.get(0), "--archive", archive, command.subList(1, command.size())).ended(ExitCode.DAMAGED)
					.says("a merge with plain Git was begun here and is not finished", "git merge --continue",
							"git merge --abort");
		}
		JsonObject first = Cli.run("check", "--json", "--archive", archive).json().getAsJsonArray("damages").get(0)
				.getAsJsonObject();
		assertEquals(".git/MERGE_HEAD", first.get("file").getAsString());
		assertArrayEquals(half, Files.readAllBytes(archive.resolve("archive.xmi")));
		git("merge", "--abort");
		Cli.ok("releases", "--archive", archive);
	}

	@Test
	void aVerdictThatAMergeHasDroppedIsDamageUntilTheMergeIsRestored() throws IOException {
		git("checkout", "-qb", "side");
		give("v-100");
		git("checkout", "-q", "main");
		rename("Tide House, east wing");
		git("merge", "-q", "-s", "ours", "--no-edit", "side");
		String merge = git("rev-parse", "HEAD").substring(0, 8);
		for (String command : List.of("check", "history", "verify", "releases", "export")) {
			Cli.run(command, "--archive", archive,
					command.equals("export") ? List.of("--out", folder.resolve("out")) : List.of())
					.ended(ExitCode.DAMAGED)
					.says("the merge " + merge, "has dropped 1 verdict (v-100)", "restore the save point " + merge);
		}
		Cli.ok("restore", "--archive", archive, merge, "--person", "L. Lead");
		Cli.ok("releases", "--archive", archive);
		assertTrue(Files.readString(archive.resolve("ledger/r-reviewer.ledger")).contains("\nv-100\t"));
		Cli.ok("verify", "--archive", archive);
	}

	@Test
	void releasesNothingOverAManifestWhoseTagWasNotFetched() throws IOException {
		Path clone = folder.resolve("clone");
		git("clone", "-q", "--no-tags", archive.toString(), clone.toString());
		byte[] manifest = Files.readAllBytes(clone.resolve("releases/1.0.0.json"));
		String head = ReleasedArchive.git(clone, "rev-parse", "HEAD");
		for (List<String> which : List.of(List.<String>of(), List.of("--version", "1.0.0"),
				List.of("--version", "0.5.0"))) {
			Cli.run("release", "-q", "--archive", clone, "--person", "L. Lead", "--override", "error-to-plain=x",
					"--override", "floor-hit-rate=x",
					"--override", "cost-to-plain=x", which).ended(ExitCode.ARCHIVE)
					.says("release 1.0.0, signed by L. Lead, has no tag", "fetch the tags");
		}
		for (String person : List.of("A. Steward", "L. Lead")) {
			Cli.run("release", "-q", "--archive", clone, "--sign", "--version", "1.0.0", "--person", person)
					.ended(ExitCode.ARCHIVE)
					.says("fetch the tags");
		}
		assertArrayEquals(manifest, Files.readAllBytes(clone.resolve("releases/1.0.0.json")));
		assertEquals(head, ReleasedArchive.git(clone, "rev-parse", "HEAD"));
		assertEquals("", ReleasedArchive.git(clone, "tag"));
	}
}
