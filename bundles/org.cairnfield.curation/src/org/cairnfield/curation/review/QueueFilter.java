package org.cairnfield.curation.review;

import java.util.List;

import org.cairnfield.core.text.Words;
import org.cairnfield.curation.filter.FilterException;
import org.cairnfield.curation.filter.RowFilter;
import org.cairnfield.curation.filter.RowFilter.Column;

/** Which lines of the queue are shown, said in the language in which samples are filtered. Immutable. */
public final class QueueFilter {

	/** A line: its sample, and how that stands. */
	private record Line(QueueRow row, String state) {
	}

	private static final List<Column<Line>> COLUMNS = List.of(
			Column.texts("id", "SH-0412", line -> line.row().sample()),
			Column.texts("survey", "sh-spring", line -> line.row().key().survey()),
			Column.texts("site", Messages.QueueFilter_tideHouse, line -> line.row().site()),
			Column.numbers("floor", "", 0, "1", line -> line.row().level() == null ? Double.NaN : line.row().level()),
			Column.texts("state", "approved", Line::state),
			Column.numbers("r", "", 2, "0.8", line -> line.row().evidence().strengthR()),
			Column.texts("band", "close", line -> line.row().band()),
			Column.numbers("margin", "", 3, "0.05", line -> line.row().evidence().margin()),
			Column.numbers("cluster", "", 0, "7",
					line -> line.row().evidence().made() ? line.row().evidence().cluster() : Double.NaN),
			Column.numbers("nearest", "", 0, "3", line -> number(line.row().evidence().nearestCluster())),
			Column.numbers("distance", "m", 1, "5", line -> line.row().evidence().floorMetres()),
			Column.numbers("place", "", 0, "90", line -> 100 * line.row().evidence().placeScore()),
			Column.numbers("readings", "", 0, "90", line -> 100 * line.row().evidence().readingsScore()),
			Column.texts("warning", "far", line -> line.row().warnings()),
			Column.texts("carrier", "SH-0413",
					line -> line.row().evidence().carrier() == null ? "" : line.row().carrier()),
			Column.texts("assigned", Messages.QueueFilter_aReviewer, line -> String.join(", ", line.row().assigned())));

	/** Lets everything pass. */
	public static final QueueFilter NONE = new QueueFilter("", null);

	/** The language, a line for each thing to know. */
	public static final List<String> HELP = List.of(Messages.QueueFilter_c7AWordLooksInto,
			"r < 0.8               compare by = != < <= > >=",
			Messages.QueueFilter_warningFarHasThisIn, Messages.QueueFilter_stateNoneNobodyHasDecided,
			Messages.QueueFilter_andOrNotPutTogether,
			Words.bind(Messages.QueueFilter_compare, RowFilter.fields(COLUMNS)));

	private final String text;
	private final RowFilter<Line> filter;

	private QueueFilter(String text, RowFilter<Line> filter) {
		this.text = text;
		this.filter = filter;
	}

	/** @throws FilterException telling where it cannot be understood and what to write */
	public static QueueFilter parse(String text) throws FilterException {
		return new QueueFilter(text.strip(),
				RowFilter.parse(text, COLUMNS, Messages.QueueFilter_theQueue,
						line -> line.row().text() + ' ' + line.state()));
	}

	private static double number(int cluster) {
		return cluster < 0 ? Double.NaN : cluster;
	}

	/** Whether nothing is asked for. */
	public boolean isEmpty() {
		return filter == null || filter.isEverything();
	}

	/** @param state of the sample, in words with a sign; empty for undecided */
	public boolean accepts(QueueRow row, String state) {
		return filter == null || filter.accepts(new Line(row, state));
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof QueueFilter queue && queue.text.equals(text);
	}

	@Override
	public int hashCode() {
		return text.hashCode();
	}
}
