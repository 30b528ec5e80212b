package org.cairnfield.curation.filter;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What can be compared of what is filtered. */
interface Field {

	enum Kind {
		TEXT, NUMBER, TIME, STATE, SEVERITY
	}

	Kind kind();

	/** The unit of its numbers; empty for counts. */
	String unit();

	/** A value of it, as one would write it. */
	String example();

	/** What it is called in a filter. */
	String word();

	default boolean allows(Operator operator) {
		return switch (kind()) {
		case TEXT -> !operator.isOrder();
		case NUMBER, TIME -> !operator.isSearch();
		case STATE -> operator == Operator.EQUAL || operator == Operator.UNEQUAL;
		case SEVERITY -> true;
		};
	}

	/** The signs it allows, for people. */
	default String signs() {
		return Arrays.stream(Operator.values()).filter(this::allows).map(Operator::sign)
				.collect(Collectors.joining(" "));
	}
}
