package org.cairnfield.curation.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

import org.cairnfield.model.values.SampleKey;

/**
 * The queue as it is listed: rows in order, under headings where they are grouped, unplaced samples last. Immutable; a
 * verdict does not move lines, so that nobody loses the place.
 */
public final class QueueList {

	/**
	 * A line of the list.
	 *
	 * @param heading of a group, null in a row
	 * @param rows    under the heading; of a row 1
	 * @param open    whether the rows of the heading are listed
	 * @param row     null in a heading
	 */
	public record Line(String heading, int rows, boolean open, QueueRow row) {

		/** Whether it is a heading. */
		public boolean isHeading() {
			return row == null;
		}
	}

	/** Nothing. */
	public static final QueueList EMPTY = new QueueList(List.of());

	private final List<Line> lines;
	private final Map<SampleKey, Integer> lineOf = new HashMap<>();

	private QueueList(List<Line> lines) {
		this.lines = lines;
		for (int i = 0; i < lines.size(); i++) {
			if (!lines.get(i).isHeading()) {
				lineOf.put(lines.get(i).row().key(), i);
			}
		}
	}

	/**
	 * @param sorted in the order wanted
	 * @param wanted which are listed
	 * @param closed headings whose rows are not listed
	 */
	public static QueueList of(List<QueueRow> sorted, Predicate<QueueRow> wanted, QueueGrouping grouping,
			Set<String> closed) {
		Map<String, List<QueueRow>> groups = new LinkedHashMap<>();
		List<QueueRow> unplaced = new ArrayList<>();
		for (QueueRow row : sorted) {
			if (wanted.test(row)) {
				if (row.evidence().made()) {
					groups.computeIfAbsent(grouping.heading(row), heading -> new ArrayList<>()).add(row);
				} else {
					unplaced.add(row);
				}
			}
		}
		if (!unplaced.isEmpty()) {
			groups.put(QueueGrouping.UNPLACED, unplaced);
		}
		List<Line> lines = new ArrayList<>();
		groups.forEach((heading, rows) -> {
			boolean open = !closed.contains(heading);
			if (!heading.isEmpty()) {
				lines.add(new Line(heading, rows.size(), open, null));
			}
			if (open || heading.isEmpty()) {
				rows.forEach(row -> lines.add(new Line(null, 1, true, row)));
			}
		});
		return new QueueList(List.copyOf(lines));
	}

	/** From top to bottom. */
	public List<Line> lines() {
		return lines;
	}

	/** Where a sample is listed, −1 where it is not. */
	public int lineOf(SampleKey sample) {
		return sample == null ? -1 : lineOf.getOrDefault(sample, -1);
	}

	/**
	 * The row to look at after one: the next that is wanted, from the top again at the end.
	 *
	 * @param from null for the beginning
	 * @param by   1 for forwards, −1 for backwards
	 * @return null where there is none but the row itself
	 */
	public QueueRow after(SampleKey from, int by, Predicate<QueueRow> wanted) {
		int start = from == null ? by > 0 ? -1 : lines.size() : lineOf(from);
		for (int step = 1; step <= lines.size(); step++) {
			Line line = lines.get(Math.floorMod(start + by * step, lines.size()));
			if (!line.isHeading() && !line.row().key().equals(from) && wanted.test(line.row())) {
				return line.row();
			}
		}
		return null;
	}
}
