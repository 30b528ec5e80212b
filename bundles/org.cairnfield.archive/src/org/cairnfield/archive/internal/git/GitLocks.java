package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.cairnfield.archive.internal.disk.GitTraces;
import org.cairnfield.archive.internal.disk.HeadTrace;
import org.eclipse.jgit.lib.Repository;

/**
 * Git's lock files stay behind when a process is killed in the middle of a commit, and then keep every Git out. A note in
 * the private folder tells that it was us: it is written only while no such lock is there, so those found with it are ours.
 */
final class GitLocks {

	private final Path note;

	GitLocks(Path root) throws IOException {
		this.note = note(root);
	}

	private static Path note(Path root) throws IOException {
		return GitTraces.committingNote(root);
	}

	/** The locks that a commit takes. */
	static List<Path> in(Path root, Repository repository) throws IOException {
		Path git = repository.getDirectory().toPath();
		List<Path> locks = new ArrayList<>(List.of(git.resolve("index.lock"), git.resolve("HEAD.lock")));
		String branch = HeadTrace.of(root).branch();
		if (branch != null) {
			locks.add(git.resolve(branch + ".lock"));
		}
		return locks;
	}

	/** Work that takes locks of Git. */
	interface Work<T> {
		T run() throws IOException;
	}

	/** Does work after which no locks are to be left, even where it is killed. The caller has found no locks. */
	<T> T during(Work<T> work) throws IOException {
		announce();
		try {
			return work.run();
		} finally {
			withdraw();
		}
	}

	/** All locks that are there, those of the list of packed references and of each reference too. */
	static List<Path> present(Path root, Repository repository) throws IOException {
		Path git = repository.getDirectory().toPath();
		List<Path> locks = new ArrayList<>(in(root, repository));
		locks.add(git.resolve("packed-refs.lock"));
		if (Files.isDirectory(git.resolve("refs"), LinkOption.NOFOLLOW_LINKS)) {
			try (Stream<Path> refs = Files.walk(git.resolve("refs"))) {
				refs.filter(file -> file.getFileName().toString().endsWith(".lock")).forEach(locks::add);
			}
		}
		return locks.stream().distinct().filter(lock -> Files.exists(lock, LinkOption.NOFOLLOW_LINKS)).toList();
	}

	/** Before a commit. The caller has found no locks. */
	void announce() throws IOException {
		Files.deleteIfExists(note); // so that nothing is written to what else may be linked to it
		Files.writeString(note, "A save point is being made.\n", StandardOpenOption.CREATE_NEW);
	}

	/** After it. */
	void withdraw() throws IOException {
		Files.deleteIfExists(note);
	}

	/** Removes what a commit, a fetch or a repack of ours that was interrupted has left in the way. Needs the lock of the folder. */
	static void clear(Path root, Repository repository) throws IOException {
		if (Files.exists(note(root))) {
			Path git = repository.getDirectory().toPath();
			List<Path> left = new ArrayList<>(present(root, repository));
			left.addAll(PackLeftovers.inTheWay(git));
			left.addAll(PackLeftovers.idle(git));
			for (Path file : left) {
				Files.deleteIfExists(file);
			}
			for (String name : List.of("FETCH_HEAD.lock", "config.lock", "gc.pid")) {
				Files.deleteIfExists(git.resolve(name));
			}
			Files.delete(note(root));
		}
	}
}
