package org.cairnfield.curation.table.filter;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What can be compared of a sample. */
enum Field {
	ID(Kind.TEXT, "", "SH-0412"),
	SURVEY(Kind.TEXT, "", "sh-spring"),
	SITE(Kind.TEXT, "", "\"Tide House\""),
	FLOOR(Kind.NUMBER, "", "1"),
	X(Kind.NUMBER, "m", "12.5"),
	Y(Kind.NUMBER, "m", "12.5"),
	TIME(Kind.TIME, "", "2031-04-07"),
	DEVICE(Kind.TEXT, "", "\"Wrist guide A\""),
	HEARD(Kind.NUMBER, "", "5"),
	STRONGEST(Kind.NUMBER, "dBm", "-60"),
	STATE(Kind.STATE, "", "kept"),
	REASON(Kind.TEXT, "", "courier"),
	FINDING(Kind.SEVERITY, "", "warning"),
	FINDINGS(Kind.NUMBER, "", "1"),
	CLUSTER(Kind.NUMBER, "", "7"),
	ROLE(Kind.TEXT, "", "noise");

	enum Kind {
		TEXT, NUMBER, TIME, STATE, SEVERITY
	}

	private final Kind kind;
	private final String unit;
	private final String example;

	Field(Kind kind, String unit, String example) {
		this.kind = kind;
		this.unit = unit;
		this.example = example;
	}

	Kind kind() {
		return kind;
	}

	/** The unit of its numbers; empty for counts. */
	String unit() {
		return unit;
	}

	/** A value of it, as one would write it. */
	String example() {
		return example;
	}

	String word() {
		return name().toLowerCase(Locale.ROOT);
	}

	boolean allows(Operator operator) {
		return switch (kind) {
		case TEXT -> !operator.isOrder();
		case NUMBER, TIME -> !operator.isSearch();
		case STATE -> operator == Operator.EQUAL || operator == Operator.UNEQUAL;
		case SEVERITY -> true;
		};
	}

	/** The signs it allows, for people. */
	String signs() {
		return Arrays.stream(Operator.values()).filter(this::allows).map(Operator::sign).collect(Collectors.joining(" "));
	}

	static Optional<Field> of(Token token) {
		return token.kind() != Token.Kind.WORD ? Optional.empty()
				: Arrays.stream(values()).filter(field -> token.isWord(field.word())).findFirst();
	}
}
