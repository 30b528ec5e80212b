package org.cairnfield.exchange;

/** Why a row is quarantined. */
public enum Fault {
	/** More or fewer fields than the table has columns. */
	FIELD_COUNT(Messages.Fault_wrongNumberOfFields),
	/** x or y is missing, no number, or beyond the Earth. */
	POSITION(Messages.Fault_noPosition),
	/** The floor is missing or cannot be a floor. */
	FLOOR(Messages.Fault_noFloor),
	/** A name is missing, too long, or holds control characters. */
	NAME(Messages.Fault_unusableName),
	/** The time is not understood. */
	TIME(Messages.Fault_timeNotUnderstood),
	/** A level is not a number. */
	NOT_A_NUMBER(Messages.Fault_levelIsNoNumber),
	/** A level outside -120 to 0 dBm that does not mean not heard. */
	OUT_OF_RANGE(Messages.Fault_levelOutOfRange),
	/** A reading whose place differs from that of its sample. */
	CONFLICT(Messages.Fault_contradictsItsSample);

	private final String words;

	Fault(String words) {
		this.words = words;
	}

	/** In a few words. */
	@Override
	public String toString() {
		return words;
	}
}
