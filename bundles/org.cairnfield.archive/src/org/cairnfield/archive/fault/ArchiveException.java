package org.cairnfield.archive.fault;

import java.io.IOException;

/** Something could not be done with an archive. The message tells what happened, to what, and what to do. */
public class ArchiveException extends IOException {

	private static final long serialVersionUID = 1;

	private final String remedy;

	/**
	 * @param what   what happened and to what
	 * @param remedy what a person can do, a clause without a full stop
	 */
	public ArchiveException(String what, String remedy) {
		this(what, remedy, null);
	}

	/** As the other, with the exception that led to it. */
	public ArchiveException(String what, String remedy, Throwable cause) {
		super(what + "; " + remedy, cause);
		this.remedy = remedy;
	}

	/** The same again. */
	protected ArchiveException(ArchiveException other) {
		super(other.getMessage(), other.getCause());
		this.remedy = other.remedy;
	}

	/** What a person can do. */
	public String remedy() {
		return remedy;
	}
}
