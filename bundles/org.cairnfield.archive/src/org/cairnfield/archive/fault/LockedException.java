package org.cairnfield.archive.fault;

import org.cairnfield.core.text.Words;

/** Somebody else is writing in the archive. */
public class LockedException extends ArchiveException {

	private static final long serialVersionUID = 1;

	private final transient LockOwner owner;

	/** @param owner null if the lock does not tell */
	public LockedException(String archive, LockOwner owner, String remedy) {
		super(Words.bind(Messages.LockedException_isInUseBy, archive,
				owner == null ? Messages.LockedException_anotherProcess : owner), remedy);
		this.owner = owner;
	}

	/** Who holds the lock, null if it does not tell. */
	public LockOwner owner() {
		return owner;
	}
}
