package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.regex.Pattern;

/**
 * Up to which save point all merges were looked at and found sound, so that an archive opens without a look at its history.
 * A file of one line in the private folder. Losing it costs a look, so it is not saved as carefully as others.
 */
public final class SeenMerges {

	private static final String FILE = "merges-seen";
	private static final int BYTES = 41;
	private static final Pattern LINE = Pattern.compile("[0-9a-f]{40}\n");

	private SeenMerges() {
	}

	/** Id of the save point; null where it is not known. */
	public static String read(Path root) throws IOException {
		Path file = Places.privateFile(root, FILE);
		if (!Places.isFile(file) || Files.size(file) != BYTES) {
			return null;
		}
		String line = Files.readString(file, StandardCharsets.ISO_8859_1);
		return LINE.matcher(line).matches() ? line.strip() : null;
	}

	/** Notes it down. Needs the lock of the folder. */
	public static void write(Path root, String id) throws IOException {
		Path part = Places.privateFile(root, FILE + ".part");
		Files.deleteIfExists(part); // whatever other name it has is not written to
		Files.writeString(part, id + '\n', StandardCharsets.ISO_8859_1, StandardOpenOption.CREATE_NEW,
				StandardOpenOption.WRITE);
		Files.move(part, Places.privateFile(root, FILE), StandardCopyOption.ATOMIC_MOVE,
				StandardCopyOption.REPLACE_EXISTING);
	}
}
