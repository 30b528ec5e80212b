package org.cairnfield.exchange;

import java.util.stream.IntStream;

import org.cairnfield.core.text.Words;

/**
 * Finds coordinates in a wide table without a header: x and y in the first or last columns, told from levels by fractions or by
 * values that no level has, with the floor behind them where a column of few whole numbers stands there.
 */
final class CoordinateColumns {

	/** Beside fewer columns of levels nothing can be told. */
	private static final int FEWEST_SIGNALS = 4;
	private static final double MOST_FLOOR = 200;

	private final FilePlan plan;
	private final ColumnStats[] stats;

	CoordinateColumns(FilePlan plan, ColumnStats[] stats) {
		this.plan = plan;
		this.stats = stats;
	}

	/** Gives the columns their roles. @return evidence in words; empty where there are none, or where they could be levels */
	String guess() {
		int last = stats.length - 1;
		if (stats.length < FEWEST_SIGNALS + 2) {
			return "";
		}
		boolean floorLast = isFloor(last) && isCoordinate(last - 2) && isCoordinate(last - 1);
		int x = floorLast ? last - 2
				: isCoordinate(last - 1) && isCoordinate(last) ? last - 1 : isCoordinate(0) && isCoordinate(1) ? 0 : -1;
		if (x < 0) {
			return "";
		}
		int floor = floorLast ? last : x == 0 && isFloor(2) ? 2 : -1;
		long signals = IntStream.rangeClosed(0, last).filter(i -> i != x && i != x + 1 && i != floor)
				.filter(i -> stats[i].isSignal() && isWhole(i)).count();
		if (signals < FEWEST_SIGNALS) {
			return "";
		}
		String why = x == 0 ? Messages.CoordinateColumns_amongTheFirstColumns
				: Messages.CoordinateColumns_amongTheLastColumns;
		plan.role(x, ColumnRole.X, Words.bind(Messages.CoordinateColumns_numbersThatAreNoLevels, why));
		plan.role(x + 1, ColumnRole.Y, Words.bind(Messages.CoordinateColumns_numbersThatAreNoLevels, why));
		if (floor >= 0) {
			plan.role(floor, ColumnRole.FLOOR, Messages.CoordinateColumns_besideTheCoordinatesFewWhole);
		}
		return Words.bind(Messages.CoordinateColumns_columnsHoldLevelsInWhole, signals, why,
				isWhole(x) && isWhole(x + 1) ? Messages.CoordinateColumns_numbersThatNoLevelHas
						: Messages.CoordinateColumns_numbersWithFractions);
	}

	private boolean isWhole(int column) {
		return stats[column].whole == stats[column].numbers;
	}

	/** Numbers in every row, most with fractions, or hardly one that a level could have. */
	private boolean isCoordinate(int column) {
		ColumnStats s = stats[column];
		boolean numbers = s.filled > 0 && s.empty == 0 && s.numbers == s.filled && s.times * 2 < s.filled;
		return numbers && (s.whole * 2 < s.numbers || s.spread && s.inRange * 10 < s.numbers);
	}

	private boolean isFloor(int column) {
		ColumnStats s = stats[column];
		return s.filled > 0 && s.empty == 0 && s.numbers == s.filled && isWhole(column) && !s.isSignal() && s.min > -100
				&& s.max < MOST_FLOOR
				&& s.outside.size() + (s.inRange > 0 ? 1 : 0) <= FEWEST_SIGNALS * FEWEST_SIGNALS && s.max - s.min < 40;
	}
}
