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
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.Signature.State;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** Signatures by the programs and keys of the user's configuration of Git, which stands in a file of the test's. */
@Isolated
class SignatureTest {

	private static final Person LEAD = new Person("L. Lead", "lead@example.org");
	private static final String PROPERTY = "cairnfield.git.config";

	@TempDir
	Path folder;
	private OpenArchive open;
	private Path root;
	private Path config;
	private Path keys;

	@BeforeEach
	void create() throws IOException {
		root = folder.resolve("quay");
		config = Files.writeString(folder.resolve("gitconfig"), "");
		System.setProperty(PROPERTY, config.toString());
		open = new ArchiveStore().create(root, "Marrow Quay");
		SampleArchives.fill(open.archive(), 7, 2, 10);
		open.savePoint(LEAD, null);
	}

	@AfterEach
	void close() throws Exception {
		System.clearProperty(PROPERTY);
		open.close();
		if (keys != null) {
			run("env", "GNUPGHOME=" + keys, "gpgconf", "--kill", "gpg-agent");
		}
	}

	private String run(String... command) throws IOException, InterruptedException {
		Process process = new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
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

	private Path script(Path file, String text) throws IOException {
		Files.createDirectories(file.getParent());
		Files.writeString(file, "#!/bin/sh\n" + text);
		return Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwx------"));
	}

	private ReleaseTag release(String version) throws IOException {
		return open.release(version, "{\"of\": \"" + version + "\"}\n", open.digest(), "Release " + version, LEAD);
	}

	private Signature signature(String version) throws IOException {
		try (History history = open.history()) {
			return history.check().signature(
					history.releases().stream().filter(r -> r.version().equals(version)).findFirst().orElseThrow());
		}
	}

	/** A key ring of its own with a key for each address, and a program that uses it. */
	private Path gpg(String... addresses) throws Exception {
		requireProgram("gpg");
		keys = Files.createDirectory(folder.resolve("g" + addresses.length),
				PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
		for (String address : addresses) {
			run("env", "GNUPGHOME=" + keys, "gpg", "--batch", "--quiet", "--passphrase", "", "--quick-generate-key",
					address, "ed25519", "sign", "never");
		}
		return script(folder.resolve("bin/gpg-here"), "GNUPGHOME='" + keys + "' exec gpg --batch \"$@\"\n");
	}

	private void signWithGpg(Path program, String key) throws IOException {
		Files.writeString(config,
				"[gpg]\n\tprogram = " + program + "\n[user]\n\tsigningKey = " + key + "\n[tag]\n\tgpgSign = true\n");
	}

	@Test
	void signsAndChecksWithTheKeyOfTheUser() throws Exception {
		Path program = gpg("lead@example.org", "other@example.org");
		signWithGpg(program, "lead@example.org");
		assertTrue(release("1.0.0").signed());
		requireProgram("git");
		run("git", "-c", "safe.directory=*", "-c", "gpg.program=" + program, "-C", root.toString(), "verify-tag",
				"1.0.0");
		Signature good = signature("1.0.0");
		assertEquals(State.GOOD, good.state(), good::toString);
		assertEquals("lead@example.org", good.by());
		signWithGpg(program, "nobody@example.org");
		ArchiveException refused = assertThrows(ArchiveException.class, () -> release("1.1.0"));
		assertTrue(refused.getMessage().contains("did not sign"), refused.getMessage());
		run("env", "GNUPGHOME=" + keys, "gpg", "--batch", "--yes", "--delete-secret-and-public-key",
				run("env", "GNUPGHOME=" + keys, "gpg", "--batch", "--with-colons", "--list-keys", "lead@example.org")
						.lines()
						.filter(l -> l.startsWith("fpr")).findFirst().orElseThrow().replaceAll("fpr|:", ""));
		assertEquals(State.UNKNOWN_KEY, signature("1.0.0").state());
		Files.writeString(config, "[gpg]\n\tprogram = /nowhere/gpg\n");
		Signature unchecked = signature("1.0.0");
		assertEquals(State.NOT_CHECKED, unchecked.state());
		assertTrue(unchecked.detail().contains("gpg is not installed"), unchecked::toString);
	}

	@Test
	void signsSavePointsWithTheKeyOfTheUser() throws Exception {
		requireProgram("git");
		Path program = gpg("lead@example.org");
		Files.writeString(config, "[gpg]\n\tprogram = " + program
				+ "\n[user]\n\tsigningKey = lead@example.org\n[commit]\n\tgpgSign = true\n");
		open.archive().setName("Marrow Quay Museums");
		open.savePoint(LEAD, null);
		run("git", "-c", "safe.directory=*", "-c", "gpg.program=" + program, "-C", root.toString(), "verify-commit",
				"HEAD");
		assertFalse(release("1.0.0").signed(), "Git is not configured to sign tags");
	}

	@Test
	void findsASignatureBadThatWasMadeForAnotherTag() throws Exception {
		signWithGpg(gpg("lead@example.org"), "lead@example.org");
		release("1.0.0");
		requireProgram("git");
		String tag = run("git", "-c", "safe.directory=*", "-C", root.toString(), "cat-file", "tag", "1.0.0");
		Path other = Files.writeString(folder.resolve("tag"), tag.replace("Release 1.0.0", "Release 6.6.6"));
		String id = run("git", "-c", "safe.directory=*", "-C", root.toString(), "hash-object", "-t", "tag", "-w",
				other.toString()).strip();
		run("git", "-c", "safe.directory=*", "-C", root.toString(), "update-ref", "refs/tags/1.0.0", id);
		assertEquals(State.BAD, signature("1.0.0").state());
	}

	@Test
	void signsAndChecksBySshWithTheListOfSigners() throws Exception {
		requireProgram("ssh-keygen");
		run("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-C", "lead", "-f", folder.resolve("key").toString());
		String settings = "[gpg]\n\tformat = ssh\n[user]\n\tsigningKey = " + folder.resolve("key")
				+ "\n[tag]\n\tgpgSign = true\n";
		Files.writeString(config, settings);
		ReleaseTag made = release("1.0.0");
		assertTrue(made.signed());
		assertEquals("Release 1.0.0", made.message().strip());
		Signature without = signature("1.0.0");
		assertEquals(State.NOT_CHECKED, without.state(), without::toString);
		assertTrue(without.detail().contains("no file of allowed signers"), without::toString);
		Path signers = folder.resolve("signers");
		Files.writeString(config, settings + "[gpg \"ssh\"]\n\tallowedSignersFile = " + signers + "\n");
		Files.writeString(signers,
				"lead@example.org namespaces=\"git\" " + Files.readString(folder.resolve("key.pub")));
		Signature good = signature("1.0.0");
		assertEquals(State.GOOD, good.state(), good::toString);
		assertEquals("lead@example.org", good.by());
		run("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-C", "x", "-f", folder.resolve("another").toString());
		Files.writeString(signers, "x@example.org " + Files.readString(folder.resolve("another.pub")));
		assertEquals(State.UNKNOWN_KEY, signature("1.0.0").state());
	}

	@Test
	void runsNoProgramThatTheArchiveNames() throws Exception {
		Path mark = folder.resolve("ran");
		Path planted = script(root.resolve("plans/gpg"), "touch '" + mark
				+ "'\nprintf -- '-----BEGIN PGP SIGNATURE-----\\n\\nx\\n-----END PGP SIGNATURE-----\\n'\n");
		Files.writeString(root.resolve(".git/config"),
				"[core]\n\trepositoryformatversion = 0\n[gpg]\n\tprogram = " + planted
						+ "\n[gpg \"ssh\"]\n\tprogram = " + planted + "\n\tdefaultKeyCommand = " + planted
						+ "\n[tag]\n\tgpgSign = true\n");
		ReleaseTag tag = release("1.0.0");
		assertFalse(Files.exists(mark), "a program of the archive was run");
		assertFalse(tag.signed());
		assertEquals(State.NOT_SIGNED, signature("1.0.0").state());
		signWithGpg(planted, "x");
		ArchiveException refused = assertThrows(ArchiveException.class, () -> release("1.1.0"));
		assertTrue(refused.getMessage().contains("lies in the archive"), refused.getMessage());
		assertFalse(Files.exists(mark));
	}

	@Test
	void takesNothingForASignatureThatDoesNotVerify() throws Exception {
		requireProgram("gpg");
		for (String said : List.of("I sign everything\\n",
				"-----BEGIN PGP SIGNATURE-----\\n\\nnonsense\\n-----END PGP SIGNATURE-----\\n")) {
			signWithGpg(script(folder.resolve("bin/liar"),
					"case \"$*\" in *--verify*) exec gpg --batch \"$@\" ;; *) printf -- '" + said + "' ;; esac\n"),
					"x");
			ArchiveException refused = assertThrows(ArchiveException.class, () -> release("1.0.0"));
			assertTrue(refused.getMessage().contains("does not verify"), refused.getMessage());
		}
		try (History history = open.history()) {
			assertTrue(history.releases().isEmpty());
		}
	}
}
