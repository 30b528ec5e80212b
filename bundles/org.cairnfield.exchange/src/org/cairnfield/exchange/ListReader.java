package org.cairnfield.exchange;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

import org.cairnfield.core.task.Progress;
import org.cairnfield.exchange.internal.text.FloorNames;
import org.cairnfield.exchange.internal.text.Guard;

/** Reads a table with a row per scan that lists what was heard, see {@link ListCells}, and the rows of its partners alongside. */
final class ListReader extends FileReader {

	private final Map<Integer, Integer> heard = new LinkedHashMap<>();
	private long silent;
	private long repeated;

	ListReader(FilePlan plan, IntakeOptions options, MapSink sink, FloorNames floors, Progress progress) {
		super(plan, options, sink, floors, progress);
	}

	@Override
	void read() throws IntakeException {
		FilePlan positions = plan.coordinates == null ? plan : plan.coordinates;
		try (Companions tables = new Companions(plan, options.limits())) {
			PlaceReader place = new PlaceReader(tables.columns(), positions, plan.site, options, floors);
			while (tables.next()) {
				row(tables.consumed());
				take(tables, place);
			}
			noteTimes(place);
		}
		if (plan.channels != null) {
			new ChannelLists(plan, options, sink).read();
		}
		levels.note(plan);
		if (repeated > 0) {
			plan.note(CellWords.count(repeated) + " readings name an access point that their row has already: the strongest level counts");
		}
		if (silent > 0) {
			plan.note(CellWords.count(silent) + " samples heard no access point");
		}
	}

	private void take(Companions tables, PlaceReader place) throws IntakeException {
		RowReader row = tables.signals();
		String trouble = tables.partnerTrouble();
		if (trouble != null) {
			refuse(row, Fault.FIELD_COUNT, trouble);
			return;
		}
		if (!place.read(tables)) {
			refuse(row, place.fault(), place.reason() + tables.where());
			return;
		}
		heard.clear();
		for (int i = 0; i < row.size(); i++) {
			if (!row.get(i).isBlank() && !take(row, i, place)) {
				return;
			}
		}
		silent += heard.isEmpty() ? 1 : 0;
		int[] accessPoints = heard.keySet().stream().mapToInt(Integer::intValue).toArray();
		int[] rssiDbm = Arrays.stream(accessPoints).map(heard::get).toArray();
		sink.sample(plan, row.line(), RowPlace.of(place), accessPoints, rssiDbm, accessPoints.length);
		accepted++;
	}

	/** Whether the cell is sound; the row is refused where it is not. */
	private boolean take(RowReader row, int column, PlaceReader place) throws IntakeException {
		String cell = row.get(column).strip();
		int start = ListCells.numberStart(cell);
		String name = start < 0 ? "" : Guard.off(cell.substring(0, start - 1).strip());
		if (name.isEmpty() || !PlaceReader.isName(name)) {
			refuse(row, Fault.NAME, "field " + (column + 1) + " is no name:level pair: " + CellWords.shown(cell));
			return false;
		}
		int level = levels.read(cell.substring(start));
		if (level > LevelReader.NOT_HEARD) {
			refuse(row, level == LevelReader.NO_NUMBER ? Fault.NOT_A_NUMBER : Fault.OUT_OF_RANGE,
					"field " + (column + 1) + ": " + levels.describe(level, cell.substring(start)));
			return false;
		}
		int accessPoint = sink.accessPoint(plan, row.line(), name, place.site);
		if (level != LevelReader.NOT_HEARD) {
			repeated += heard.containsKey(accessPoint) ? 1 : 0;
			heard.merge(accessPoint, level, Math::max);
		}
		return true;
	}
}
