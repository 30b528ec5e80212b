package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** What {@code verify} reports of a released archive that somebody changed with plain Git. */
@Isolated
class VerifyCommandTest {

	@TempDir
	Path folder;
	private Path archive;

	@BeforeEach
	void release() throws IOException {
		archive = ReleasedArchive.make(folder);
		Cli.ok("verify", "--archive", archive);
	}

	private void git(String... arguments) {
		ReleasedArchive.git(archive, arguments);
	}

	private static void reports(Path archive, String... words) {
		String out = Cli.run("verify", "--archive", archive).ended(ExitCode.NOT_SOUND).out();
		for (String word : words) {
			assertTrue(out.contains(word), () -> "\"" + word + "\" is missing: " + out);
		}
	}

	@Test
	void reportsACloneWithoutTags() {
		Path clone = folder.resolve("clone");
		git("clone", "-q", "--no-tags", archive.toString(), clone.toString());
		reports(clone, "release 1.0.0, signed by L. Lead, has no tag");
		Cli listed = Cli.run("releases", "--json", "--archive", clone).ended(ExitCode.NOT_SOUND)
				.says("release 1.0.0, signed by L. Lead, has no tag");
		assertEquals(1, listed.json().getAsJsonArray("gaps").size());
		ReleasedArchive.git(clone, "fetch", "-q", "--tags");
		Cli.ok("verify", "--archive", clone);
		Cli.ok("releases", "--archive", clone);
	}

	@Test
	void reportsATagThatIsGoneEvenWhereTheManifestWentWithIt() {
		git("tag", "-d", "1.0.0");
		git("rm", "-q", "releases/1.0.0.json");
		git("commit", "-qm", "tidy up");
		reports(archive, "release 1.0.0, signed by L. Lead, has no tag");
	}

	@Test
	void reportsTagsThatAreNotTheReleasesOwn() throws IOException {
		String tag = ReleasedArchive.git(archive, "rev-parse", "refs/tags/1.0.0");
		String commit = ReleasedArchive.git(archive, "rev-parse", "1.0.0^{commit}");
		git("tag", "-f", "1.0.0", commit);
		reports(archive, "1.0.0: it is a lightweight tag");
		Cli.run("verify", "--archive", archive, "--release", "1.0.0").ended(ExitCode.DAMAGED).says("lightweight");
		git("tag", "-f", "-a", "-m", "mine", "1.0.0", commit);
		reports(archive, "it was made by RT, and the manifest was signed by L. Lead");
		git("-c", "user.name=L. Lead", "tag", "-f", "-a", "-m", "mine", "1.0.0", commit);
		reports(archive, "its message is not that of the manifest", "is not the one that was seen");
		git("update-ref", "refs/tags/1.0.0", tag);
		git("update-ref", "refs/tags/1.0.1", tag);
		reports(archive, "says that it is 1.0.0");
		git("update-ref", "-d", "refs/tags/1.0.1");
		Files.writeString(archive.resolve(".git/refs/tags/1.0.0"), "");
		reports(archive, "1.0.0: the file is empty");
		Files.writeString(archive.resolve(".git/refs/tags/1.0.0"), tag + "\n");
		Cli.ok("verify", "--archive", archive);
	}

	@Test
	void reportsATagThatWasMovedToALaterCommitOfTheSameContent() throws IOException {
		Files.writeString(archive.resolve("note.txt"), "x");
		git("add", "note.txt");
		git("commit", "-qm", "a note");
		String message = ReleasedArchive.git(archive, "for-each-ref", "--format=%(contents)", "refs/tags/1.0.0");
		git("-c", "user.name=L. Lead", "tag", "-f", "-a", "-m", message, "1.0.0", "HEAD");
		reports(archive, "is not the save point that brought the manifest");
	}

	@Test
	void reportsAReleaseThatNoBranchHas() {
		git("update-ref", "refs/heads/main", "main~1");
		git("reset", "-q", "--hard");
		reports(archive, "is on no branch");
	}

	@Test
	void reportsAReleaseWhoseOneBeforeIsMissing() {
		Cli.ok("locate", "-q", "--archive", archive, "--site", "Tide House", "--latitude", "40", "--longitude", "-40",
				"--bearing", "3");
		Cli.ok("release", "-q", "--archive", archive, "--person", "L. Lead", "--override", "error-to-plain=x",
				"--override", "floor-hit-rate=x",
				"--override", "cost-to-plain=x", "--override", "error-to-last=x");
		Cli.ok("verify", "--archive", archive);
		git("tag", "-d", "1.0.0");
		reports(archive, "there is no release 1.0.0, which the manifest names");
	}

	@Test
	void reportsAnArchiveThatWasPutBackBehindAReleaseSeenHere() {
		Path copy = folder.resolve("copy");
		git("clone", "-q", archive.toString(), copy.toString());
		ReleasedArchive.git(copy, "tag", "-d", "1.0.0");
		ReleasedArchive.git(copy, "reset", "-q", "--hard", "HEAD~1");
		ReleasedArchive.git(copy, "remote", "remove", "origin");
		reports(copy, "release 1.0.0, seen on ", "is not here");
		Cli.ok("verify", "--archive", copy, "--forget");
		Cli.ok("verify", "--archive", copy);
	}

	@Test
	void reportsAVerdictThatWasDeletedSealedAgainAndCommitted() throws IOException {
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT)) {
			open.archive().getLedgers().get(0).getVerdicts().remove(1);
			open.save();
		}
		git("commit", "-qam", "tidy up");
		String commit = ReleasedArchive.git(archive, "rev-parse", "HEAD").substring(0, 8);
		reports(archive, "ledger/r-reviewer.ledger, " + commit + ": 1 verdict gone, 'v-2 ");
	}

	@Test
	void listsTheDamageOfTheFolderToo() throws IOException {
		Path ledger = archive.resolve("ledger/r-reviewer.ledger");
		String sound = Files.readString(ledger);
		Files.writeString(ledger, sound.replace("v-2", "v-9"));
		JsonObject json = Cli.run("verify", "--json", "--archive", archive).ended(ExitCode.DAMAGED).json();
		assertEquals("ledger/r-reviewer.ledger",
				json.getAsJsonArray("damages").get(0).getAsJsonObject().get("file").getAsString());
		assertTrue(json.toString().contains("the folder: 1 verdict gone"), json::toString);
		Files.writeString(ledger, sound);
		assertEquals(0, Cli.ok("verify", "--json", "--archive", archive).json().getAsJsonArray("damages").size());
	}

	@Test
	void comparesWithADigestThatWasKeptElsewhere() {
		JsonObject listed = Cli.ok("releases", "--json", "--archive", archive).json().getAsJsonArray("releases").get(0)
				.getAsJsonObject();
		for (String kept : List.of(listed.get("digest").getAsString(), listed.get("tag").getAsString())) {
			Cli.ok("verify", "--archive", archive, "--release", "1.0.0", "--digest", kept);
			String other = (kept.startsWith("0") ? "1" : "0") + kept.substring(1);
			Cli.run("verify", "--archive", archive, "--release", "1.0.0", "--digest", other).ended(ExitCode.NOT_SOUND);
			Cli.run("verify", "--archive", archive, "--digest", kept).ended(ExitCode.USAGE);
		}
		Cli.run("verify", "--archive", archive, "--release", "1.0.0", "--digest", "abc").ended(ExitCode.USAGE);
	}

	@Test
	void saysOfEachReleaseHowFarItsSignatureCounts() {
		JsonObject release = Cli.ok("verify", "--json", "--archive", archive).json().getAsJsonArray("verified").get(0)
				.getAsJsonObject();
		assertEquals("release 1.0.0", release.get("what").getAsString());
		assertEquals("not signed", release.getAsJsonObject("signature").get("state").getAsString());
		assertTrue(
				Cli.ok("verify", "--archive", archive).out().contains("release 1.0.0: sound; signature: not signed"));
		String wanted = Cli.run("verify", "--signed", "--archive", archive).ended(ExitCode.NOT_SOUND).out();
		assertTrue(wanted.contains("a good signature: it is wanted, and there is none: not signed"), wanted);
	}

	@Test
	void reportsFilesOfAnExportThatTheListDoesNotName() throws IOException {
		Path out = folder.resolve("out");
		Cli.ok("export", "-q", "--archive", archive, "--format", "wide", "--out", out);
		Cli.ok("verify", out);
		Files.writeString(out.resolve("more.csv"), "x");
		Files.createDirectory(out.resolve("inner"));
		String said = Cli.run("verify", out).ended(ExitCode.NOT_SOUND).out();
		assertTrue(said.contains("more.csv: is not named in SHA256SUMS")
				&& said.contains("inner: is not named in SHA256SUMS"), said);
	}

	@Test
	void remembersNothingWhereItCannotAndSaysSo() throws IOException {
		String before = System.getProperty("cairnfield.state");
		Path blocked = Files.writeString(folder.resolve("blocked"), "no folder");
		try {
			System.setProperty("cairnfield.state", blocked.toString());
			assertTrue(Cli.ok("verify", "--archive", archive).out().contains("could not be remembered in"));
			Path state = folder.resolve("other-state");
			Path list = Files.createDirectories(state.resolve("cairnfield")).resolve("known-releases");
			System.setProperty("cairnfield.state", state.toString());
			Files.write(list, "garbage\n\0\1\nmore\tgarbage".getBytes(StandardCharsets.ISO_8859_1));
			Cli.ok("verify", "--archive", archive);
			assertTrue(Files.readString(list).contains("\t1.0.0\t"), "nothing was remembered");
			assertFalse(Files.readString(list).contains("garbage"));
		} finally {
			System.setProperty("cairnfield.state", before);
		}
	}
}
