package org.cairnfield.curation.timeline;

/** What an access point did over all surveys of a site; in the order in which a table groups them. */
public enum Course {
	REPLACED("replaced"), VANISHED("vanished"), MOVED("moved"), APPEARED("appeared"),
	FLICKERING(Messages.Course_comesAndGoes),
	STEADY("steady");

	private final String word;

	Course(String word) {
		this.word = word;
	}

	/** For a heading. */
	public String word() {
		return word;
	}
}
