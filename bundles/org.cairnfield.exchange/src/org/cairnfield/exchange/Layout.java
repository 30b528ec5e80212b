package org.cairnfield.exchange;

/** How a survey table is laid out. */
public enum Layout {
	/** A row per sample, a column per access point. */
	WIDE,
	/** A row per reading. */
	LONG,
	/** Signals in one file, a column per access point or lists of name:level; coordinates (and ids, times, channels) in others. */
	PAIRED
}
