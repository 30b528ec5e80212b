package org.cairnfield.exchange;

/** How a survey table is laid out. */
public enum Layout {
	/** A row per sample, a column per access point. */
	WIDE,
	/** A row per reading. */
	LONG,
	/** Signals in one file, coordinates (and ids, times) of the same rows in others. */
	PAIRED
}
