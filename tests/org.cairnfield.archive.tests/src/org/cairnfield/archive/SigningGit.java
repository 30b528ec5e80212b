package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Keys of SSH, and the user's configuration of Git, which signs with one of them or with none. Skips the test without ssh-keygen. */
final class SigningGit implements AutoCloseable {

	private static final String PROPERTY = "cairnfield.git.config";

	private final Path folder;
	private final Path config;

	SigningGit(Path folder) throws IOException {
		assumeTrue(
				Arrays.stream(System.getenv("PATH").split(java.io.File.pathSeparator))
						.anyMatch(p -> Files.isExecutable(Path.of(p, "ssh-keygen"))),
				"skipped: ssh-keygen is not there");
		this.folder = folder;
		config = folder.resolve("user-gitconfig");
		signsNothing();
		System.setProperty(PROPERTY, config.toString());
	}

	/** File of a private key, made when it is first asked for; the public one stands beside it. */
	Path key(String owner) throws IOException {
		Path key = folder.resolve("key-" + owner);
		if (!Files.exists(key)) {
			Process process = new ProcessBuilder("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-C", owner + "@here",
					"-f", key.toString())
					.redirectErrorStream(true).start();
			String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
			process.onExit().join();
			assertEquals(0, process.exitValue(), said);
		}
		return key;
	}

	/** As its file has it: type, key, comment. */
	String publicKey(String owner) throws IOException {
		return Files.readString(Path.of(key(owner) + ".pub")).strip();
	}

	void signsNothing() throws IOException {
		Files.writeString(config, "");
	}

	/** Commits are signed with the key of an owner from now on. */
	void signsAs(String owner) throws IOException {
		signsWith(key(owner));
	}

	/** The same, where the user has a file of allowed signers. */
	void signsAs(String owner, Path signers) throws IOException {
		signsAs(owner);
		Files.writeString(config, Files.readString(config) + "[gpg \"ssh\"]\n\tallowedSignersFile = " + signers + "\n");
	}

	void signsWith(Path key) throws IOException {
		Files.writeString(config,
				"[gpg]\n\tformat = ssh\n[user]\n\tsigningKey = " + key + "\n[commit]\n\tgpgSign = true\n");
	}

	/** A file of allowed signers with a line for each owner. */
	Path signers(String... owners) throws IOException {
		StringBuilder lines = new StringBuilder();
		for (String owner : owners) {
			lines.append(owner).append(" namespaces=\"git\" ").append(publicKey(owner)).append('\n');
		}
		return Files.writeString(folder.resolve("signers"), lines);
	}

	@Override
	public void close() {
		System.clearProperty(PROPERTY);
	}
}
