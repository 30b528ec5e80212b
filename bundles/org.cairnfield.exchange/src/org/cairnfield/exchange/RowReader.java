package org.cairnfield.exchange;

import java.nio.file.Path;

/** Streams the rows of one file. Blank lines are passed over. */
final class RowReader implements Row, AutoCloseable {

	private final Blocks blocks;
	private BlockRows rows;

	RowReader(Path file, Dialect dialect, Limits limits) throws IntakeException {
		blocks = new Blocks(file, dialect, limits);
	}

	/** Moves to the next row that is not blank; false at the end. */
	boolean next() throws IntakeException {
		while (rows == null || !rows.next()) {
			Block block = blocks.next();
			if (block == null) {
				return false;
			}
			rows = block.rows();
		}
		return true;
	}

	@Override
	public String get(int column) {
		return rows.get(column);
	}

	@Override
	public int size() {
		return rows.size();
	}

	@Override
	public void close() {
		blocks.close();
	}
}
