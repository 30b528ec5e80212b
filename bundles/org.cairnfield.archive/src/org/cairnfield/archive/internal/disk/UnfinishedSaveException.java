package org.cairnfield.archive.internal.disk;

import org.cairnfield.archive.fault.ArchiveException;

/** A save counts, but its files are not all in place; {@link SaveRecovery} puts them there. */
public final class UnfinishedSaveException extends ArchiveException {

	private static final long serialVersionUID = 1;

	UnfinishedSaveException(ArchiveException explained) {
		super(explained);
	}
}
