package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The real program of Git in a folder, by nothing that the machine is configured to do. Skips the test where there is none. */
final class PlainGit {

	private final Path root;
	private int code;

	PlainGit(Path root) {
		this.root = root;
	}

	/** What a command prints that must succeed. */
	String run(String... arguments) throws IOException {
		String said = start(arguments);
		assertEquals(0, code, () -> String.join(" ", arguments) + ": " + said);
		return said;
	}

	/** What a command prints that must not succeed, such as a merge that ends in a conflict. */
	String fails(String... arguments) throws IOException {
		String said = start(arguments);
		assertNotEquals(0, code, () -> String.join(" ", arguments) + ": " + said);
		return said;
	}

	private String start(String... arguments) throws IOException {
		List<String> command = new ArrayList<>(
				List.of("git", "-c", "user.name=RT", "-c", "user.email=rt@example.org", "-c", "safe.directory=*",
						"-c", "protocol.file.allow=always", "-c", "core.editor=true"));
		command.addAll(List.of(arguments));
		ProcessBuilder builder = new ProcessBuilder(command).directory(root.toFile()).redirectErrorStream(true);
		builder.environment().put("GIT_CONFIG_NOSYSTEM", "1");
		builder.environment().put("GIT_CONFIG_GLOBAL", root.resolve("none").toString());
		Process process;
		try {
			process = builder.start();
		} catch (IOException e) {
			assumeTrue(false, "no git here: " + e.getMessage());
			throw e;
		}
		String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		process.onExit().join();
		code = process.exitValue();
		return said.strip();
	}
}
