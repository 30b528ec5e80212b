package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

import org.cairnfield.archive.internal.disk.HeadTrace;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.StoredConfig;

/**
 * Puts the objects of a history into one pack, where each state is kept as its difference to another, once states before the
 * present one take more room than they should. A new pack is complete before anything that it holds is removed, so it may end
 * at any moment. What nothing refers to, logs included, is kept for two weeks.
 */
final class Repack {

	/** Files of objects beyond those of the present state. */
	private static final int MOST_OBJECTS = 1_000;
	/** Each exchange with others brings one. */
	private static final int MOST_PACKS = 20;
	/** Less than this is not worth the work. */
	private static final long LEAST_BYTES = 1 << 20;
	private static final long LONGEST_NANOS = 60_000_000_000L;

	private final Path root;
	private final Repository repository;
	private final Path objects;

	Repack(Path root, Repository repository) {
		this.root = root;
		this.repository = repository;
		this.objects = repository.getDirectory().toPath().resolve("objects");
	}

	/** Whether earlier states take more than half of what the present one and the packs take, or too many files, or packs are many. */
	boolean isDue() throws IOException {
		long packedBytes = 0;
		int packs = 0;
		if (HeadTrace.hasPacks(objects)) {
			try (DirectoryStream<Path> files = Files.newDirectoryStream(objects.resolve("pack"), "*.pack")) {
				for (Path pack : files) {
					packedBytes += Files.size(pack);
					packs++;
				}
			}
		}
		Set<String> present = present();
		long presentBytes = 0;
		long earlierBytes = 0;
		int earlier = 0;
		try (DirectoryStream<Path> folders = Files.newDirectoryStream(objects, "[0-9a-f][0-9a-f]")) {
			for (Path folder : folders) {
				try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
					for (Path file : files) {
						if (present.contains(folder.getFileName().toString() + file.getFileName())) {
							presentBytes += Files.size(file);
						} else {
							earlierBytes += Files.size(file);
							earlier++;
						}
					}
				}
			}
		}
		return packs > MOST_PACKS || earlier > MOST_OBJECTS
				|| earlierBytes > LEAST_BYTES && earlierBytes > (presentBytes + packedBytes) / 2;
	}

	private Set<String> present() throws IOException {
		DirCache index = WorkBlobs.index(repository);
		Set<String> ids = new HashSet<>();
		for (int i = 0; i < index.getEntryCount(); i++) {
			ids.add(index.getEntry(i).getObjectId().name());
		}
		return ids;
	}

	/** Packs. Where another Git is at that already, nothing happens; where it takes longer than a minute, it is left for another time. */
	void run(Progress progress) throws IOException {
		StoredConfig config = repository.getConfig(); // in memory, above that of the user
		config.setBoolean("pack", null, "buildBitmaps", false);
		config.setInt("pack", null, "threads", 1);
		config.setInt("pack", null, "window", 5);
		config.setString("gc", null, "pruneExpire", "2.weeks.ago");
		config.setString("gc", null, "prunePackExpire", "now"); // what the new pack lacks of an old one becomes files again
		new GitLocks(root).during(() -> {
			try (Git git = Git.wrap(repository)) {
				return git.gc().setProgressMonitor(new Limit(progress)).call();
			} catch (GitAPIException | RuntimeException e) {
				throw new IOException(Words.bind(Messages.Repack_theHistoryWasNotPacked, e.getMessage()), e);
			}
		});
	}

	/** Cancels when it is time, too. */
	private static final class Limit extends Monitor {

		private final long start = System.nanoTime();

		Limit(Progress progress) {
			super(progress);
		}

		@Override
		public boolean isCancelled() {
			return super.isCancelled() || System.nanoTime() - start > LONGEST_NANOS;
		}
	}
}
