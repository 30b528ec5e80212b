package org.cairnfield.exchange;

import java.util.LinkedHashMap;
import java.util.Map;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.NotHeard;
import org.cairnfield.exchange.internal.text.CellNumbers;

/**
 * Turns cells into levels, and counts what a person should be told about them: one for each block of rows, and one to
 * {@link #add} them up.
 */
final class LevelReader {

	/** The access point was not heard. */
	static final int NOT_HEARD = 1;
	/** The cell is no number. */
	static final int NO_NUMBER = 2;
	/** The number is no level. */
	static final int OUT_OF_RANGE = 3;

	private static final int MOST_DISTINCT = 64;

	private final NotHeard notHeard;
	private final boolean decimalComma;
	private final boolean onlyEmpty;
	private final boolean[] plain = new boolean[RadioMap.HIGHEST_RSSI_DBM - RadioMap.LOWEST_RSSI_DBM + 1];
	private long readings;
	private long rounded;
	private long decimals;
	private long zeros;
	private long blanks;
	private long outside;
	private final Map<Double, Long> outsideValues = new LinkedHashMap<>();

	LevelReader(NotHeard notHeard, boolean decimalComma) {
		this.notHeard = notHeard;
		this.decimalComma = decimalComma;
		this.onlyEmpty = notHeard.isOnlyEmpty();
		for (int i = 0; i < plain.length; i++) {
			plain[i] = !notHeard.is(i + RadioMap.LOWEST_RSSI_DBM);
		}
	}

	/** Counts what another has counted in rows further down. */
	void add(LevelReader next) {
		readings += next.readings;
		rounded += next.rounded;
		decimals += next.decimals;
		zeros += next.zeros;
		blanks += next.blanks;
		outside += next.outside;
		next.outsideValues.forEach((value, count) -> {
			if (outsideValues.containsKey(value) || outsideValues.size() < MOST_DISTINCT) {
				outsideValues.merge(value, count, Long::sum);
			}
		});
	}

	/** A level of -120 to 0 dBm, or one of the positive signs of this class. */
	int read(BlockRows row, int column) {
		int value = row.level(column);
		return value == CellNumbers.OTHER ? read(row.get(column)) : quick(value);
	}

	/** As {@link #read(BlockRows, int)}. */
	int read(String cell) {
		int value = CellNumbers.level(cell);
		return value == CellNumbers.OTHER ? slow(cell) : quick(value);
	}

	private int quick(int value) {
		if (value == CellNumbers.BLANK) {
			blanks++;
			return NOT_HEARD;
		}
		int at = value - RadioMap.LOWEST_RSSI_DBM;
		if (at >= 0 && at < plain.length && plain[at]) {
			readings++;
			zeros += value == 0 ? 1 : 0;
			return value;
		}
		return notHeard.is(value) ? NOT_HEARD : outside(value);
	}

	private int slow(String cell) {
		double value = CellNumbers.parse(cell, decimalComma);
		if (Double.isNaN(value)) {
			return notHeard.isWord(cell) ? NOT_HEARD : NO_NUMBER;
		}
		if (notHeard.is(value)) {
			return NOT_HEARD;
		}
		if (value < RadioMap.LOWEST_RSSI_DBM || value > RadioMap.HIGHEST_RSSI_DBM) {
			return outside(value);
		}
		int level = (int) Math.round(value);
		readings++;
		decimals++;
		rounded += level == value ? 0 : 1;
		zeros += level == 0 ? 1 : 0;
		return level;
	}

	private int outside(double value) {
		outside++;
		outsideValues.merge(value, 1L, Long::sum);
		return OUT_OF_RANGE;
	}

	/** The number that nearly all cells out of range agree on, if it may have meant not heard; or null. */
	String unknownSign() {
		Map.Entry<Double, Long> best = outsideValues.entrySet().stream().max(Map.Entry.comparingByValue()).orElse(null);
		return best != null && best.getValue() >= 20 && best.getValue() * 10 >= outside * 9
				? CellNumbers.plain(best.getKey())
				: null;
	}

	String describe(int sign, String cell) {
		return sign == NO_NUMBER ? Words.bind(Messages.LevelReader_theLevelIsNoNumber, CellWords.shown(cell))
				: Words.bind(Messages.LevelReader_levelIsOutside120To, CellWords.shown(cell), notHeard);
	}

	void note(FilePlan plan) {
		if (decimals > 0) {
			plan.note(Words.bind(Messages.LevelReader_levelsCarryDecimalsRoundedTo, CellWords.count(rounded),
					CellWords.count(readings)));
		}
		if (zeros > 0) {
			plan.note(Words.bind(Messages.LevelReader_readingsOf0DbmAre, CellWords.count(zeros)));
		}
		if (blanks > 0 && !onlyEmpty) {
			plan.note(Words.bind(Messages.LevelReader_blankCellsAreTakenAs, CellWords.count(blanks), notHeard));
		}
	}
}
