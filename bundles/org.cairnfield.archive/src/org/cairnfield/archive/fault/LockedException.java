package org.cairnfield.archive.fault;

/** Somebody else is writing in the archive. */
public class LockedException extends ArchiveException {

	private static final long serialVersionUID = 1;

	private final transient LockOwner owner;

	/** @param owner null if the lock does not tell */
	public LockedException(String archive, LockOwner owner, String remedy) {
		super(archive + " is in use by " + (owner == null ? "another process" : owner), remedy);
		this.owner = owner;
	}

	/** Who holds the lock, null if it does not tell. */
	public LockOwner owner() {
		return owner;
	}
}
