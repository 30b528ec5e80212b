package org.cairnfield.archive.internal.text;

/** The kinds of files of an archive, and the version of their formats. */
public enum FileKind {

	/** Everything but what the other kinds hold, as XMI. */
	STRUCTURE("archive"),
	/** The samples of a survey; of a large one the list of its parts, which is version 2, see {@link SampleParts}. */
	SAMPLES("samples"),
	/** A split: parameters, clusters, labels, proposals. */
	SPLIT("split"),
	/** A ledger of verdicts. */
	LEDGER("ledger");

	/** The version that is written. Earlier ones are read through {@link Migration}. */
	public static final int VERSION = 1;

	private final String word;

	FileKind(String word) {
		this.word = word;
	}

	/** The latest version that can be read. */
	int newest() {
		return this == SAMPLES ? SampleParts.VERSION : VERSION;
	}

	/** The first line of a file of lines, without its end. */
	String header(int version) {
		return "cairnfield " + word + ' ' + version;
	}

	/**
	 * The version that a header names.
	 *
	 * @return −1 for a line that is no header of this kind
	 */
	int versionIn(String header) {
		String start = "cairnfield " + word + ' ';
		String rest = header.startsWith(start) ? header.substring(start.length()) : "";
		return rest.matches("[0-9]{1,6}") ? Integer.parseInt(rest) : -1;
	}
}
