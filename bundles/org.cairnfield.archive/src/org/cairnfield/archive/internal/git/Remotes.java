package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.file.Path;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.errors.ConfigInvalidException;
import org.eclipse.jgit.lib.ConfigConstants;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;

/** Where an archive is exchanged, kept where Git keeps it, so that plain Git knows it as well. */
public final class Remotes {

	/** What Git calls the one remote. */
	public static final String NAME = Constants.DEFAULT_REMOTE_NAME;

	private Remotes() {
	}

	/**
	 * The remote of an archive; null where it is connected to none.
	 *
	 * @throws ArchiveException where the configuration names something that cannot be trusted
	 */
	public static RemoteUrl of(Path root) throws IOException {
		OwnConfig.require(root);
		String url = load(root).getString(ConfigConstants.CONFIG_REMOTE_SECTION, NAME, ConfigConstants.CONFIG_KEY_URL);
		return url == null ? null : RemoteUrl.parse(url);
	}

	/** Connects an archive. What was known of an earlier remote is forgotten by the caller. */
	static void set(Path root, RemoteUrl url, String branch) throws IOException {
		FileBasedConfig config = load(root);
		config.setString(ConfigConstants.CONFIG_REMOTE_SECTION, NAME, ConfigConstants.CONFIG_KEY_URL, url.text());
		config.setString(ConfigConstants.CONFIG_REMOTE_SECTION, NAME, "fetch",
				"+refs/heads/*:refs/remotes/" + NAME + "/*");
		config.setString(ConfigConstants.CONFIG_BRANCH_SECTION, branch, ConfigConstants.CONFIG_KEY_REMOTE, NAME);
		config.setString(ConfigConstants.CONFIG_BRANCH_SECTION, branch, ConfigConstants.CONFIG_KEY_MERGE,
				Constants.R_HEADS + branch);
		config.save();
	}

	/** Reads no other file, whatever it includes. */
	private static FileBasedConfig load(Path root) throws IOException {
		FileBasedConfig config = new FileBasedConfig(root.resolve(Constants.DOT_GIT).resolve(Constants.CONFIG).toFile(),
				FS.DETECTED);
		try {
			config.load();
		} catch (ConfigInvalidException e) {
			throw new ArchiveException(Words.bind(Messages.Remotes_gitConfigCannotBeRead, e.getMessage()),
					Messages.Remotes_correctItOrDeleteIt, e);
		}
		return config;
	}
}
