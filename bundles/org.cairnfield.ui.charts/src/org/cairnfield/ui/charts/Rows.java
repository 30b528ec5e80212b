package org.cairnfield.ui.charts;

/**
 * Rows of one height under a header that stays, more than fit.
 *
 * @param header    height of what is above the rows
 * @param rowHeight at least 1
 * @param count     how many rows
 * @param height    of header and visible rows together
 * @param offset    how far the rows are scrolled up
 */
record Rows(int header, int rowHeight, int count, int height, int offset) {

	Rows {
		rowHeight = Math.max(1, rowHeight);
		offset = Math.max(0, Math.min(offset, count * rowHeight - Math.max(0, height - header)));
	}

	/** Room for rows. */
	int room() {
		return Math.max(0, height - header);
	}

	/** Height of all rows. */
	int whole() {
		return count * rowHeight;
	}

	/** The first row of which something shows. */
	int first() {
		return offset / rowHeight;
	}

	/** The row after the last of which something shows. */
	int end() {
		return Math.min(count, (offset + room() + rowHeight - 1) / rowHeight);
	}

	/** Upper edge of a row. */
	int top(int row) {
		return header + row * rowHeight - offset;
	}

	/** The row at this height, −1 for none. */
	int at(int y) {
		int row = y < header || y >= height ? -1 : Math.floorDiv(y - header + offset, rowHeight);
		return row < count ? row : -1;
	}

	/** Rows a page key moves by. */
	int page() {
		return Math.max(1, room() / rowHeight - 1);
	}

	/** The nearest offset at which the row shows whole. */
	int offsetFor(int row) {
		int upper = row * rowHeight;
		return Math.max(Math.min(offset, upper), Math.min(upper, upper + rowHeight - room()));
	}
}
