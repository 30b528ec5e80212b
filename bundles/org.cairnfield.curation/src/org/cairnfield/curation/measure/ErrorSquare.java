package org.cairnfield.curation.measure;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.cairnfield.curation.measure.SideBySide.Placed;

/**
 * A square of a floor and the mean error of the test samples that were taken in it; its corners lie at multiples of its side.
 *
 * @param leftMetres   smallest x
 * @param bottomMetres smallest y
 * @param samples      that got a place; those without have no error
 */
public record ErrorSquare(double leftMetres, double bottomMetres, double sideMetres, double meanMetres, int samples) {

	/** Column and row of a square. */
	private record Cell(long column, long row) implements Comparable<Cell> {

		@Override
		public int compareTo(Cell other) {
			return row != other.row ? Long.compare(row, other.row) : Long.compare(column, other.column);
		}
	}

	/** Those with a sample, row by row. */
	static List<ErrorSquare> of(List<Placed> placed, double side) {
		return placed.stream().filter(each -> each.landing() != Landing.NOWHERE)
				.collect(Collectors.groupingBy(
						each -> new Cell((long) Math.floor(each.xMetres() / side),
								(long) Math.floor(each.yMetres() / side)),
						TreeMap::new, Collectors.summarizingDouble(Placed::errorMetres)))
				.entrySet().stream()
				.map(cell -> new ErrorSquare(cell.getKey().column() * side, cell.getKey().row() * side, side,
						cell.getValue().getAverage(), (int) cell.getValue().getCount()))
				.toList();
	}
}
