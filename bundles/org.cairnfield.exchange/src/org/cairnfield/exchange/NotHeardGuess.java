package org.cairnfield.exchange;

import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.NotHeard;
import org.cairnfield.exchange.internal.text.CellNumbers;

/**
 * What means "not heard", from the cells of all columns that hold levels. Publicly described data sets use a
 * fixed bogus value such as +100; replacing missing values by -100 to -110 dBm is common practice as well.
 * A number outside -120 to 0 is preferred to a blank, a blank to a heap at one end of the levels.
 *
 * @param sure false where nothing speaks for any value
 */
record NotHeardGuess(NotHeard value, String evidence, boolean sure) {

	/** Values in common use, believed on sight; any other must come up a few times. */
	private static final Set<Double> USUAL = Set.of(100.0, 110.0, 120.0, 127.0, 200.0, 255.0, 999.0, 1000.0, 9999.0,
			-127.0, -128.0, -150.0, -200.0, -255.0, -999.0, -1000.0, -9999.0);

	/**
	 * @param columns       of levels
	 * @param blanksMeanIt  the layout itself says that a blank means not heard: no heap is looked for
	 */
	static NotHeardGuess of(Collection<ColumnStats> columns, boolean blanksMeanIt) {
		long cells = 0;
		long blanks = 0;
		Map<Double, Long> outside = new HashMap<>();
		Map<String, Long> words = new HashMap<>();
		long[] levels = new long[RadioMap.HIGHEST_RSSI_DBM - RadioMap.LOWEST_RSSI_DBM + 1];
		for (ColumnStats c : columns) {
			cells += c.filled + c.empty;
			blanks += c.empty;
			c.outside.forEach((v, n) -> outside.merge(v, n, Long::sum));
			c.missing.forEach((w, n) -> words.merge(w, n, Long::sum));
			for (int i = 0; i < levels.length; i++) {
				levels[i] += c.levels[i];
			}
		}
		NotHeardGuess guess = outside(outside, levels, cells, blanks);
		if (guess != null) {
			return guess;
		}
		Map.Entry<String, Long> word = words.entrySet().stream().max(Map.Entry.comparingByValue()).orElse(null);
		if (word != null && word.getValue() * 50 >= blanks) {
			return new NotHeardGuess(NotHeard.of(word.getKey()), Words.bind(Messages.NotHeardGuess_inOfCells,
					word.getKey(), CellWords.percent(word.getValue(), cells), CellWords.count(cells)), true);
		}
		if (blanks > 0) {
			return new NotHeardGuess(NotHeard.of(NotHeard.EMPTY), Words.bind(Messages.NotHeardGuess_ofCellsAreBlank,
					CellWords.percent(blanks, cells), CellWords.count(cells)), true);
		}
		guess = blanksMeanIt ? null : heap(levels, cells);
		return guess != null ? guess
				: new NotHeardGuess(NotHeard.of(NotHeard.EMPTY),
						Words.bind(Messages.NotHeardGuess_everyOneOfCellsLooked, CellWords.count(cells)), false);
	}

	private static NotHeardGuess outside(Map<Double, Long> outside, long[] levels, long cells, long blanks) {
		Map.Entry<Double, Long> best = outside.entrySet().stream().max(Map.Entry.comparingByValue()).orElse(null);
		if (best == null) {
			return null;
		}
		long n = best.getValue();
		long all = outside.values().stream().mapToLong(Long::longValue).sum();
		boolean believable = USUAL.contains(best.getKey()) || n >= 3 && n * 50 >= cells;
		if (!believable || n * 10 < all * 6 || n * 50 < blanks) {
			return null;
		}
		String value = CellNumbers.plain(best.getKey());
		return new NotHeardGuess(NotHeard.of(value),
				Words.bind(Messages.NotHeardGuess_valueInOfCellsNever, value, CellWords.percent(n, cells),
						CellWords.count(cells), span(levels),
						all > n ? Words.bind(Messages.NotHeardGuess_otherCellsLieOutsideToo, all - n) : ""),
				true);
	}

	/** Many cells at 0, or at a lowest level of -100 or less, with next to nothing beside them. */
	private static NotHeardGuess heap(long[] levels, long cells) {
		int top = levels.length - 1;
		long nearZero = 0;
		for (int i = top - 5; i < top; i++) {
			nearZero += levels[i];
		}
		if (levels[top] * 20 >= cells && levels[top] > 20 * nearZero) {
			return new NotHeardGuess(NotHeard.of("0"), Words.bind(Messages.NotHeardGuess_value0InOfCells,
					CellWords.percent(levels[top], cells), CellWords.count(cells)), true);
		}
		int lowest = 0;
		while (lowest < top && levels[lowest] == 0) {
			lowest++;
		}
		int next = lowest + 1;
		while (next < top && levels[next] == 0) {
			next++;
		}
		int dbm = lowest + RadioMap.LOWEST_RSSI_DBM;
		if (dbm <= -100 && levels[lowest] * 5 >= cells && levels[lowest] >= 5 * levels[Math.min(next, top)]) {
			return new NotHeardGuess(NotHeard.of(Integer.toString(dbm)), String.format(Locale.ROOT,
					Messages.NotHeardGuess_valueInOfCellsThe, dbm,
					CellWords.percent(levels[lowest], cells), CellWords.count(cells), next + RadioMap.LOWEST_RSSI_DBM,
					CellWords.percent(levels[Math.min(next, top)], cells)), true);
		}
		return null;
	}

	private static String span(long[] levels) {
		int low = 0;
		int high = levels.length - 1;
		while (low < high && levels[low] == 0) {
			low++;
		}
		while (high > low && levels[high] == 0) {
			high--;
		}
		return Words.bind(Messages.NotHeardGuess_to, low + RadioMap.LOWEST_RSSI_DBM,
				high + RadioMap.LOWEST_RSSI_DBM);
	}
}
