package org.cairnfield.ui.charts;

/**
 * Columns of bars beside a column of labels; behind the longest bar is room for a value.
 *
 * @param left       where the first column begins
 * @param pitch      from column to column
 * @param barWidth   length of the longest bar, at least 1
 * @param valueWidth room behind it
 */
record BarColumns(int left, int pitch, int barWidth, int valueWidth) {

	/**
	 * @param width      of all
	 * @param labelWidth wanted for labels; they get a third at most
	 * @param valueWidth wanted for values; they get nothing where the bars would be shorter than that
	 * @param gap        between label, columns and rim
	 */
	static BarColumns fit(int width, int labelWidth, int valueWidth, int gap, int columns) {
		int left = gap + Math.min(labelWidth, width / 3) + gap;
		int pitch = Math.max(1, (width - left) / Math.max(1, columns));
		int values = pitch - 2 * gap >= 2 * valueWidth ? valueWidth + gap : 0;
		return new BarColumns(left, pitch, Math.max(1, pitch - values - 2 * gap), values);
	}

	/** Where the bars of a column begin. */
	int bar(int column) {
		return left + column * pitch;
	}

	/** Length of a bar, at least 1 so that it can be seen. */
	int length(double fraction) {
		return (int) Math.max(1, Math.round(fraction * barWidth));
	}
}
