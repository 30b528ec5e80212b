package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.internal.disk.HeadTrace;
import org.cairnfield.archive.internal.disk.Places;
import org.eclipse.jgit.errors.ConfigInvalidException;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.StoredConfig;

/**
 * Makes sure that the Git folder of an archive lies in the archive and leads nowhere else, before anything in it is read or
 * written: an archive may come from anybody. Files of objects are not looked at one by one; they are only read, or made anew.
 */
final class GitEnclosure {

	private static final String DISTRUST = "where it is not known who put it there, do not use the archive; otherwise ";
	private static final int LARGEST_REF_BYTES = 4096;
	private static final int LARGEST_CONFIG_BYTES = 1 << 20;

	private final Path root;
	private final Path git;

	private GitEnclosure(Path root) {
		this.root = root;
		this.git = root.resolve(Constants.DOT_GIT);
	}

	/**
	 * Passes a Git folder that leads nowhere else.
	 *
	 * @throws ArchiveException naming what leads out
	 * @throws DamagedException where the configuration cannot be read
	 */
	static void require(Path root) throws IOException {
		GitEnclosure enclosure = new GitEnclosure(root);
		enclosure.requireFolder(enclosure.git);
		enclosure.requirePlain(enclosure.git);
		for (String tree : List.of("refs", "logs")) {
			enclosure.requirePlainTree(enclosure.requireFolder(enclosure.git.resolve(tree)));
		}
		enclosure.requirePlain(enclosure.requireFolder(enclosure.git.resolve("info")));
		enclosure.requireOwnObjects(enclosure.requireFolder(enclosure.git.resolve("objects")));
		enclosure.requireNo("commondir", "shares its Git folder with another work tree", "clone the archive to work on it");
		enclosure.requireHarmlessConfig();
	}

	/** Takes away what the archive's own configuration says beyond its format. On disk it stays. */
	static void disarm(StoredConfig config) {
		for (String section : config.getSections()) {
			if (section.equals("core")) {
				config.getNames(section).stream().filter(name -> !name.equalsIgnoreCase("repositoryformatversion")).toList()
						.forEach(name -> config.unset(section, null, name));
				config.getSubsections(section).forEach(sub -> config.unsetSection(section, sub));
			} else if (!section.equals("extensions")) {
				config.getSubsections(section).forEach(sub -> config.unsetSection(section, sub));
				config.unsetSection(section, null);
			}
		}
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
						|| Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS), "file or folder");
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
			if (!name.startsWith(Constants.R_REFS) || !Repository.isValidRefName(name)
					|| file.startsWith(git.resolve(Constants.R_HEADS))) {
				throw refused(file, "names '" + shown(name) + "'", "have it name a commit, by its id");
			}
		}
	}

	private void requireOwnObjects(Path objects) throws IOException {
		requirePlain(objects);
		requirePlain(objects.resolve("info"));
		requirePlain(objects.resolve("pack"));
		requireNo("objects/info/alternates", "borrows objects of another repository",
				"run 'git repack -a -d' where it can be reached, then delete that file");
	}

	private void requireNo(String name, String what, String otherwise) throws ArchiveException {
		Path file = git.resolve(name);
		if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
			throw refused(file, what, otherwise);
		}
	}

	private void requireHarmlessConfig() throws IOException {
		Path file = git.resolve(Constants.CONFIG);
		if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
			return;
		}
		Config config = new Config(); // one that reads no further files
		try {
			config.fromText(text(file, LARGEST_CONFIG_BYTES));
			config.getInt("core", "repositoryformatversion", 0);
		} catch (ConfigInvalidException | IllegalArgumentException e) {
			Damage damage = new Damage(".git/config", 0, "cannot be read: " + e.getMessage(),
					"correct it, or delete it: an archive needs nothing of it");
			throw new DamagedException("the history of " + root + " is damaged: " + damage.file() + ' ' + damage.reason(), damage.remedy(),
					List.of(damage), e);
		}
		for (String section : config.getSections()) {
			if (section.toLowerCase(Locale.ROOT).startsWith("include")) {
				throw refused(file, "includes another file", "take the section [" + section + "] out of it");
			}
		}
		requireExtension(file, config, "refStorage", "files");
		requireExtension(file, config, "objectFormat", "sha1");
		requireExtension(file, config, "partialClone", "");
	}

	private void requireExtension(Path file, Config config, String name, String supported) throws ArchiveException {
		String value = config.getString("extensions", null, name);
		if (value != null && !value.equalsIgnoreCase(supported)) {
			throw refused(file, "asks for extensions." + name + " = " + shown(value) + ", which is not supported",
					"clone it with Git into a repository without that");
		}
	}

	private String text(Path file, int most) throws IOException {
		if (Files.size(file) > most) {
			throw refused(file, "is larger than any that Git writes", "restore it from a copy");
		}
		return Files.readString(file, StandardCharsets.ISO_8859_1);
	}

	private ArchiveException refused(Path file, String what, String otherwise) {
		return new ArchiveException("the history of " + root + " is not opened: " + root.relativize(file) + ' ' + what,
				DISTRUST + otherwise);
	}

	/** Text of a file that may hold anything, to be put in a message. */
	static String shown(String text) {
		String plain = text.replaceAll("[^\\x20-\\x7e]", "?");
		return plain.length() > 80 ? plain.substring(0, 80) + "…" : plain;
	}
}
