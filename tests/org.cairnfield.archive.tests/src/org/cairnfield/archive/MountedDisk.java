package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** A small disk of its own, mounted for a test. Skips the test where there is no right to do so. */
final class MountedDisk implements AutoCloseable {

	private final Path place;
	private int mounts;

	/** @param size as mount has it, such as 2m */
	MountedDisk(Path place, String size) throws IOException {
		this.place = Files.createDirectory(place);
		assumeTrue(run("mount", "-t", "tmpfs", "-o", "size=" + size, "tmpfs", place.toString()),
				"no right to mount a small disk here");
		mounts = 1;
	}

	Path place() {
		return place;
	}

	/** By a second mount on top, which is no matter of what files are open below. */
	void makeReadOnly() {
		assumeTrue(run("mount", "--bind", place.toString(), place.toString()), "no right to mount read-only here");
		mounts = 2;
		assumeTrue(run("mount", "-o", "remount,bind,ro", place.toString()), "no right to mount read-only here");
	}

	/** As it was before {@link #makeReadOnly}. */
	void makeWritable() {
		assertTrue(run("mount", "-o", "remount,bind,rw", place.toString()));
	}

	@Override
	public void close() {
		for (; mounts > 0; mounts--) {
			assertTrue(run("umount", "-l", place.toString())); // Git keeps packs open for a while
		}
	}

	private static boolean run(String... command) {
		try {
			Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
			process.getInputStream().readAllBytes();
			return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
		} catch (IOException e) {
			return false;
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			return false;
		}
	}
}
