package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The rows of several tables side by side: signals first, then coordinates, ids and times. */
final class Companions implements Row, AutoCloseable {

	private final List<RowReader> readers = new ArrayList<>();
	private final List<FilePlan> plans = new ArrayList<>();
	private int[] starts = {};
	private final Map<ColumnRole, Integer> columns = new EnumMap<>(ColumnRole.class);

	/** Reads past the headers; closes everything where one cannot be opened. */
	Companions(FilePlan signals, Limits limits) throws IntakeException {
		try {
			for (FilePlan plan : new FilePlan[] {signals, signals.coordinates, signals.ids, signals.times}) {
				if (plan != null) {
					open(plan, limits);
				}
			}
		} catch (IntakeException e) {
			close();
			throw e;
		}
	}

	private void open(FilePlan plan, Limits limits) throws IntakeException {
		int start = plans.isEmpty() ? 0 : starts[starts.length - 1] + plans.get(plans.size() - 1).width;
		starts = java.util.Arrays.copyOf(starts, starts.length + 1);
		starts[starts.length - 1] = start;
		plans.add(plan);
		RowReader reader = new RowReader(plan.file, plan.dialect, limits);
		readers.add(reader);
		for (ColumnRole role : ColumnRole.values()) {
			if (plan.has(role)) {
				columns.putIfAbsent(role, start + plan.column(role));
			}
		}
		if (plan.dialect.header()) {
			reader.next();
		}
	}

	/** The first column of each role, in the joined row. */
	Map<ColumnRole, Integer> columns() {
		return columns;
	}

	RowReader signals() {
		return readers.get(0);
	}

	/** Moves all tables to their next rows; false at the end. */
	boolean next() throws IntakeException {
		boolean more = readers.get(0).next();
		for (int i = 1; i < readers.size(); i++) {
			if (readers.get(i).next() != more) {
				throw new IntakeException(plans.get(i).file, 0, "its rows changed in number while being read",
						"Take the files in again once nothing writes to them");
			}
		}
		return more;
	}

	@Override
	public String get(int column) {
		int table = starts.length - 1;
		while (starts[table] > column) {
			table--;
		}
		return readers.get(table).get(column - starts[table]);
	}

	@Override
	public int size() {
		return readers.stream().mapToInt(RowReader::size).sum();
	}

	/** Where the partners' rows stand, for messages; empty where there are none. */
	String where() {
		StringBuilder out = new StringBuilder();
		for (int i = 1; i < readers.size(); i++) {
			out.append(i == 1 ? " (" : ", ").append(plans.get(i).file.getFileName()).append(" line ")
					.append(readers.get(i).line());
		}
		return out.append(readers.size() > 1 ? ")" : "").toString();
	}

	/** What is wrong with the number of fields of a partner's row, or null. */
	String partnerTrouble() {
		for (int i = 1; i < readers.size(); i++) {
			String trouble = Widths.trouble(readers.get(i), plans.get(i));
			if (trouble != null) {
				return plans.get(i).file.getFileName() + " " + trouble;
			}
		}
		return null;
	}

	long consumed() {
		return readers.stream().mapToLong(RowReader::consumed).sum();
	}

	@Override
	public void close() {
		readers.forEach(RowReader::close);
	}
}
