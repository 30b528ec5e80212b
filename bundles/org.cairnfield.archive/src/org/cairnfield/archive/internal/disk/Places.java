package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;

/** Where things lie in the folder of an archive, and that nothing reaches out of it. */
public final class Places {

	/** Our own files, which Git does not see. */
	static final String PRIVATE = ".cairnfield";
	static final String PENDING = "pending";
	static final String JOURNAL = PRIVATE + "/journal";

	/** Git's folder. */
	static final String GIT = ".git";

	/** Files that were damaged when a save point was restored over them. */
	private static final String DAMAGED = "damaged";

	private Places() {
	}

	/**
	 * The one real path of an archive, by whichever link, relative path or {@code ..} it was reached. Everything else goes by
	 * it: the lock, the drafts, and the checks that nothing below it is a link.
	 *
	 * @return where the folder does not exist, the path made absolute
	 */
	public static Path real(Path folder) throws IOException {
		try {
			return folder.toRealPath();
		} catch (NoSuchFileException e) {
			return folder.toAbsolutePath().normalize();
		}
	}

	/**
	 * Whether a path is relative, in its simplest form, goes down only, and keeps out of the folders of Git and of our own:
	 * {@code surveys/th/spring.samples}.
	 */
	public static boolean staysInside(String path) {
		if (path.isEmpty() || path.indexOf('\\') >= 0 || path.indexOf('\0') >= 0 || path.indexOf(':') >= 0) {
			return false;
		}
		for (String step : path.split("/", -1)) {
			if (step.isEmpty() || step.equals(".") || step.equals("..")) {
				return false;
			}
		}
		String first = path.split("/", 2)[0].toLowerCase(Locale.ROOT);
		return !first.equals(GIT) && !first.equals(PRIVATE);
	}

	/**
	 * A file of the private folder, there or not. Every way to one goes through here.
	 *
	 * @throws ArchiveException where it, or the private folder, is a link or anything else that a save could not have made
	 */
	public static Path privateFile(Path root, String name) throws IOException {
		Path file = privateFolder(root).resolve(name);
		return requireKind(root, file, Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS), "file");
	}

	/** A folder in the private folder, likewise. */
	public static Path privateFolder(Path root, String name) throws IOException {
		Path folder = privateFolder(root).resolve(name);
		return requireKind(root, folder, isFolder(folder), "folder");
	}

	/** The private folder itself, likewise. */
	static Path privateFolder(Path root) throws IOException {
		Path own = root.resolve(PRIVATE);
		return requireKind(root, own, isFolder(own), "folder");
	}

	/** A file that waits to be put in place, likewise. */
	static Path pendingFile(Path root, String name) throws IOException {
		Path file = privateFolder(root, PENDING).resolve(name);
		return requireKind(root, file, Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS), "file");
	}

	/**
	 * Passes what is of the right kind or not there at all.
	 *
	 * @throws ArchiveException otherwise, naming the file by its path below the root
	 */
	public static Path requireKind(Path root, Path file, boolean isRight, String kind) throws ArchiveException {
		if (!isRight && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
			String what = Files.isSymbolicLink(file) ? Messages.Places_isASymbolicLinkWhich
					: Words.bind(Messages.Places_isNoPlain, kind);
			throw new ArchiveException(Words.bind(Messages.Places_isNotOpened, root, root.relativize(file), what),
					Words.bind(Messages.Places_whereItIsNotKnown, kind));
		}
		return file;
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
				throw new ArchiveException(Words.bind(Messages.Places_goesThroughASymbolicLink, path),
						Words.bind(Messages.Places_replaceByWhatItPoints, root.relativize(step)));
			}
		}
		return file;
	}

	private static ArchiveException outside(String path) {
		return new ArchiveException(Words.bind(Messages.Places_leadsOutOfTheArchive, path),
				Messages.Places_moveTheFileIntoThe);
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
		Path all = privateFolder(root, DAMAGED);
		Files.createDirectories(all);
		int n = 1;
		while (Files.exists(all.resolve(Integer.toString(n)), LinkOption.NOFOLLOW_LINKS)) {
			n++;
		}
		return Files.createDirectory(all.resolve(Integer.toString(n)));
	}

	/** Text of a file that may hold anything, to be put in a message. */
	public static String shown(String text) {
		String plain = text.replaceAll("[^\\x20-\\x7e]", "?");
		return plain.length() > 80 ? plain.substring(0, 80) + "…" : plain;
	}
}
