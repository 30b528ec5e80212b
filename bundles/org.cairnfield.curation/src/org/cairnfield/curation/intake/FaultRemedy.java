package org.cairnfield.curation.intake;

import org.cairnfield.exchange.Fault;

/** What a person can do about a row that was quarantined. */
public final class FaultRemedy {

	private FaultRemedy() {
	}

	/** In one sentence. */
	public static String of(Fault fault) {
		return switch (fault) {
		case FIELD_COUNT -> "Check the separator, or mend the line in the file.";
		case POSITION -> "Check which columns are x and y and the decimal mark, or mend the line.";
		case FLOOR -> "Check which column is the floor, or give all samples of the file one floor.";
		case NAME -> "Shorten the name, or take control characters out of it.";
		case TIME -> "Write times as 2031-04-07T09:30:00Z, or have the column ignored.";
		case NOT_A_NUMBER -> "Check which columns hold levels and the decimal mark, or say what means not heard.";
		case OUT_OF_RANGE -> "If this value means not heard, say so; otherwise mend the line.";
		case CONFLICT -> "Give the readings of one sample one place, or different sample names.";
		};
	}
}
