package org.cairnfield.core.reduce;

/** A full matrix seen as rows that leave out their zeros. */
final class DenseAsSparse implements SparseRows {

	private final int columns;
	private final int[] start;
	private final int[] column;
	private final double[] value;

	DenseAsSparse(double[][] rows) {
		columns = rows.length == 0 ? 0 : rows[0].length;
		start = new int[rows.length + 1];
		column = new int[rows.length * columns];
		value = new double[column.length];
		int entry = 0;
		for (int r = 0; r < rows.length; r++) {
			for (int c = 0; c < columns; c++) {
				if (rows[r][c] != 0) {
					column[entry] = c;
					value[entry++] = rows[r][c];
				}
			}
			start[r + 1] = entry;
		}
	}

	@Override
	public int size() {
		return start.length - 1;
	}

	@Override
	public int columns() {
		return columns;
	}

	@Override
	public int start(int row) {
		return start[row];
	}

	@Override
	public int end(int row) {
		return start[row + 1];
	}

	@Override
	public int column(int entry) {
		return column[entry];
	}

	@Override
	public double value(int entry) {
		return value[entry];
	}
}
