package org.cairnfield.archive.fault;

/** Where an archive is exchanged cannot be reached, or does not take or give what it should. Nothing is changed there. */
public final class UnreachableException extends ArchiveException {

	private static final long serialVersionUID = 1;

	/** @see ArchiveException#ArchiveException(String, String, Throwable) */
	public UnreachableException(String what, String remedy, Throwable cause) {
		super(what, remedy, cause);
	}
}
