package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.errors.ConfigInvalidException;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/**
 * Git's configuration of the user and of the machine. That of the archive's own repository is left out: whoever hands over
 * an archive must not be able to name a program that runs here, or a key that counts here.
 */
final class UserGit {

	/** Names a file in place of the user's own configuration, as the variable GIT_CONFIG_GLOBAL does for Git. */
	static final String PROPERTY = "cairnfield.git.config";

	private final Path root;
	private final Config config;

	private UserGit(Path root, Config config) {
		this.root = root;
		this.config = config;
	}

	/** @param root folder of the archive, from which nothing is run */
	static UserGit of(Path root) throws ArchiveException {
		try {
			String file = System.getProperty(PROPERTY, System.getenv("GIT_CONFIG_GLOBAL"));
			if (file == null) {
				return new UserGit(root, SystemReader.getInstance().getUserConfig());
			}
			FileBasedConfig config = new FileBasedConfig(SystemReader.getInstance().getSystemConfig(),
					Path.of(file).toFile(), FS.DETECTED);
			config.load();
			return new UserGit(root, config);
		} catch (IOException | ConfigInvalidException e) {
			throw new ArchiveException(Words.bind(Messages.UserGit_theUserSConfigurationOf, e.getMessage()),
					Messages.UserGit_correctIt, e);
		}
	}

	/** Whether annotated tags are to be signed. */
	boolean signsTags() {
		return config.getBoolean("tag", "gpgSign", false) || config.getBoolean("tag", "forceSignAnnotated", false);
	}

	/** Whether commits are to be signed. */
	boolean signsCommits() {
		return config.getBoolean("commit", "gpgSign", false);
	}

	/** {@code gpg.format}, openpgp where nothing is set. */
	String format() {
		String format = config.getString("gpg", null, "format");
		return format == null ? "openpgp" : format;
	}

	/** {@code user.signingKey}; null where nothing is set. */
	String signingKey() {
		return config.getString("user", null, "signingKey");
	}

	/** The file with the keys of people, for signatures by SSH; null where nothing is set. */
	Path allowedSigners() {
		String file = config.getString("gpg", "ssh", "allowedSignersFile");
		return file == null ? null : path(file);
	}

	/** The program for OpenPGP; null where it is not installed. */
	Path gpg() throws ArchiveException {
		String program = config.getString("gpg", "openpgp", "program");
		program = program == null ? config.getString("gpg", null, "program") : program;
		return program(program == null ? "gpg" : program);
	}

	/** The program for SSH; null where it is not installed. */
	Path sshKeygen() throws ArchiveException {
		String program = config.getString("gpg", "ssh", "program");
		return program(program == null ? "ssh-keygen" : program);
	}

	/**
	 * The command that reaches other hosts: {@code GIT_SSH_COMMAND}, {@code core.sshCommand}, or ssh.
	 *
	 * @throws ArchiveException where there is none
	 */
	List<String> ssh() throws ArchiveException {
		String set = System.getenv("GIT_SSH_COMMAND");
		set = set == null ? config.getString("core", null, "sshCommand") : set;
		List<String> words = new ArrayList<>(
				List.of((set == null || set.isBlank() ? "ssh" : set.strip()).split("\\s+")));
		Path program = program(words.get(0));
		if (program == null) {
			throw new ArchiveException(Words.bind(Messages.UserGit_thereIsNoProgramTo, words.get(0)),
					Messages.UserGit_installSshOrUseAnother);
		}
		words.set(0, program.toString());
		return words;
	}

	/** Git itself; null where it is not installed. */
	Path git() throws ArchiveException {
		return program("git");
	}

	/** A path as Git reads it, where ~/ is the user's home. */
	static Path path(String text) {
		return text.startsWith("~/") ? Path.of(System.getProperty("user.home")).resolve(text.substring(2))
				: Path.of(text);
	}

	private Path program(String name) throws ArchiveException {
		if (name.indexOf('/') >= 0 || name.indexOf('\\') >= 0) {
			Path program = path(name);
			return program.isAbsolute() && Files.isExecutable(program) ? outside(program) : null;
		}
		String path = System.getenv("PATH");
		for (String folder : path == null ? new String[0] : path.split(Pattern.quote(java.io.File.pathSeparator))) {
			for (String end : new String[] { "", ".exe" }) {
				Path program = Path.of(folder, name + end);
				if (program.isAbsolute() && Files.isRegularFile(program) && Files.isExecutable(program)) {
					return outside(program);
				}
			}
		}
		return null;
	}

	private Path outside(Path program) throws ArchiveException {
		try {
			if (program.toRealPath().startsWith(root.toRealPath())) {
				throw new ArchiveException(Words.bind(Messages.UserGit_gitIsConfiguredToRun, program),
						Messages.UserGit_nameAProgramOutsideOf);
			}
			return program;
		} catch (ArchiveException e) {
			throw e;
		} catch (IOException e) {
			return null;
		}
	}
}
