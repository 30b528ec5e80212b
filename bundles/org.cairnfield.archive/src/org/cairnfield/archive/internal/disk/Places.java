package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;

import org.cairnfield.archive.fault.ArchiveException;

/** Where things lie in the folder of an archive, and that nothing reaches out of it. */
public final class Places {

	/** Our own files, which Git does not see. */
	static final String PRIVATE = ".cairnfield";
	static final String PENDING = PRIVATE + "/pending";
	static final String JOURNAL = PRIVATE + "/journal";

	/** Files that were damaged when a save point was restored over them. */
	private static final String DAMAGED = PRIVATE + "/damaged";

	private Places() {
	}

	/** Whether a path is relative, in its simplest form, and goes down only: {@code surveys/th/spring.samples}. */
	public static boolean staysInside(String path) {
		if (path.isEmpty() || path.indexOf('\\') >= 0 || path.indexOf('\0') >= 0 || path.indexOf(':') >= 0) {
			return false;
		}
		for (String step : path.split("/", -1)) {
			if (step.isEmpty() || step.equals(".") || step.equals("..")) {
				return false;
			}
		}
		return true;
	}

	/**
	 * The file at a path below the folder.
	 *
	 * @throws ArchiveException for a path that leads out of the folder, by its steps or through a link
	 */
	public static Path inside(Path root, String path) throws IOException {
		if (!staysInside(path)) {
			throw outside(path);
		}
		Path file;
		try {
			file = root.resolve(path);
		} catch (InvalidPathException e) {
			throw outside(path);
		}
		for (Path step = file; step != null && !step.equals(root); step = step.getParent()) {
			if (Files.isSymbolicLink(step)) {
				throw new ArchiveException(path + " goes through a symbolic link, which could lead out of the archive",
						"replace " + root.relativize(step) + " by what it points to");
			}
		}
		return file;
	}

	private static ArchiveException outside(String path) {
		return new ArchiveException("'" + path + "' leads out of the archive and is not followed",
				"move the file into the folder of the archive and refer to it there");
	}

	/** Whether a regular file is there, not a link to one. */
	public static boolean isFile(Path file) {
		return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
	}

	/** Whether a folder is there, not a link to one. */
	static boolean isFolder(Path file) {
		return Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS);
	}

	/** Whether the folder was ever opened as an archive. */
	public static boolean hasPrivateFolder(Path root) {
		return isFolder(root.resolve(PRIVATE));
	}

	/** A new folder for damaged files that are to be replaced. */
	public static Path newFolderForDamaged(Path root) throws IOException {
		Path all = root.resolve(DAMAGED);
		Files.createDirectories(all);
		int n = 1;
		while (Files.exists(all.resolve(Integer.toString(n)))) {
			n++;
		}
		return Files.createDirectory(all.resolve(Integer.toString(n)));
	}
}
