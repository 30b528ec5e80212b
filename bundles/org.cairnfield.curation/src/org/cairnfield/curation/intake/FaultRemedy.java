package org.cairnfield.curation.intake;

import org.cairnfield.exchange.Fault;

/** What a person can do about a row that was quarantined. */
public final class FaultRemedy {

	private FaultRemedy() {
	}

	/** In one sentence. */
	public static String of(Fault fault) {
		return switch (fault) {
		case FIELD_COUNT -> Messages.FaultRemedy_checkTheSeparatorOrMend;
		case POSITION -> Messages.FaultRemedy_checkWhichColumnsAreX;
		case FLOOR -> Messages.FaultRemedy_checkWhichColumnIsThe;
		case NAME -> Messages.FaultRemedy_shortenTheNameOrTake;
		case TIME -> Messages.FaultRemedy_writeTimesAs203104;
		case NOT_A_NUMBER -> Messages.FaultRemedy_checkWhichColumnsHoldLevels;
		case OUT_OF_RANGE -> Messages.FaultRemedy_ifThisValueMeansNot;
		case CONFLICT -> Messages.FaultRemedy_giveTheReadingsOfOne;
		};
	}
}
