package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;

/**
 * Makes sure that the Git folder of an archive lies in the archive and leads nowhere else, before anything in it is read or
 * written: an archive may come from anybody. Of objects only the kinds of files are looked at: they are only read, or made
 * anew, but a pipe would keep a reader waiting for ever. No Git is loaded for it.
 */
public final class GitEnclosure {

	private static final String DISTRUST = Messages.GitEnclosure_whereItIsNotKnown;
	private static final int LARGEST_REF_BYTES = 4096;
	private static final Pattern NOT_PLAIN = Pattern.compile("include|extensions", Pattern.CASE_INSENSITIVE);

	private final Path root;
	private final Path git;

	private GitEnclosure(Path root) {
		this.root = root;
		this.git = root.resolve(Places.GIT);
	}

	/**
	 * Passes a Git folder that leads nowhere else.
	 *
	 * @throws ArchiveException naming what leads out
	 */
	public static void require(Path root) throws IOException {
		GitEnclosure enclosure = new GitEnclosure(root);
		enclosure.requireFolder(enclosure.git);
		enclosure.requirePlain(enclosure.git);
		for (String tree : List.of("refs", "logs")) {
			enclosure.requirePlainTree(enclosure.requireFolder(enclosure.git.resolve(tree)));
		}
		enclosure.requirePlain(enclosure.requireFolder(enclosure.git.resolve("info")));
		enclosure.requireOwnObjects(enclosure.requireFolder(enclosure.git.resolve("objects")));
		enclosure.requireNo("commondir", Messages.GitEnclosure_sharesItsGitFolderWith,
				Messages.GitEnclosure_cloneTheArchiveToWork);
	}

	/** Whether the archive's own configuration of Git is so plain that it need not be looked at any closer. */
	public static boolean hasPlainConfig(Path root) throws IOException {
		GitEnclosure enclosure = new GitEnclosure(root);
		Path config = enclosure.git.resolve("config");
		return !Places.isFile(config) || Files.size(config) < LARGEST_REF_BYTES
				&& !NOT_PLAIN.matcher(enclosure.text(config, LARGEST_REF_BYTES)).find();
	}

	private Path requireFolder(Path folder) throws ArchiveException {
		return Places.requireKind(root, folder, Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS), "folder");
	}

	/** The entries of a folder are files and folders, no links, pipes or devices. */
	private void requirePlain(Path folder) throws IOException {
		if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
			return;
		}
		try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
			for (Path entry : entries) {
				Places.requireKind(root, entry, Files.isRegularFile(entry, LinkOption.NOFOLLOW_LINKS)
						|| Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS), Messages.GitEnclosure_fileOrFolder);
			}
		}
	}

	private void requirePlainTree(Path folder) throws IOException {
		if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
			return;
		}
		requirePlain(folder);
		boolean refs = folder.startsWith(git.resolve("refs"));
		try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
			for (Path entry : entries) {
				if (Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
					requirePlainTree(entry);
				} else if (refs) {
					requireRefInside(entry);
				}
			}
		}
	}

	/** A reference may name another one, and Git then writes that: it must be a sound name of one. */
	private void requireRefInside(Path file) throws IOException {
		String text = text(file, LARGEST_REF_BYTES);
		if (text.startsWith(HeadTrace.SYMBOLIC)) {
			String name = text.substring(HeadTrace.SYMBOLIC.length()).strip();
			if (!HeadTrace.isReference(name) || file.startsWith(git.resolve(HeadTrace.BRANCHES))) {
				throw refused(file, Words.bind(Messages.GitEnclosure_names, Places.shown(name)),
						Messages.GitEnclosure_haveItNameACommit);
			}
		}
	}

	private void requireOwnObjects(Path objects) throws IOException {
		requirePlain(objects);
		if (Files.isDirectory(objects, LinkOption.NOFOLLOW_LINKS)) {
			try (DirectoryStream<Path> folders = Files.newDirectoryStream(objects)) {
				for (Path folder : folders) {
					requirePlain(folder);
				}
			}
		}
		requireNo("objects/info/alternates", Messages.GitEnclosure_borrowsObjectsOfAnotherRepository,
				Messages.GitEnclosure_runGitRepackAD);
	}

	private void requireNo(String name, String what, String otherwise) throws ArchiveException {
		Path file = git.resolve(name);
		if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
			throw refused(file, what, otherwise);
		}
	}

	private String text(Path file, int most) throws IOException {
		if (Files.size(file) > most) {
			throw refused(file, Messages.GitEnclosure_isLargerThanAnyThat, Messages.GitEnclosure_restoreItFromACopy);
		}
		return Files.readString(file, StandardCharsets.ISO_8859_1);
	}

	private ArchiveException refused(Path file, String what, String otherwise) {
		return new ArchiveException(
				Words.bind(Messages.GitEnclosure_theHistoryOfIsNot, root, root.relativize(file), what),
				DISTRUST + otherwise);
	}
}
