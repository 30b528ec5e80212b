package org.cairnfield.exchange;

/** Why a row is quarantined. */
public enum Fault {
	/** More or fewer fields than the table has columns. */
	FIELD_COUNT("wrong number of fields"),
	/** x or y is missing, no number, or beyond the Earth. */
	POSITION("no position"),
	/** The floor is missing or cannot be a floor. */
	FLOOR("no floor"),
	/** A name is missing, too long, or holds control characters. */
	NAME("unusable name"),
	/** The time is not understood. */
	TIME("time not understood"),
	/** A level is not a number. */
	NOT_A_NUMBER("level is no number"),
	/** A level outside -120 to 0 dBm that does not mean not heard. */
	OUT_OF_RANGE("level out of range"),
	/** A reading whose place differs from that of its sample. */
	CONFLICT("contradicts its sample");

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
