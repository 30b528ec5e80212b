package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;

/** Runs a program of the user's, such as one for signatures, in a private folder for what it reads and writes. */
final class Program implements AutoCloseable {

	private static final int PATIENCE_SECONDS = 120;
	private static final int MOST_BYTES = 1 << 20;

	/**
	 * What a program did.
	 *
	 * @param out standard output, at most a mebibyte of it
	 */
	record Done(int exit, byte[] out, String err) {

		String text() {
			return new String(out, StandardCharsets.UTF_8);
		}
	}

	private final Path folder;
	private int runs;

	Program() throws IOException {
		folder = Files.createTempDirectory("signature");
	}

	/** A new file for the program to read. */
	Path file(String name, byte[] content) throws IOException {
		return Files.write(folder.resolve(name), content);
	}

	Done run(List<String> command, byte[] in) throws IOException {
		return run(command, in, Map.of());
	}

	/** @param environment added to that of this process */
	Done run(List<String> command, byte[] in, Map<String, String> environment) throws IOException {
		Path out = folder.resolve("out" + runs);
		Path err = folder.resolve("err" + runs++);
		ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile()).redirectOutput(out.toFile())
				.redirectError(err.toFile());
		builder.environment().put("LC_ALL", "C.UTF-8");
		builder.environment().putAll(environment);
		Process process = builder.start();
		try (OutputStream to = process.getOutputStream()) {
			to.write(in);
		} catch (IOException e) {
			// it did not want to read all; its exit code tells
		}
		try {
			if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
				process.destroyForcibly();
				throw new ArchiveException(
						Words.bind(Messages.Program_hadNotEndedAfterS, command.get(0), PATIENCE_SECONDS),
						Messages.Program_lookWhatItWaitsFor);
			}
		} catch (InterruptedException e) {
			process.destroyForcibly();
			Thread.currentThread().interrupt();
			throw new ArchiveException(Words.bind(Messages.Program_wasInterrupted, command.get(0)),
					Messages.Program_tryAgain, e);
		}
		return new Done(process.exitValue(), bytes(out), new String(bytes(err), StandardCharsets.UTF_8).strip());
	}

	private static byte[] bytes(Path file) throws IOException {
		try (var in = Files.newInputStream(file)) {
			return in.readNBytes(MOST_BYTES);
		}
	}

	@Override
	public void close() throws IOException {
		List<Path> left = new ArrayList<>();
		try (var files = Files.newDirectoryStream(folder)) {
			files.forEach(left::add);
		}
		for (Path file : left) {
			Files.deleteIfExists(file);
		}
		Files.deleteIfExists(folder);
	}
}
