package org.cairnfield.archive;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.disk.GitTraces;
import org.cairnfield.archive.internal.disk.HeadTrace;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.git.TreeFiles;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.text.ArchiveLayout;

/** Looks files up in the last commit, if there is one that can be read. Opens the history only when asked. */
final class LastCommit implements ArchiveReader.Committed, AutoCloseable {

	private final Path root;
	private final FolderView view;
	private GitFolder git;
	private TreeFiles files;

	private LastCommit(Path root, FolderView view) {
		this.root = root;
		this.view = view;
	}

	static LastCommit of(Path root, FolderView view) {
		return new LastCommit(root, view);
	}

	/**
	 * Why the last commit cannot be told; empty where it can, or where there is no history. The history is opened only where a
	 * glance says that something may be wrong.
	 */
	static List<Damage> damages(Path root) throws IOException {
		if (GitTraces.isRepository(root) && HeadTrace.of(root).isSuspicious(root)) {
			try (GitFolder git = GitFolder.open(root)) {
				git.head();
			} catch (DamagedException e) {
				return e.damages();
			}
		}
		return List.of();
	}

	private boolean knows(String path) {
		if (files == null && git == null && GitTraces.isRepository(root)) {
			try {
				git = GitFolder.open(root);
				files = git.files(git.head(), ArchiveLayout::isPart);
			} catch (IOException e) {
				files = null; // a history that can not be read vouches for nothing
			}
		}
		return files != null && files.has(path);
	}

	@Override
	public boolean has(String path) throws IOException {
		return knows(path) && git.blobs(Map.of(path, view.files().get(path))).get(path).equals(files.blob(path));
	}

	@Override
	public byte[] content(String path) throws IOException {
		if (!knows(path)) {
			return null;
		}
		try (InputStream in = files.open(path)) {
			return in.readAllBytes();
		}
	}

	@Override
	public void close() {
		if (git != null) {
			git.close();
		}
	}
}
