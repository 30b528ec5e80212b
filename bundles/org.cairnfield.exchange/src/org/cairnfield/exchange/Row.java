package org.cairnfield.exchange;

/** The fields of one row. */
interface Row {

	/** The field of a column from 0, or an empty text where the row is too short. */
	String get(int column);

	int size();
}
