package org.cairnfield.curation.measure;

/** Where a way of matching puts a test sample, judged by where it was taken. */
public enum Landing {
	/** On the floor where it was taken, however far away. */
	RIGHT_FLOOR,
	/** On another floor of its site. */
	OTHER_FLOOR,
	/** At another site. */
	OTHER_SITE,
	/** It got no place. */
	NOWHERE
}
