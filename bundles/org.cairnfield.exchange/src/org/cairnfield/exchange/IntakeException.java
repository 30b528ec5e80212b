package org.cairnfield.exchange;

import java.nio.file.Path;

import org.cairnfield.core.text.Words;

/** A file that cannot be taken in. The message says what happened, where, and what can be done. */
public final class IntakeException extends Exception {

	private static final long serialVersionUID = 1;

	private final transient Path file;
	private final long line;
	private final String what;
	private final String remedy;

	/**
	 * @param file   null where no single file is to blame
	 * @param line   physical line from 1, or 0 where unknown
	 * @param what   what happened
	 * @param remedy what the user can do
	 */
	public IntakeException(Path file, long line, String what, String remedy) {
		this(file, line, what, remedy, null);
	}

	IntakeException(Path file, long line, String what, String remedy, Throwable cause) {
		super(place(file, line) + what + ". " + remedy + ".", cause);
		this.file = file;
		this.line = line;
		this.what = what;
		this.remedy = remedy;
	}

	private static String place(Path file, long line) {
		String where = (file == null ? "" : file.toString()) + (file != null && line > 0 ? ", " : "")
				+ (line > 0 ? Words.bind(Messages.IntakeException_line, line) : "");
		return where.isEmpty() ? "" : where + ": ";
	}

	/** The file, or null. */
	public Path file() {
		return file;
	}

	/** The physical line from 1, or 0 where unknown. */
	public long line() {
		return line;
	}

	/** What happened, without place and remedy. */
	public String what() {
		return what;
	}

	/** What the user can do. */
	public String remedy() {
		return remedy;
	}
}
