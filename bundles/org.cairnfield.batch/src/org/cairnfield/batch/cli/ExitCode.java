package org.cairnfield.batch.cli;

/** What the exit code of a command says. A contract with scripts. */
public final class ExitCode {

	/** Done. */
	public static final int OK = 0;
	/** The command line is wrong. */
	public static final int USAGE = 2;
	/** A file cannot be read or written, or holds no survey. */
	public static final int INPUT = 3;
	/** Done, but rows were quarantined. */
	public static final int QUARANTINED = 4;
	/** The survey was read, but there is too little in it for what was asked, or it is not fit for it. */
	public static final int NOT_ENOUGH = 5;
	/** An archive cannot be opened or changed. */
	public static final int ARCHIVE = 7;
	/** An archive or its history is damaged; what was asked for was not done, or only because damage was accepted. */
	public static final int DAMAGED = 8;
	/** Done; the worst that was found is a warning. */
	public static final int FINDINGS_WARNING = 10;
	/** Done; the worst that was found is an error. */
	public static final int FINDINGS_ERROR = 11;
	/** Done; a gate is not met, and nothing was released. */
	public static final int GATES = 12;
	/** Done; a release, an exported file or the history is not what it was, or tags of releases are missing. */
	public static final int NOT_SOUND = 13;
	/** Done; people have set the same thing to different values, and somebody has to decide. */
	public static final int CONFLICTS = 14;
	/** Done; the latest survey of a site contradicts its map, and something that can be done about it helps. */
	public static final int CONTRADICTED = 15;
	/** The remote cannot be reached, or does not take what is sent; nothing was changed there. */
	public static final int UNREACHABLE = 9;
	/** Out of memory. */
	public static final int MEMORY = 6;
	/** An internal error of Cairnfield. */
	public static final int INTERNAL = 70;

	private ExitCode() {
	}
}
