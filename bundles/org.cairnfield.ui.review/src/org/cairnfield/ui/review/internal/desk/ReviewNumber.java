package org.cairnfield.ui.review.internal.desk;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** A number that a team sets for its reviews: how it is called, where it must lie, and how people write it. */
public enum ReviewNumber {
	/** Common practice. */
	GATE("proposalGate", Messages.ReviewNumber_noiseShare, 0.1, 0, 1, 100, "%"),
	/** Common practice. */
	THRESHOLD("proposalThreshold", Messages.ReviewNumber_smallestR, 0.1, -1, 1, 1, ""),
	/** That the choice of ε and search may take. */
	CHOICE_MINUTES("choiceMinutes", Messages.ReviewNumber_longestChoice, 10, 0.1, 1440, 1, "min"),
	/** Of proposals in a band; see the policy of reviews. */
	AUDIT_LIMIT("auditLimit", Messages.ReviewNumber_shareWrong, 0.05, 0.001, 0.5, 100, "%"),
	/** That a band with more wrong is stopped. */
	AUDIT_CONFIDENCE("auditConfidence", Messages.ReviewNumber_confidence, 0.95, 0.5, 0.999, 100, "%");

	private final String key;
	private final String title;
	private final double usual;
	private final double low;
	private final double high;
	private final int scale;
	private final String unit;

	ReviewNumber(String key, String title, double usual, double low, double high, int scale, String unit) {
		this.key = key;
		this.title = title;
		this.usual = usual;
		this.low = low;
		this.high = high;
		this.scale = scale;
		this.unit = unit;
	}

	/** Name in the preferences. */
	public String key() {
		return key;
	}

	/** What it is unless somebody sets it. */
	public double usual() {
		return usual;
	}

	/** Behind the field; empty for a plain number. */
	public String unit() {
		return unit;
	}

	/** As people write it, without the unit. */
	public String text(double value) {
		return BigDecimal.valueOf(value * scale).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
	}

	/** Such as "0 to 100 %". */
	public String range() {
		return (text(low) + " to " + text(high) + ' ' + unit).strip().replace("-", "−");
	}

	/**
	 * What was written, with a decimal point or comma, with or without the unit.
	 *
	 * @throws IllegalArgumentException where it is no number, or out of range; the message says what is allowed, short enough for the head of a page
	 */
	public double parse(String written) {
		String number = written.replace(unit, "").replace('−', '-').replace(',', '.').strip();
		try {
			double value = new BigDecimal(number).divide(BigDecimal.valueOf(scale)).doubleValue();
			if (value >= low && value <= high) {
				return value;
			}
		} catch (NumberFormatException e) {
			// told below
		}
		throw new IllegalArgumentException(title + ": " + range() + '.');
	}

	/** What was kept, or the usual where that cannot be read. */
	double kept(String text) {
		try {
			double value = Double.parseDouble(text);
			return value >= low && value <= high ? value : usual;
		} catch (NumberFormatException e) {
			return usual;
		}
	}

	/** As it is kept, whatever the language. */
	String toKeep(double value) {
		return String.format(Locale.ROOT, "%s", value);
	}
}
