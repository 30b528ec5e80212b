package org.cairnfield.exchange.export;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;

/** Where files are written that are to appear in a folder together: in the folder itself where it is there, otherwise beside it. */
final class PartFolder implements AutoCloseable {

	private final Path target;
	private final Path part;

	private PartFolder(Path target, Path part) {
		this.target = target;
		this.part = part;
	}

	static PartFolder of(Path folder) throws IOException {
		Path target = folder.toAbsolutePath().normalize();
		Path around = Files.isDirectory(target) ? target : target.getParent();
		Files.createDirectories(around);
		return new PartFolder(target, Files.createTempDirectory(around, ".export-"));
	}

	Path path() {
		return part;
	}

	Path resolve(String name) {
		return part.resolve(name);
	}

	/** @param names the file that vouches for the others last */
	void putInPlace(List<String> names) throws IOException {
		Files.createDirectories(target);
		Files.deleteIfExists(target.resolve(names.get(names.size() - 1)));
		for (String name : names) {
			move(part.resolve(name), target.resolve(name));
		}
	}

	private static void move(Path from, Path to) throws IOException {
		try {
			Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
		} catch (AtomicMoveNotSupportedException e) {
			Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
		}
	}

	/** Removes what was not put in place. */
	@Override
	public void close() throws IOException {
		if (Files.isDirectory(part)) {
			try (Stream<Path> left = Files.list(part)) {
				for (Path file : left.toList()) {
					Files.delete(file);
				}
			}
			Files.delete(part);
		}
	}
}
