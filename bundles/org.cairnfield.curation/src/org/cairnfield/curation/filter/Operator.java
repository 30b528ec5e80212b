package org.cairnfield.curation.filter;

/** How a value is compared. */
enum Operator {
	EQUAL("="), UNEQUAL("!="), LESS("<"), AT_MOST("<="), MORE(">"), AT_LEAST(">="), CONTAINS("~"), LACKS("!~");

	/** The longer ones first; some as other languages and people write them. */
	private static final String[] SIGNS = { "!=", "<=", ">=", "!~", "<>", "==", "≤", "≥", "≠", "=", "<", ">", "~" };

	private final String sign;

	Operator(String sign) {
		this.sign = sign;
	}

	String sign() {
		return sign;
	}

	/** Whether it asks for more or less. */
	boolean isOrder() {
		return this == LESS || this == AT_MOST || this == MORE || this == AT_LEAST;
	}

	/** Whether it looks into a text. */
	boolean isSearch() {
		return this == CONTAINS || this == LACKS;
	}

	/** The sign that stands at a place of the text, or null. */
	static String at(String text, int position) {
		for (String sign : SIGNS) {
			if (text.startsWith(sign, position)) {
				return sign;
			}
		}
		return null;
	}

	/** @param text a sign of {@link #at} */
	static Operator of(String text) {
		return switch (text) {
		case "==" -> EQUAL;
		case "<>", "≠" -> UNEQUAL;
		case "≤" -> AT_MOST;
		case "≥" -> AT_LEAST;
		default -> java.util.Arrays.stream(values()).filter(o -> o.sign.equals(text)).findFirst().orElseThrow();
		};
	}

	/** Whether a comparison passes, by the order of the actual value to the one asked for. */
	boolean passes(int order) {
		return switch (this) {
		case EQUAL -> order == 0;
		case UNEQUAL -> order != 0;
		case LESS -> order < 0;
		case AT_MOST -> order <= 0;
		case MORE -> order > 0;
		case AT_LEAST -> order >= 0;
		case CONTAINS, LACKS -> throw new IllegalStateException(this + " does not order");
		};
	}
}
