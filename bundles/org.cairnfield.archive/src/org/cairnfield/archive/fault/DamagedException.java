package org.cairnfield.archive.fault;

import java.util.List;

/** An archive or its history is not as it was written, and what was asked for would rest on what is left of it. */
public class DamagedException extends ArchiveException {

	private static final long serialVersionUID = 1;

	private final transient List<Damage> damages;

	/** @param damages all that is known to be wrong, at least one */
	public DamagedException(String what, String remedy, List<Damage> damages) {
		this(what, remedy, damages, null);
	}

	/** As the other, with the exception that showed it. */
	public DamagedException(String what, String remedy, List<Damage> damages, Throwable cause) {
		super(what, remedy, cause);
		this.damages = List.copyOf(damages);
	}

	/** What is wrong, with file, line and remedy. */
	public List<Damage> damages() {
		return damages;
	}
}
