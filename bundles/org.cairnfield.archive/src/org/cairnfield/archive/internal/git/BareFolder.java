package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;

/** A bare repository in a folder, where people on one disk meet. */
final class BareFolder {

	private BareFolder() {
	}

	/** Makes one where nothing is yet; otherwise passes one that is there. */
	static void prepare(Path folder) throws IOException {
		if (!Files.exists(folder) || isEmpty(folder)) {
			if (folder.getParent() != null && !Files.isDirectory(folder.getParent())) {
				throw new ArchiveException(Words.bind(Messages.BareFolder_thereIsNoFolder, folder.getParent()),
						Messages.BareFolder_lookWhereTheRemoteIs);
			}
			try (Repository made = new FileRepositoryBuilder().setBare().setGitDir(folder.toFile()).build()) {
				made.create(true);
			}
		} else if (Files.exists(folder.resolve(".git")) || !Files.isDirectory(folder.resolve("objects"))) {
			throw new ArchiveException(
					Words.bind(Messages.BareFolder_isNoBareRepositoryAnd, folder),
					Messages.BareFolder_nameAnotherFolderANew);
		}
	}

	private static boolean isEmpty(Path folder) throws IOException {
		if (!Files.isDirectory(folder)) {
			return false;
		}
		try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
			return !files.iterator().hasNext();
		}
	}
}
