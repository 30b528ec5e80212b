package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.ReleaseTag;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReleaseTest {

	private static final Person LEAD = new Person("L. Lead", "lead@example.org");

	@TempDir
	Path folder;
	private OpenArchive open;
	private Path root;

	@BeforeEach
	void create() throws IOException {
		root = folder.resolve("quay");
		open = new ArchiveStore().create(root, "Marrow Quay");
		SampleArchives.fill(open.archive(), 7, 2, 10);
		open.savePoint(LEAD, null);
	}

	@AfterEach
	void close() throws IOException {
		open.close();
	}

	private ReleaseTag release(String version) throws IOException {
		return open.release(version, "{\"of\": \"" + version + "\"}\n", open.digest(), "Release " + version, LEAD);
	}

	private static String run(Map<String, String> environment, Path where, String... command)
			throws IOException, InterruptedException {
		ProcessBuilder builder = new ProcessBuilder(command).directory(where.toFile()).redirectErrorStream(true);
		builder.environment().putAll(environment);
		Process process = builder.start();
		process.getOutputStream().close();
		String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		assertEquals(0, process.waitFor(), String.join(" ", command) + ": " + said);
		return said;
	}

	private static void requireProgram(String name) {
		assumeTrue(
				List.of(System.getenv("PATH").split(java.io.File.pathSeparator)).stream()
						.anyMatch(p -> Files.isExecutable(Path.of(p, name))),
				"skipped: " + name + " is not there");
	}

	@Test
	void isAnAnnotatedTagForPlainGit() throws Exception {
		requireProgram("git");
		ReleaseTag tag = release("1.0.0-rc.1");
		assertEquals("tag",
				run(Map.of(), root, "git", "-c", "safe.directory=*", "cat-file", "-t", "1.0.0-rc.1").strip());
		String shown = run(Map.of(), root, "git", "-c", "safe.directory=*", "show", "--no-patch", "1.0.0-rc.1");
		assertTrue(shown.contains("Tagger: L. Lead <lead@example.org>") && shown.contains("Release 1.0.0-rc.1"), shown);
		assertTrue(shown.contains(tag.savePoint().id()), shown);
		run(Map.of(), root, "git", "-c", "safe.directory=*", "fsck", "--strict");
	}

	@Test
	void makesNoReleaseOfContentThatIsNotWhatTheManifestTellsOf() throws IOException {
		String before = open.digest();
		open.archive().setName("changed");
		assertThrows(ArchiveException.class, () -> open.release("1.0.0", "{}", before, "x", LEAD));
		open.save();
		assertThrows(ArchiveException.class, () -> open.release("1.0.0", "{}", before, "x", LEAD));
		try (History history = open.history()) {
			assertTrue(history.releases().isEmpty());
		}
		release("1.0.0");
	}

	@Test
	void refusesAVersionTwiceAndNamesThatGitCannotHave() throws IOException {
		release("1.0.0");
		assertThrows(ArchiveException.class, () -> release("1.0.0"));
		assertThrows(ArchiveException.class, () -> release("1..0"));
		assertThrows(ArchiveException.class, () -> open.putAboutReleases("../x.txt", "x", LEAD));
		assertFalse(Files.exists(root.resolve("x.txt")));
	}

	@Test
	void keepsReleasesAndGatesWhenAnEarlierStateIsRestored() throws IOException {
		ReleaseTag one = release("1.0.0");
		open.archive().setName("later");
		open.putAboutReleases("gates.txt", "mine", LEAD);
		open.savePoint(LEAD, null);
		release("1.1.0");
		open.restore(one.savePoint(), LEAD, null);
		assertTrue(Files.readString(root.resolve("releases/1.1.0.json")).contains("1.1.0"));
		assertEquals("mine", Files.readString(root.resolve("releases/gates.txt")));
		try (History history = open.history()) {
			assertEquals(2, history.releases().size());
			assertTrue(history.differences(one.savePoint()).isEmpty());
		}
	}

	@Test
	void opensAfterAKillThatLeftTheLockOfATag() throws IOException {
		open.close();
		Files.createDirectories(root.resolve(".git/refs/tags"));
		Files.writeString(root.resolve(".git/refs/tags/1.0.0.lock"), "");
		Files.writeString(root.resolve(".cairnfield/committing"), "A save point is being made.\n");
		open = new ArchiveStore().open(root, Mode.EDIT);
		assertEquals("1.0.0", release("1.0.0").version());
	}
}
