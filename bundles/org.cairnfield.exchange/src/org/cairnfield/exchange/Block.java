package org.cairnfield.exchange;

/**
 * Some records of a file, as UTF-8, from the beginning of one to the end of another.
 *
 * @param of       the file
 * @param bytes    not to be changed
 * @param line     physical line on which the first record begins, from 1
 * @param consumed bytes of the file read when this was cut
 */
record Block(Blocks of, byte[] bytes, long line, long consumed) {

	/** From the first row on; blank lines are passed over. */
	BlockRows rows() {
		return new BlockRows(of, bytes, bytes.length, line, true, Utf8.malformed(bytes));
	}

	/** How many rows there are. */
	int count() throws IntakeException {
		BlockRows rows = new BlockRows(of, bytes, bytes.length, line, true, bytes.length);
		int n = 0;
		while (rows.advance()) {
			n += rows.isBlank() ? 0 : 1;
		}
		return n;
	}
}
