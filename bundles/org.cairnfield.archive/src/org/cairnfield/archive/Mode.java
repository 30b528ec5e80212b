package org.cairnfield.archive;

/** What an archive is opened for. */
public enum Mode {

	/** Takes the lock. */
	EDIT,
	/** Takes no lock, and changes nothing on disk. */
	READ
}
