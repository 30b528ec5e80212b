package org.cairnfield.archive.internal.text;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;

/**
 * Moments in UTC as in RFC 3339, {@code 2031-04-07T07:30:06.2Z}: milliseconds without trailing zeros. Keeps the last day,
 * since most samples are of the day of the one before.
 */
final class MomentText {

	/** What {@link #parse} answers where there is no moment. */
	static final long NONE = Long.MIN_VALUE;

	private static final long DAY_MILLIS = 86_400_000;
	private static final int DAY_LENGTH = 10;
	private static final int LONGEST = 40;

	private String dayText = "";
	private long day;

	/** @param millis since 1970-01-01T00:00Z */
	void write(long millis, LineWriter line) {
		long wanted = Math.floorDiv(millis, DAY_MILLIS);
		if (dayText.isEmpty() || wanted != day) {
			String text = Math.abs(wanted) < 10_000_000 ? LocalDate.ofEpochDay(wanted).toString() : "";
			if (text.length() != DAY_LENGTH || text.charAt(0) == '-') { // a year that has no four digits
				line.text(Instant.ofEpochMilli(millis).toString());
				return;
			}
			dayText = text;
			day = wanted;
		}
		line.text(dayText);
		int rest = (int) Math.floorMod(millis, DAY_MILLIS);
		line.ascii('T');
		digits(rest / 3_600_000, 2, line);
		line.ascii(':');
		digits(rest / 60_000 % 60, 2, line);
		line.ascii(':');
		digits(rest / 1000 % 60, 2, line);
		int fraction = rest % 1000;
		if (fraction > 0) {
			line.ascii('.');
			if (fraction % 100 == 0) {
				digits(fraction / 100, 1, line);
			} else if (fraction % 10 == 0) {
				digits(fraction / 10, 2, line);
			} else {
				digits(fraction, 3, line);
			}
		}
		line.ascii('Z');
	}

	private static void digits(int number, int count, LineWriter line) {
		for (int power = count == 3 ? 100 : count == 2 ? 10 : 1; power > 0; power /= 10) {
			line.ascii((char) ('0' + number / power % 10));
		}
	}

	/** @return milliseconds since 1970-01-01T00:00Z, or {@link #NONE} for bytes that are no moment in whole milliseconds */
	long parse(byte[] b, int from, int to) {
		int length = to - from;
		boolean plain = length >= 20 && length <= 24 && length != 21 && b[from + 10] == 'T' && b[from + 13] == ':'
				&& b[from + 16] == ':' && b[to - 1] == 'Z' && (length == 20 || b[from + 19] == '.');
		if (!plain) {
			return slowly(b, from, to);
		}
		int hour = number(b, from + 11, 2);
		int minute = number(b, from + 14, 2);
		int second = number(b, from + 17, 2);
		int millis = length == 20 ? 0
				: number(b, from + 20, length - 21) * (length == 22 ? 100 : length == 23 ? 10 : 1);
		if ((hour | minute | second | millis) < 0 || hour > 23 || minute > 59 || second > 59 || !readDay(b, from)) {
			return NONE;
		}
		return day * DAY_MILLIS + hour * 3_600_000L + minute * 60_000L + second * 1000L + millis;
	}

	private boolean readDay(byte[] b, int from) {
		boolean same = !dayText.isEmpty();
		for (int i = 0; same && i < DAY_LENGTH; i++) {
			same = dayText.charAt(i) == b[from + i];
		}
		if (same) {
			return true;
		}
		String text = LineReader.text(b, from, from + DAY_LENGTH);
		if (text == null) {
			return false;
		}
		try {
			day = LocalDate.parse(text).toEpochDay();
			dayText = text;
			return true;
		} catch (DateTimeException e) {
			return false;
		}
	}

	private static int number(byte[] b, int from, int count) {
		int number = 0;
		for (int i = from; i < from + count; i++) {
			if (b[i] < '0' || b[i] > '9') {
				return -1000;
			}
			number = number * 10 + b[i] - '0';
		}
		return number;
	}

	private static long slowly(byte[] b, int from, int to) {
		String text = to - from > LONGEST ? null : LineReader.text(b, from, to);
		if (text == null) {
			return NONE;
		}
		try {
			Instant moment = Instant.parse(text);
			return moment.getNano() % 1_000_000 != 0 ? NONE : moment.toEpochMilli();
		} catch (DateTimeException | ArithmeticException e) {
			return NONE;
		}
	}
}
