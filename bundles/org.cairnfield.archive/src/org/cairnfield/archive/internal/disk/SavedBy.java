package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Who saved what no save point has yet, so that it is recorded under that name whoever makes the next save point. A file of
 * one line in the private folder; it is there from a save until the next save point.
 */
public final class SavedBy {

	private static final String FILE = "saved-by";
	private static final int LONGEST_BYTES = 1000;

	private SavedBy() {
	}

	/** The name; empty where nobody has saved since the last save point, or it is not known. */
	public static Optional<String> read(Path root) throws IOException {
		Path file = Places.privateFile(root, FILE);
		if (!Places.isFile(file) || Files.size(file) > LONGEST_BYTES) {
			return Optional.empty();
		}
		String name = new String(Files.readAllBytes(file), StandardCharsets.UTF_8).strip();
		return name.isEmpty() || name.chars().anyMatch(c -> Character.isISOControl(c) || c == '<' || c == '>')
				? Optional.empty()
				: Optional.of(name);
	}

	/** Notes a name down, in one step. */
	public static void write(Disk disk, Path root, String name) throws IOException {
		Path part = Places.privateFile(root, FILE + ".part");
		try (Disk.Sink out = disk.write(part)) {
			out.write((name + '\n').getBytes(StandardCharsets.UTF_8));
			out.sync();
		}
		disk.move(part, Places.privateFile(root, FILE));
	}

	/** All that was saved is in a save point. */
	public static void clear(Disk disk, Path root) throws IOException {
		Path file = Places.privateFile(root, FILE);
		if (Places.isFile(file)) {
			disk.delete(file);
		}
	}
}
