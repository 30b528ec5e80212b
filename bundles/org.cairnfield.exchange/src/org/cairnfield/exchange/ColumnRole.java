package org.cairnfield.exchange;

import java.util.Locale;

/** What a column of a survey table is for. */
public enum ColumnRole {
	/** Position, first axis. */
	X,
	/** Position, second axis. */
	Y,
	/** Floor, as a number or a name. */
	FLOOR,
	/** Building. */
	SITE,
	/** Name of the sample; in a long table what its readings have in common. */
	ID,
	/** When the sample was taken. */
	TIME,
	/** What recorded it. */
	DEVICE,
	/** Who recorded it; known, not kept in a radio map. */
	SURVEYOR,
	/** Long table: the access point's name. */
	ACCESS_POINT,
	/** Long table: the level in dBm. */
	RSSI,
	/** Wide table: the levels of one access point, in dBm, under its name. */
	SIGNAL,
	/** Not used. */
	IGNORED;

	/** The word for it in mapping files, such as {@code access-point}. */
	public String word() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/** @throws IllegalArgumentException for a word that names no role */
	public static ColumnRole of(String word) {
		return valueOf(word.strip().toUpperCase(Locale.ROOT).replace('-', '_'));
	}
}
