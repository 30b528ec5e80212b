package org.cairnfield.exchange;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.exchange.internal.text.NotHeard;
import org.cairnfield.exchange.internal.text.CellNumbers;
import org.cairnfield.exchange.internal.text.Times;

/** What the first rows hold in one column. */
final class ColumnStats {

	private static final int MOST_DISTINCT = 32;
	/** Fewer rows may well be from as many floors, lowest first. */
	private static final int FEWEST_COUNTED = 8;
	private static final int MOST_DIGITS = 9;
	/** No access point is only ever heard this strongly, so weaker levels must show. */
	private static final double WEAK_DBM = -20;
	private static final double LATEST_START = 3600;
	/** Some months. */
	private static final double LONGEST_SECONDS = 1e7;

	long filled;
	long empty;
	long numbers;
	/** Numbers from -120 to 0. */
	long inRange;
	long weak;
	long whole;
	long times;
	long addresses;
	double min = Double.POSITIVE_INFINITY;
	double max = Double.NEGATIVE_INFINITY;
	/** Numbers from -120 to 0 by whole dBm. */
	final long[] levels = new long[RadioMap.HIGHEST_RSSI_DBM - RadioMap.LOWEST_RSSI_DBM + 1];
	final Map<Double, Long> outside = new HashMap<>(4);
	/** True where numbers outside are too many to be one sign for something. */
	boolean spread;
	final Map<String, Long> missing = new HashMap<>(2);
	private final Set<String> distinct = new HashSet<>(4);
	/** Rows that end in a number one more than that of the row before, and are else the same. */
	private long steps;
	private String last = "";
	/** Numbers less than the one before. */
	private long falls;
	private double before = Double.NEGATIVE_INFINITY;

	void add(String cell, boolean decimalComma) {
		if (cell.isBlank()) {
			empty++;
			return;
		}
		filled++;
		steps += follows(last, cell) ? 1 : 0;
		last = cell;
		if (distinct.size() < MOST_DISTINCT && cell.length() < 100) {
			distinct.add(cell);
		}
		int quick = CellNumbers.level(cell);
		double value = quick == CellNumbers.OTHER ? CellNumbers.parse(cell, decimalComma) : quick;
		if (Double.isNaN(value)) {
			text(cell);
			return;
		}
		numbers++;
		falls += value < before ? 1 : 0;
		before = value;
		whole += value == Math.rint(value) ? 1 : 0;
		min = Math.min(min, value);
		max = Math.max(max, value);
		if (value >= RadioMap.LOWEST_RSSI_DBM && value <= RadioMap.HIGHEST_RSSI_DBM) {
			inRange++;
			weak += value <= WEAK_DBM ? 1 : 0;
			levels[(int) Math.round(value) - RadioMap.LOWEST_RSSI_DBM]++;
		} else if (outside.containsKey(value) || outside.size() < MOST_DISTINCT) {
			outside.merge(value, 1L, Long::sum);
		} else {
			spread = true;
		}
		if (quick == CellNumbers.OTHER && Times.parse(cell) != Times.NONE) {
			times++;
		}
	}

	private void text(String cell) {
		String word = cell.strip().toLowerCase(Locale.ROOT);
		if (NotHeard.WORDS.contains(word)) {
			missing.merge(word, 1L, Long::sum);
		} else if (HeaderWords.isAddress(cell.strip())) {
			addresses++;
		} else if (Times.parse(cell) != Times.NONE) {
			times++;
		}
	}

	/** How often the commonest number outside -120 to 0 stands. */
	long commonestOutside() {
		return outside.values().stream().mapToLong(Long::longValue).max().orElse(0);
	}

	/** Levels, apart from one number that may mean not heard, and the odd bad cell. */
	boolean isSignal() {
		long missed = missing.values().stream().mapToLong(Long::longValue).sum();
		long good = inRange + (spread ? 0 : commonestOutside());
		long bad = filled - missed - good;
		return weak > 0 && (bad * 10 <= good || bad <= 1 && good >= 2);
	}

	/** The one value of all filled cells, or NaN. */
	double onlyNumber() {
		return numbers > 0 && numbers == filled && min == max ? min : Double.NaN;
	}

	boolean isMostlyNumbers() {
		return numbers * 2 > filled;
	}

	/** Numbers, but not one that is a level, a sign for not heard apart. */
	boolean isWhollyOutside() {
		return numbers > 0 && inRange == 0;
	}

	/** Whether it may count seconds since the survey began: from near 0 upwards, never back. */
	boolean isRelativeTime() {
		return numbers > 1 && numbers == filled && falls == 0 && min >= 0 && min < LATEST_START && max > min
				&& max < LONGEST_SECONDS;
	}

	/** Whether it counts up with every row, as a spreadsheet does that fills a column by itself. */
	boolean isCounter() {
		return filled >= FEWEST_COUNTED && steps == filled - 1;
	}

	private static boolean follows(String before, String cell) {
		int end = stem(cell);
		int stem = stem(before);
		return cell.length() - end <= MOST_DIGITS && before.length() - stem <= MOST_DIGITS && end < cell.length()
				&& stem < before.length()
				&& end == stem && cell.startsWith(before.substring(0, stem))
				&& Long.parseLong(cell.substring(end)) == Long.parseLong(before.substring(stem)) + 1;
	}

	/** Where the digits at the end begin. */
	private static int stem(String cell) {
		int at = cell.length();
		while (at > 0 && cell.charAt(at - 1) >= '0' && cell.charAt(at - 1) <= '9') {
			at--;
		}
		return at;
	}

	int distinct() {
		return distinct.size();
	}
}
