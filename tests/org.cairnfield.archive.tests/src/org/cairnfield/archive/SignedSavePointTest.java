package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** Save points are signed where the user's Git signs commits, and the real Git accepts the signatures. */
@Isolated
class SignedSavePointTest {

	private static final Person REVIEWER = new Person("R. Reviewer", "rr@example.org");
	private static final Person STEWARD = Person.named("A. Steward");

	@TempDir
	Path folder;
	private Path root;
	private SigningGit keys;
	private PlainGit git;
	private OpenArchive open;

	@BeforeEach
	void create() throws IOException {
		keys = new SigningGit(folder);
		root = folder.resolve("quay");
		git = new PlainGit(root);
		open = new ArchiveStore().create(root, "Marrow Quay");
		SampleArchives.fill(open.archive(), 7, 2, 10);
	}

	@AfterEach
	void close() throws IOException {
		keys.close();
		open.close();
	}

	private void requireSigned(String commit) throws IOException {
		String said = git.run("-c", "gpg.ssh.allowedSignersFile=" + keys.signers("reviewer"), "verify-commit", commit);
		assertTrue(said.startsWith("Good \"git\" signature for reviewer"), said);
	}

	private SavePoint rename(String name, Person person) throws IOException {
		open.archive().setName(name);
		return open.savePoint(person, "named " + name).orElseThrow();
	}

	@Test
	void gitAcceptsTheSignatureOfEverySavePoint() throws IOException {
		keys.signsAs("reviewer");
		SavePoint first = open.savePoint(REVIEWER, "Grüße\n\ngpgsig is no header here").orElseThrow();
		SavePoint second = rename("Quay", REVIEWER);
		open.undo(second, REVIEWER, null);
		open.restore(second, REVIEWER, null);
		List<String> ids = git.run("rev-list", "HEAD").lines().toList();
		assertEquals(4, ids.size(), ids::toString);
		for (String id : ids) {
			requireSigned(id);
		}
		git.run("fsck", "--strict");
		try (History history = open.history()) {
			assertTrue(history.find(first.id()).message().contains("Grüße\n\ngpgsig is no header here"));
			assertEquals(List.of(), history.check().problems());
		}
	}

	@Test
	void signsNothingUnlessTheUserHasConfiguredItWhateverTheArchiveSays() throws IOException {
		open.savePoint(REVIEWER, null);
		Path mark = folder.resolve("ran");
		Path planted = Files.writeString(root.resolve("plans-sign"), "#!/bin/sh\ntouch '" + mark + "'\n");
		assertTrue(planted.toFile().setExecutable(true));
		git.run("config", "commit.gpgSign", "true");
		git.run("config", "gpg.format", "ssh");
		git.run("config", "gpg.ssh.program", planted.toString());
		git.run("config", "user.signingKey", keys.key("reviewer").toString());
		rename("Quay", REVIEWER);
		assertFalse(Files.exists(mark), "a program of the archive was run");
		assertFalse(git.run("cat-file", "commit", "HEAD").contains("gpgsig"));
	}

	@Test
	void recordsNothingWhereSigningFails() throws IOException {
		SavePoint first = open.savePoint(REVIEWER, null).orElseThrow();
		keys.signsWith(folder.resolve("no-such-key"));
		ArchiveException refused = assertThrows(ArchiveException.class, () -> rename("Quay", REVIEWER));
		assertTrue(refused.getMessage().contains("no save point was made: ssh-keygen did not sign it"),
				refused.getMessage());
		assertTrue(refused.getMessage().contains("commit.gpgSign"), refused.getMessage());
		assertEquals(first.id(), git.run("rev-parse", "HEAD"));
		assertEquals("", git.run("diff", "--cached", "--name-only"), "the index is ahead of the history");
		keys.signsAs("reviewer");
		SavePoint made = open.savePoint(REVIEWER, null).orElseThrow();
		requireSigned(made.id());
		assertEquals(List.of(first.id()), made.parents());
	}

	@Test
	void nobodySignsForSomebodyElse() throws IOException {
		open.savePoint(STEWARD, null);
		keys.signsAs("reviewer");
		open.archive().setName("by the steward");
		open.save(STEWARD);
		open.archive().getSites().get(0).setName("by the reviewer");
		SavePoint own = open.savePoint(REVIEWER, null).orElseThrow();
		requireSigned(own.id());
		assertEquals("A. Steward", git.run("show", "-s", "--format=%an", "HEAD~1"));
		assertFalse(git.run("cat-file", "commit", "HEAD~1").contains("gpgsig"), "somebody else has signed it");
		open.archive().setName("from a draft of the steward");
		open.savePointFor(STEWARD, "brought back");
		assertEquals("A. Steward", git.run("show", "-s", "--format=%an", "HEAD"));
		assertFalse(git.run("cat-file", "commit", "HEAD").contains("gpgsig"), "somebody else has signed it");
	}
}
