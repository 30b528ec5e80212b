package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** What can be told of the Git repository of a folder without opening it, and so without loading a Git. */
public final class GitTraces {

	private GitTraces() {
	}

	/** Whether the folder itself is a repository; one that lies further up does not count. */
	public static boolean isRepository(Path root) {
		return Files.exists(root.resolve(Places.GIT), LinkOption.NOFOLLOW_LINKS);
	}

	/** Whether the history was cut off at some save points, which Git takes for its beginning. */
	public static boolean isShallow(Path root) {
		Path file = root.resolve(Places.GIT).resolve("shallow");
		try {
			return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) > 0;
		} catch (IOException e) {
			return true; // whatever it is, the history is not whole
		}
	}

	/** There while a commit of ours is being made, and after it was interrupted. */
	public static Path committingNote(Path root) throws IOException {
		return Places.privateFile(root, "committing");
	}
}
