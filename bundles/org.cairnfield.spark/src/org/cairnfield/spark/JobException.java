package org.cairnfield.spark;

/** Why a job cannot be done, for a person, and the exit code that says so to a script. */
final class JobException extends Exception {

	private static final long serialVersionUID = 1;

	/** The command line is wrong. */
	static final int USAGE = 2;
	/** A file cannot be read or written, or holds no survey. */
	static final int INPUT = 3;
	/** Done, but rows were quarantined. */
	static final int QUARANTINED = 4;
	/** Too few samples for what was asked. */
	static final int NOT_ENOUGH = 5;
	/** A fault of the program. */
	static final int INTERNAL = 70;

	private final int exitCode;

	JobException(int exitCode, String message) {
		super(message);
		this.exitCode = exitCode;
	}

	int exitCode() {
		return exitCode;
	}
}
