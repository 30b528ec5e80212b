package org.cairnfield.exchange.internal.text;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.core.text.Words;

/**
 * Instants as survey files write them: RFC 3339 and ISO 8601, epoch seconds or milliseconds,
 * {@code yyyyMMddHHmmss} with or without milliseconds, {@code yyyy-MM-dd HH:mm:ss}, {@code dd.MM.yyyy HH:mm:ss}. A time without a zone
 * is taken as UTC. A leap second (RFC 3339 section 5.7: only where the instant is 23:59:60 in UTC) is read as
 * the second before it, because a count of milliseconds has no place for it.
 */
public final class Times {

	/** The answer for a text that is no time. */
	public static final long NONE = Long.MIN_VALUE;

	private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})"
			+ "(?:(?:[Tt]| +)(\\d{2}):(\\d{2})(?::(\\d{2})(?:[.,](\\d{1,9})\\d*)?)? ?([Zz]|[+-]\\d{2}(?::?\\d{2})?)?)?");
	private static final Pattern STRICT = Pattern.compile("\\d{4}-\\d{2}-\\d{2}[Tt ]\\d{2}:\\d{2}:\\d{2}(\\.\\d+)?"
			+ "([Zz]|[+-]\\d{2}:\\d{2})");
	private static final Pattern DOTTED = Pattern.compile(
			"(\\d{2})\\.(\\d{2})\\.(\\d{4})(?: +(\\d{2}):(\\d{2})(?::(\\d{2}))?)?");
	/** 2001-09-09 to 2100-01-01: shorter numbers are counters, not seconds. */
	private static final long FIRST_EPOCH_SECOND = 1_000_000_000L;
	private static final long LAST_EPOCH_SECOND = 4_102_444_800L;

	private Times() {
	}

	/** Milliseconds since 1970-01-01T00:00Z of a date-time of RFC 3339 section 5.6, or {@link #NONE}. */
	public static long rfc3339(String text) {
		return STRICT.matcher(text).matches() ? parse(text) : NONE;
	}

	/** Milliseconds since 1970-01-01T00:00Z, or {@link #NONE}. */
	public static long parse(String text) {
		String s = text.strip();
		if (s.length() < 8 || s.length() > 48) {
			return NONE;
		}
		try {
			if (digits(s)) {
				return number(s);
			}
			Matcher m = ISO.matcher(s);
			if (m.matches()) {
				return millis(m.group(1), m.group(2), m.group(3), m.group(4), m.group(5), m.group(6), m.group(7),
						m.group(8));
			}
			m = DOTTED.matcher(s);
			if (m.matches()) {
				return millis(m.group(3), m.group(2), m.group(1), m.group(4), m.group(5), m.group(6), null, null);
			}
			return NONE;
		} catch (DateTimeException | NumberFormatException e) {
			return NONE;
		}
	}

	/** True where a text that {@link #parse} takes says its offset from UTC, or counts from the epoch. */
	public static boolean statesZone(String text) {
		String s = text.strip();
		if (digits(s)) {
			return s.length() != 17 && s.length() != 14 && s.length() != 8;
		}
		Matcher m = ISO.matcher(s);
		return m.matches() && m.group(8) != null;
	}

	private static boolean digits(String s) {
		for (int i = 0; i < s.length(); i++) {
			char c = s.charAt(i);
			if ((c < '0' || c > '9') && !(c == '.' && i == s.length() - 2 && s.endsWith(".0"))) {
				return false;
			}
		}
		return !s.isEmpty();
	}

	private static long number(String text) {
		String s = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
		if (s.length() == 14 || s.length() == 17) {
			return millis(s.substring(0, 4), s.substring(4, 6), s.substring(6, 8), s.substring(8, 10),
					s.substring(10, 12), s.substring(12, 14), s.length() == 14 ? null : s.substring(14), null);
		}
		if (s.charAt(0) == '0' || s.length() > 13) {
			return NONE;
		}
		long value = Long.parseLong(s);
		if (value >= FIRST_EPOCH_SECOND && value <= LAST_EPOCH_SECOND) {
			return value * 1000;
		}
		return value >= FIRST_EPOCH_SECOND * 1000 && value <= LAST_EPOCH_SECOND * 1000 ? value : NONE;
	}

	private static long millis(String year, String month, String day, String hour, String minute, String second,
			String fraction, String zone) {
		int s = second == null ? 0 : Integer.parseInt(second);
		boolean leap = s == 60;
		LocalDateTime local = LocalDateTime.of(Integer.parseInt(year), Integer.parseInt(month),
				Integer.parseInt(day), hour == null ? 0 : Integer.parseInt(hour),
				minute == null ? 0 : Integer.parseInt(minute), leap ? 59 : s);
		LocalDateTime utc = local.minusSeconds(offsetSeconds(zone));
		if (leap && (utc.getHour() != 23 || utc.getMinute() != 59)) {
			return NONE;
		}
		long millis = utc.toEpochSecond(ZoneOffset.UTC) * 1000;
		return fraction == null ? millis : millis + Integer.parseInt((fraction + "00").substring(0, 3));
	}

	private static long offsetSeconds(String zone) {
		if (zone == null || zone.equalsIgnoreCase("z")) {
			return 0;
		}
		String digits = zone.substring(1).replace(":", "");
		int hours = Integer.parseInt(digits.substring(0, 2));
		int minutes = digits.length() > 2 ? Integer.parseInt(digits.substring(2)) : 0;
		if (hours > 23 || minutes > 59) {
			throw new DateTimeException(Words.bind(Messages.Times_offset, zone));
		}
		return (zone.charAt(0) == '-' ? -1 : 1) * (hours * 3600L + minutes * 60L);
	}
}
