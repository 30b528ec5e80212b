package org.cairnfield.core.reduce;

/**
 * Rows of a matrix most of whose values are 0, such as fingerprints in which an access point that was not
 * heard counts 0. The entries of row {@code r} are {@code start(r) … end(r) - 1}; a column occurs once in
 * a row at most. Reading must be safe from several threads.
 */
public interface SparseRows {

	/** How many rows. */
	int size();

	/** How many columns. */
	int columns();

	/** The row's first entry. */
	int start(int row);

	/** One past the row's last entry. */
	int end(int row);

	/** The column of an entry, from 0 to {@link #columns} - 1. */
	int column(int entry);

	/** The value of an entry, finite. */
	double value(int entry);
}
