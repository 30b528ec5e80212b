package org.cairnfield.archive.internal.text;

import java.io.IOException;

/** Brings a file from one version of the formats to the next. */
public interface Migration {

	/** The version that it reads; it writes the next. */
	int from();

	/**
	 * @param file the whole file, whose seal was found to match
	 * @return the whole file in the next version, with header and seal
	 * @throws IOException telling why it can not be done
	 */
	byte[] migrate(FileKind kind, byte[] file) throws IOException;
}
