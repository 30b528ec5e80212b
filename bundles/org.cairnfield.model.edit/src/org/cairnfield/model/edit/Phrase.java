package org.cairnfield.model.edit;

/** Numbers with their nouns. */
final class Phrase {

	private Phrase() {
	}

	/** For instance "1 sample", "12 samples". */
	static String count(int number, String noun) {
		return number + " " + noun + (number == 1 ? "" : "s");
	}
}
