package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.Disk;
import org.cairnfield.archive.internal.disk.SaveRecovery;
import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.git.GitRemote;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.text.Words;

/** Copies an archive from a remote into a folder beside the one that is meant, which takes its name in the end. */
final class Copying {

	private Copying() {
	}

	static Path of(RemoteUrl url, Path root, Disk disk, Progress progress) throws IOException {
		Path parent = Files.createDirectories(root.toAbsolutePath().getParent());
		Path part = parent.resolve(root.getFileName() + "-part-" + Long.toHexString(System.nanoTime()));
		Files.createDirectory(part);
		try {
			SaveRecovery.prepare(disk, part);
			fill(url, part, progress);
			Files.deleteIfExists(root); // empty
			Files.move(part, root, StandardCopyOption.ATOMIC_MOVE);
			return root.toRealPath();
		} finally {
			delete(part);
		}
	}

	private static void fill(RemoteUrl url, Path root, Progress progress) throws IOException {
		try (GitFolder git = GitFolder.init(root)) {
			String branch = git.branch();
			GitRemote remote = git.remote(url);
			GitRemote.Fetched fetched = remote.fetch(branch, progress);
			if (fetched.tip() == null && fetched.others().size() == 1) {
				branch = fetched.others().get(0);
				fetched = remote.fetch(branch, progress);
			}
			if (fetched.tip() == null) {
				throw new ArchiveException(
						Words.bind(Messages.Copying_nothingWasCopied, url,
								fetched.others().isEmpty() ? Messages.Copying_hasNoArchiveYet
										: Words.bind(Messages.Copying_hasSeveralBranchesAndNone, branch,
												String.join(", ", fetched.others()))),
						Messages.Copying_connectAnArchiveToIt);
			}
			Commit tip = git.find(fetched.tip());
			if (!git.files(tip, ArchiveLayout.STRUCTURE::equals).has(ArchiveLayout.STRUCTURE)) {
				throw new ArchiveException(Words.bind(Messages.Copying_nothingWasCopiedWhatIs, url),
						Messages.Copying_nameTheRemoteThatIs);
			}
			git.connect(url, branch);
			git.fill(branch, tip);
			git.tagExchange(fetched.tags()).adopt();
			remote.seen(branch, fetched.tip());
		}
	}

	private static void delete(Path folder) throws IOException {
		if (!Files.exists(folder)) {
			return;
		}
		Files.walkFileTree(folder, new SimpleFileVisitor<>() {
			@Override
			public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
				Files.delete(file);
				return FileVisitResult.CONTINUE;
			}

			@Override
			public FileVisitResult postVisitDirectory(Path each, IOException e) throws IOException {
				Files.delete(each);
				return FileVisitResult.CONTINUE;
			}
		});
	}
}
