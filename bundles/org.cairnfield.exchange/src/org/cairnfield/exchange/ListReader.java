package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.FloorNames;
import org.cairnfield.exchange.internal.text.Guard;

/** Reads a table with a row per scan that lists what was heard, see {@link ListCells}, and the rows of its partners alongside. */
final class ListReader extends FileReader<ListReader.Batch> {

	/** Access points are numbered by {@link #names}. */
	static final class Batch extends RowBatch {
		private final List<HeardRow> samples = new ArrayList<>();
		private final BatchNames names;
		private final Map<Integer, Integer> heard = new LinkedHashMap<>();
		private long repeated;

		private Batch(LevelReader levels, PlaceReader place, BatchNames names) {
			super(levels, place);
			this.names = names;
		}
	}

	private long silent;
	private long repeated;

	ListReader(FilePlan plan, IntakeOptions options, MapSink sink, FloorNames floors, Workers workers) {
		super(plan, options, sink, floors, workers);
	}

	@Override
	void read() throws IntakeException {
		readRows();
		if (plan.channels != null) {
			new ChannelLists(plan, options, sink).read();
		}
		noteLevels();
		if (repeated > 0) {
			plan.note(Words.bind(Messages.ListReader_readingsNameAnAccessPoint, CellWords.count(repeated)));
		}
		if (silent > 0) {
			plan.note(Words.bind(Messages.ListReader_samplesHeardNoAccessPoint, CellWords.count(silent)));
		}
	}

	@Override
	Batch newBatch(LevelReader levels, PlaceReader place) {
		return new Batch(levels, place, new BatchNames(options));
	}

	@Override
	void take(JoinedRows row, Batch batch) {
		String trouble = row.partnerTrouble();
		if (trouble != null) {
			batch.refuse(row, Fault.FIELD_COUNT, trouble);
			return;
		}
		if (!batch.place.read(row)) {
			batch.refuse(row, batch.place.fault(), batch.place.reason() + row.where());
			return;
		}
		batch.heard.clear();
		for (int i = 0; i < row.signals().size(); i++) {
			if (!row.signals().get(i).isBlank() && !take(row, i, batch)) {
				return;
			}
		}
		batch.samples.add(new HeardRow(row.signals().line(), RowPlace.of(batch.place),
				batch.heard.keySet().stream().mapToInt(Integer::intValue).toArray(),
				batch.heard.values().stream().mapToInt(Integer::intValue).toArray()));
		batch.accepted++;
	}

	/** Whether the cell is sound; the row is refused where it is not. */
	private static boolean take(JoinedRows row, int column, Batch batch) {
		String cell = row.signals().get(column).strip();
		int start = ListCells.numberStart(cell);
		String name = start < 0 ? "" : Guard.off(cell.substring(0, start - 1).strip());
		if (name.isEmpty() || !PlaceReader.isName(name)) {
			batch.refuse(row, Fault.NAME,
					Words.bind(Messages.ListReader_fieldIsNoNameLevel, column + 1, CellWords.shown(cell)));
			return false;
		}
		int level = batch.levels.read(cell.substring(start));
		if (level > LevelReader.NOT_HEARD) {
			batch.refuse(row, level == LevelReader.NO_NUMBER ? Fault.NOT_A_NUMBER : Fault.OUT_OF_RANGE,
					Words.bind(Messages.ListReader_field, column + 1,
							batch.levels.describe(level, cell.substring(start))));
			return false;
		}
		int accessPoint = batch.names.number(name, batch.place.site, row.signals().line());
		if (level != LevelReader.NOT_HEARD) {
			batch.repeated += batch.heard.containsKey(accessPoint) ? 1 : 0;
			batch.heard.merge(accessPoint, level, Math::max);
		}
		return true;
	}

	@Override
	void join(Batch batch) throws IntakeException {
		repeated += batch.repeated;
		for (HeardRow sample : batch.samples) {
			batch.names.tell(sink, plan, sample.line());
			int[] accessPoint = sample.accessPoint();
			for (int k = 0; k < accessPoint.length; k++) {
				accessPoint[k] = batch.names.index(accessPoint[k]);
			}
			silent += accessPoint.length == 0 ? 1 : 0;
			sink.sample(plan, sample.line(), sample.place(), accessPoint, sample.rssiDbm(), accessPoint.length);
		}
		batch.names.tell(sink, plan, Long.MAX_VALUE);
	}
}
