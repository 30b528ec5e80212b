package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;

/** What the disk answered, in words. */
public final class DiskFaults {

	/** With less than a block or two left nothing can be written. */
	private static final long FULL_BYTES = 1 << 13;
	/** With so much left it is not the disk that is full. */
	private static final long PLENTY_BYTES = 64 << 20;

	private DiskFaults() {
	}

	/** @param what what was not done, and that nothing has changed where that is so */
	public static ArchiveException explain(String what, Path folder, Exception cause) {
		if (cause instanceof ArchiveException explained) {
			return explained;
		}
		String said = said(cause).toLowerCase(Locale.ROOT);
		long left = left(folder);
		boolean refused = said.contains("no space left") || said.contains("not enough space");
		if (said.contains("quota") || refused && left >= PLENTY_BYTES) {
			return new ArchiveException(
					Words.bind(Messages.DiskFaults_aLimitForThisAccount, what, folder,
							left < 0 ? "" : Words.bind(Messages.DiskFaults_thoughTheDiskItselfHas, megabytes(left))),
					Messages.DiskFaults_deleteWhatIsNotNeeded,
					cause);
		}
		// the words may be in the language of the machine; a disk without room needs none
		if (refused || left >= 0 && left < FULL_BYTES) {
			return new ArchiveException(
					Words.bind(Messages.DiskFaults_theDiskOfIsFull, what, folder,
							left < 0 ? "" : Words.bind(Messages.DiskFaults_kibLeft, left / 1024)),
					Messages.DiskFaults_makeRoomThereAndTry, cause);
		}
		if (cause instanceof ReadOnlyFileSystemException || said.contains("read-only")) {
			return new ArchiveException(Words.bind(Messages.DiskFaults_theDiskOfIsRead, what, folder),
					Messages.DiskFaults_copyTheArchiveToA, cause);
		}
		if (cause instanceof AccessDeniedException || said.contains("denied") || said.contains("not permitted")) {
			return new ArchiveException(
					Words.bind(Messages.DiskFaults_noPermissionToWrite, what, name(cause, folder)),
					Messages.DiskFaults_askForPermissionOrCopy, cause);
		}
		if (cause instanceof NoSuchFileException) {
			return new ArchiveException(Words.bind(Messages.DiskFaults_isGone, what, name(cause, folder)),
					Messages.DiskFaults_lookWhoMovesFilesThere,
					cause);
		}
		return new ArchiveException(what + ": " + said(cause),
				Words.bind(Messages.DiskFaults_lookAfterTheDiskOf, folder),
				cause);
	}

	private static String said(Exception cause) {
		if (cause instanceof FileSystemException e && e.getReason() != null) {
			return e.getReason();
		}
		return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
	}

	private static String name(Exception cause, Path folder) {
		return cause instanceof FileSystemException e && e.getFile() != null ? e.getFile() : folder.toString();
	}

	/** Bytes that can still be written; −1 where the disk does not tell. */
	private static long left(Path folder) {
		try {
			return Files.getFileStore(folder).getUsableSpace();
		} catch (IOException e) {
			return -1;
		}
	}

	private static long megabytes(long bytes) {
		return bytes / 1_000_000;
	}
}
