package org.cairnfield.curation.rules;

/** What a rule is about. */
public enum Topic {

	READING("reading"), SAMPLE("sample"), ACCESS_POINT(Messages.Topic_accessPoint), DEVICE("device"),
	COVERAGE("coverage");

	private final String title;

	Topic(String title) {
		this.title = title;
	}

	/** The word for people. */
	public String title() {
		return title;
	}
}
