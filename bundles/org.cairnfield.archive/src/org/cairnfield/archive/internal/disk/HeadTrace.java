package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Where the history of a folder stands, read from Git's files without loading a Git. It does not look whether the commit is
 * there.
 *
 * @param branch full name of the branch that HEAD names; null where it names a commit, or is damaged
 * @param id     40 hexadecimal digits of the present commit; null where the branch has none, or something is damaged
 * @param loose  whether the id comes from HEAD or from a file of the branch, not from the list of packed references
 * @param broken path, below the folder, of the file that is not as Git writes it; null where none is
 * @param reason what is wrong with that file; null where nothing is
 */
public record HeadTrace(String branch, String id, boolean loose, String broken, String reason) {

	/** Begins a file that names a reference. */
	public static final String SYMBOLIC = "ref: ";
	/** Begins the full name of a branch. */
	public static final String BRANCHES = "refs/heads/";

	private static final String HEAD = Places.GIT + "/HEAD";
	private static final String PACKED = "packed-refs";
	private static final int LARGEST_BYTES = 4096;
	private static final Pattern LOG_LINE = Pattern.compile("[0-9a-f]{40} [0-9a-f]{40} .*");
	private static final Pattern ID = Pattern.compile("[0-9a-f]{40}");
	/** Git's rules for names: no steps that are empty or begin with a dot, none of its special characters. */
	private static final Pattern NAME = Pattern
			.compile("[^\\x00-\\x20\\x7f~^:?*\\[\\\\/.][^\\x00-\\x20\\x7f~^:?*\\[\\\\/]*"
					+ "(/[^\\x00-\\x20\\x7f~^:?*\\[\\\\/.][^\\x00-\\x20\\x7f~^:?*\\[\\\\/]*)*");

	/** Looks at HEAD and the branch that it names. */
	public static HeadTrace of(Path root) throws IOException {
		Path git = root.resolve(Places.GIT);
		String head = text(root, git.resolve("HEAD"));
		if (head == null) {
			return broken(HEAD, Messages.HeadTrace_isMissing);
		}
		if (ID.matcher(head).matches()) {
			return new HeadTrace(null, head, true, null, null);
		}
		String branch = head.startsWith(SYMBOLIC) ? head.substring(SYMBOLIC.length()).strip() : "";
		if (!isBranch(branch)) {
			return broken(HEAD,
					head.isEmpty() ? Messages.HeadTrace_isEmpty : Messages.HeadTrace_namesNeitherABranchNor);
		}
		Path file = git.resolve(branch);
		requireFolders(root, git, file);
		if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.isSymbolicLink(file)) {
			String id = text(root, file);
			return ID.matcher(id).matches() ? new HeadTrace(branch, id, true, null, null)
					: broken(Places.GIT + '/' + branch,
							id.isEmpty() ? Messages.HeadTrace_isEmpty : Messages.HeadTrace_holdsNoIdOfA);
		}
		return new HeadTrace(branch, packed(root, branch), false, null, null);
	}

	/**
	 * Whether a closer look is due: something is broken, there is no commit although there are traces of some, or the commit is
	 * not where it would be. Cheap, and right where all is well.
	 */
	public boolean isSuspicious(Path root) throws IOException {
		Path git = root.resolve(Places.GIT);
		Path objects = git.resolve("objects");
		if (broken != null) {
			return true;
		}
		if (id == null) {
			return Files.exists(git.resolve(PACKED)) || !logged(root, "HEAD").isEmpty() || hasPacks(objects)
					|| hasLooseObjects(objects);
		}
		if (!loose) {
			List<String> log = logged(root, branch);
			return !log.isEmpty() && !log.get(0).equals(id);
		}
		return !Places.isFile(objects.resolve(id.substring(0, 2)).resolve(id.substring(2))) && !hasPacks(objects);
	}

	/** Whether objects are packed, in a folder of Git's objects. */
	public static boolean hasPacks(Path objects) throws IOException {
		return Places.isFolder(objects.resolve("pack")) && isAny(objects.resolve("pack"), "*.pack");
	}

	private static boolean hasLooseObjects(Path objects) throws IOException {
		return Places.isFolder(objects) && isAny(objects, "[0-9a-f][0-9a-f]");
	}

	private static boolean isAny(Path folder, String pattern) throws IOException {
		try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, pattern)) {
			return files.iterator().hasNext();
		}
	}

	/** Ids that the log of a reference has, the latest first; empty where there is none. */
	public static List<String> logged(Path root, String reference) throws IOException {
		Path file = root.resolve(Places.GIT).resolve("logs").resolve(reference);
		requireFolders(root, root.resolve(Places.GIT), file);
		Places.requireKind(root, file, Places.isFile(file), "file");
		if (!Places.isFile(file)) {
			return List.of();
		}
		List<String> ids = new ArrayList<>();
		for (String line : Files.readString(file, StandardCharsets.ISO_8859_1).split("\n")) {
			if (LOG_LINE.matcher(line).matches()) {
				ids.add(line.substring(0, 40));
				ids.add(line.substring(41, 81));
			}
		}
		ids.removeIf("0".repeat(40)::equals);
		Collections.reverse(ids);
		return ids;
	}

	private static HeadTrace broken(String file, String reason) {
		return new HeadTrace(null, null, false, file, reason);
	}

	/** Whether a full name is that of a branch, as Git would have it. */
	public static boolean isBranch(String name) {
		return name.startsWith(BRANCHES) && isReference(name);
	}

	/** Whether a full name is that of a reference, as Git would have it. */
	static boolean isReference(String name) {
		return name.startsWith("refs/") && NAME.matcher(name).matches() && !name.contains("..") && !name.contains("@{")
				&& !name.endsWith(".") && !(name + '/').contains(".lock/");
	}

	private static void requireFolders(Path root, Path git, Path file) throws IOException {
		for (Path step = file.getParent(); !step.equals(git); step = step.getParent()) {
			Places.requireKind(root, step, Places.isFolder(step), "folder");
		}
		Places.requireKind(root, git, Places.isFolder(git), "folder");
	}

	/** Without white space around; null where there is no such file. */
	private static String text(Path root, Path file) throws IOException {
		Places.requireKind(root, file, Places.isFile(file), "file");
		if (!Places.isFile(file)) {
			return null;
		}
		return Files.size(file) > LARGEST_BYTES ? "-" : Files.readString(file, StandardCharsets.ISO_8859_1).strip();
	}

	private static String packed(Path root, String branch) throws IOException {
		Path file = root.resolve(Places.GIT).resolve(PACKED);
		Places.requireKind(root, file, Places.isFile(file), "file");
		if (!Places.isFile(file)) {
			return null;
		}
		try (Stream<String> lines = Files.lines(file, StandardCharsets.ISO_8859_1)) {
			return lines.filter(line -> line.length() > 41 && line.substring(41).equals(branch))
					.map(line -> line.substring(0, 40))
					.filter(id -> ID.matcher(id).matches()).findFirst().orElse(null);
		}
	}
}
