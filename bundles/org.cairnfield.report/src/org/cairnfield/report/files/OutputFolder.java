package org.cairnfield.report.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.IntakeException;

/** A folder that results go to. */
public final class OutputFolder {

	private OutputFolder() {
	}

	/**
	 * Makes the folder, and those above it, where there is none.
	 *
	 * @return the folder
	 * @throws IntakeException where it cannot be made
	 */
	public static Path make(Path folder) throws IntakeException {
		try {
			return Files.createDirectories(folder);
		} catch (IOException e) {
			throw new IntakeException(folder, 0,
					Words.bind(Messages.OutputFolder_theFolderCannotBeMade, why(folder, e)),
					Messages.OutputFolder_nameAFolderThatCan);
		}
	}

	private static String why(Path folder, IOException e) {
		for (Path at = folder.toAbsolutePath(); at != null; at = at.getParent()) {
			if (Files.exists(at) && !Files.isDirectory(at)) {
				return Words.bind(Messages.OutputFolder_thereIsAFileOf, at);
			}
		}
		return e instanceof AccessDeniedException ? Messages.OutputFolder_thatIsNotPermitted
				: Messages.OutputFolder_theFileSystemRefuses;
	}
}
