package org.cairnfield.curation.rules;

/**
 * What a rule must see at once to judge any part of it. A rule is asked about one unit of its scope at a time, and
 * asked again only where something within the unit has changed.
 */
public enum RuleScope {

	/** One survey, with the floors of its site. */
	SURVEY,
	/** All samples of one floor of one site. */
	FLOOR,
	/** All samples of one site. */
	SITE,
	/** Everything. */
	ARCHIVE
}
