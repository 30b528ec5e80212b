package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.internal.disk.Places;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.errors.ConfigInvalidException;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.StoredConfig;

/** The archive's own configuration of Git. Whoever made the archive wrote it, so nothing of it counts but its format. */
final class OwnConfig {

	private static final int LARGEST_BYTES = 1 << 20;

	private OwnConfig() {
	}

	/** Takes away what the archive's own configuration says beyond its format. On disk it stays. */
	static void disarm(StoredConfig config) {
		for (String section : config.getSections()) {
			if (section.equals("core")) {
				config.getNames(section).stream().filter(name -> !name.equalsIgnoreCase("repositoryformatversion"))
						.toList()
						.forEach(name -> config.unset(section, null, name));
				config.getSubsections(section).forEach(sub -> config.unsetSection(section, sub));
			} else if (!section.equals("extensions")) {
				config.getSubsections(section).forEach(sub -> config.unsetSection(section, sub));
				config.unsetSection(section, null);
			}
		}
	}

	/**
	 * Passes a configuration that reads no other file and asks for nothing that is not supported.
	 *
	 * @throws ArchiveException naming what it asks for
	 * @throws DamagedException where it cannot be read
	 */
	static void require(Path root) throws IOException {
		Path file = root.resolve(Constants.DOT_GIT).resolve(Constants.CONFIG);
		if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
			return;
		}
		Config config = new Config(); // one that reads no further files
		try {
			config.fromText(text(root, file));
			config.getInt("core", "repositoryformatversion", 0);
		} catch (ConfigInvalidException | IllegalArgumentException e) {
			Damage damage = new Damage(".git/config", 0, Words.bind(Messages.OwnConfig_cannotBeRead, e.getMessage()),
					Messages.OwnConfig_correctItOrDeleteIt);
			throw new DamagedException(
					Words.bind(Messages.OwnConfig_theHistoryOfIsDamaged, root, damage.file(), damage.reason()),
					damage.remedy(),
					List.of(damage), e);
		}
		for (String section : config.getSections()) {
			if (section.toLowerCase(Locale.ROOT).startsWith("include")) {
				throw refused(root, Messages.OwnConfig_includesAnotherFile,
						Words.bind(Messages.OwnConfig_takeTheSectionOutOf, section));
			}
		}
		requireExtension(root, config, "refStorage", "files");
		requireExtension(root, config, "objectFormat", "sha1");
		requireExtension(root, config, "partialClone", "");
	}

	private static void requireExtension(Path root, Config config, String name, String supported)
			throws ArchiveException {
		String value = config.getString("extensions", null, name);
		if (value != null && !value.equalsIgnoreCase(supported)) {
			throw refused(root,
					Words.bind(Messages.OwnConfig_asksForExtensionsWhichIs, name, Places.shown(value)),
					Messages.OwnConfig_cloneItWithGitInto);
		}
	}

	private static String text(Path root, Path file) throws IOException {
		if (Files.size(file) > LARGEST_BYTES) {
			throw refused(root, Messages.OwnConfig_isLargerThanAnyThat, Messages.OwnConfig_deleteItAnArchiveNeeds);
		}
		return Files.readString(file, StandardCharsets.ISO_8859_1);
	}

	private static ArchiveException refused(Path root, String what, String otherwise) {
		return new ArchiveException(Words.bind(Messages.OwnConfig_theHistoryOfIsNot, root, what),
				Words.bind(Messages.OwnConfig_whereItIsNotKnown, otherwise));
	}
}
