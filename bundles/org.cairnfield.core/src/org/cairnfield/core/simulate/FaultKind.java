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
	EMPTY,
	/** An access point taken down between two seasons. */
	VANISHED_ACCESS_POINT,
	/** An access point put up between two seasons. */
	NEW_ACCESS_POINT,
	/** A second address of a radio that has one already. */
	SECOND_ADDRESS,
	/** A device that reads too high or too low. */
	DEVICE_OFFSET,
	/** The readings of the sample before once more. */
	CACHED_SCAN,
	/** One access point at the same level wherever it is heard. */
	STUCK_LEVEL,
	/** A level that stands for not heard. */
	NOT_HEARD_CODE,
	/** Part of a floor that nobody surveyed. */
	COVERAGE_GAP,
	/** A row that is in the file twice. */
	COPIED_ROW,
	/** A level that no receiver meets. */
	IMPLAUSIBLE_LEVEL,
	/** At the place and time of another sample, with the readings of somewhere else. */
	FOREIGN_SCAN,
	/** Recorded once more at the same place, with one level far off. */
	LEVEL_JUMP,
	/** The readings of a sample far away. */
	SCAN_ELSEWHERE,
	/** Levels cut off at a receiver's upper limit. */
	SATURATED,
	/** A sender met in passing. */
	PASSING_SENDER,
	/** An address that no access point can have. */
	GROUP_ADDRESS;

	/** The kind in a file: lower case with hyphens. */
	public String code() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}
}
