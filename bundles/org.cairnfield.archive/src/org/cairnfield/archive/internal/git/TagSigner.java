package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.cairnfield.archive.fault.ArchiveException;
import org.eclipse.jgit.lib.GpgSignature;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.lib.TagBuilder;

/**
 * Signs tags where Git is configured to: {@code tag.gpgSign} or {@code tag.forceSignAnnotated} is true. It runs the program
 * that Git itself would run ({@code gpg.program}, otherwise gpg) with {@code user.signingKey}; JGit alone would need further
 * libraries. Formats other than OpenPGP are refused.
 */
final class TagSigner {

	private static final int PATIENCE_SECONDS = 120;

	private final StoredConfig config;

	TagSigner(StoredConfig config) {
		this.config = config;
	}

	void sign(TagBuilder tag) throws IOException {
		if (!config.getBoolean("tag", "gpgSign", false) && !config.getBoolean("tag", "forceSignAnnotated", false)) {
			return;
		}
		String format = config.getString("gpg", null, "format");
		if (format != null && !format.equals("openpgp")) {
			throw new ArchiveException("no tag was made: Git is configured to sign with " + format + ", which is not known here",
					"set gpg.format to openpgp, or tag.gpgSign to false");
		}
		tag.setGpgSignature(new GpgSignature(signature(tag.build())));
	}

	private byte[] signature(byte[] content) throws IOException {
		List<String> command = new ArrayList<>();
		String program = config.getString("gpg", null, "program");
		command.add(program == null ? "gpg" : program);
		command.addAll(List.of("--status-fd=2", "-bsa"));
		String key = config.getString("user", null, "signingKey");
		if (key != null) {
			command.addAll(List.of("-u", key));
		}
		Path said = Files.createTempFile("signing", ".txt");
		Path signature = Files.createTempFile("signing", ".asc");
		try {
			Process process = new ProcessBuilder(command).redirectError(said.toFile()).redirectOutput(signature.toFile()).start();
			try (OutputStream in = process.getOutputStream()) {
				in.write(content);
			}
			boolean ended = process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
			if (!ended) {
				process.destroyForcibly();
			}
			if (!ended || process.exitValue() != 0 || Files.size(signature) == 0) {
				throw new ArchiveException("no tag was made: " + command.get(0) + " did not sign it: "
						+ Files.readString(said, StandardCharsets.UTF_8).strip(), "see to the key, or set tag.gpgSign to false");
			}
			return Files.readAllBytes(signature);
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			throw new ArchiveException("no tag was made: signing was interrupted", "try again", e);
		} finally {
			Files.delete(said);
			Files.delete(signature);
		}
	}
}
