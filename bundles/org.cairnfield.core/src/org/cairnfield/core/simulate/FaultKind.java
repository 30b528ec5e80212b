package org.cairnfield.core.simulate;

import java.util.Locale;

/** What can be wrong with a survey, as the simulation plants it. */
public enum FaultKind {

	/** An access point that travels: somebody's phone, heard all over. */
	HOTSPOT,
	/** An access point hung elsewhere between two seasons. */
	MOVED_ACCESS_POINT,
	/** x and y exchanged. */
	SWAPPED_AXES,
	/** Labelled with another floor. */
	WRONG_FLOOR,
	/** A sample that another survey holds already. */
	DUPLICATE_IMPORT,
	/** Noted at another place of the floor. */
	WRONG_POSITION,
	/** Weak levels and missing access points. */
	FAULTY_DEVICE,
	/** The right access points with each other's levels. */
	PERMUTED_READINGS,
	/** One or two access points heard. */
	SPARSE,
	/** Nothing heard. */
	EMPTY;

	/** The kind in a file: lower case with hyphens. */
	public String code() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}
}
