package org.cairnfield.curation.filter;

import java.util.Locale;

/** What can be compared of a sample. */
enum SampleField implements Field {
	ID(Kind.TEXT, "", "SH-0412"),
	SURVEY(Kind.TEXT, "", "sh-spring"),
	SITE(Kind.TEXT, "", "\"Tide House\""),
	FLOOR(Kind.NUMBER, "", "1"),
	X(Kind.NUMBER, "m", "12.5"),
	Y(Kind.NUMBER, "m", "12.5"),
	TIME(Kind.TIME, "", "2031-04-07"),
	KIND(Kind.TEXT, "", "test"),
	DEVICE(Kind.TEXT, "", "\"Wrist guide A\""),
	HEARD(Kind.NUMBER, "", "5"),
	STRONGEST(Kind.NUMBER, "dBm", "-60"),
	STATE(Kind.STATE, "", "kept"),
	REASON(Kind.TEXT, "", "courier"),
	FINDING(Kind.SEVERITY, "", "warning"),
	FINDINGS(Kind.NUMBER, "", "1"),
	CLUSTER(Kind.NUMBER, "", "7"),
	ROLE(Kind.TEXT, "", "noise");

	private final Kind kind;
	private final String unit;
	private final String example;

	SampleField(Kind kind, String unit, String example) {
		this.kind = kind;
		this.unit = unit;
		this.example = example;
	}

	@Override
	public Kind kind() {
		return kind;
	}

	@Override
	public String unit() {
		return unit;
	}

	@Override
	public String example() {
		return example;
	}

	@Override
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}
}
