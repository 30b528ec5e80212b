package org.cairnfield.curation.rules;

import java.util.Locale;

/** How much a finding matters, the worst first. */
public enum Severity {

	/** The map is wrong here: positions computed from it suffer. */
	ERROR,
	/** Likely wrong; somebody should look. */
	WARNING,
	/** Worth knowing. */
	NOTE;

	/** The word for files and tables, in lower case. */
	public String code() {
		return name().toLowerCase(Locale.ROOT);
	}
}
