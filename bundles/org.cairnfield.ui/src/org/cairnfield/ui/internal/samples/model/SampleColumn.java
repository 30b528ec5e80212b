package org.cairnfield.ui.internal.samples.model;

/** What a table tells of each sample. */
public enum SampleColumn {
	ID("id", false),
	SURVEY("survey", false),
	SITE("site", false),
	FLOOR("floor", true),
	X("x (m)", true),
	Y("y (m)", true),
	TIME(Messages.SampleColumn_timeUtc, false),
	DEVICE("device", false),
	/** Training or test. */
	KIND("kind", false),
	/** How many access points. */
	HEARD("heard", true),
	/** Kept, or set aside and why. */
	STATE("state", false),
	/** Count and worst severity. */
	FINDINGS("findings", false),
	CLUSTER("cluster", true),
	ROLE("role", false),
	/** The strongest access points with their levels; long, so it comes last. */
	STRONGEST(Messages.SampleColumn_strongestDbm, false);

	private final String title;
	private final boolean number;

	SampleColumn(String title, boolean number) {
		this.title = title;
		this.number = number;
	}

	/** The header, with the unit. */
	public String title() {
		return title;
	}

	/** Whether it stands right in its column. */
	public boolean isNumber() {
		return number;
	}
}
