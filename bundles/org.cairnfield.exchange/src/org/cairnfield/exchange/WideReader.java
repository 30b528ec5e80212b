package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.FloorNames;

/** Reads a table with a column per access point; where it has partners, their rows alongside. */
final class WideReader extends FileReader<WideReader.Batch> {

	/** A column with this many bad cells and no good one was taken for levels by mistake. */
	private static final int BAD_COLUMN_CELLS = 10;

	/** Access points are numbered by their positions in {@link #columns}. */
	static final class Batch extends RowBatch {
		final List<HeardRow> samples = new ArrayList<>();
		final int[] bad;
		final boolean[] good;
		private final int[] accessPoint;
		private final int[] rssiDbm;
		private int heard;
		private int firstSign;

		private Batch(LevelReader levels, PlaceReader place, int columns) {
			super(levels, place);
			bad = new int[columns];
			good = new boolean[columns];
			accessPoint = new int[columns];
			rssiDbm = new int[columns];
		}
	}

	private final int[] columns;
	private final long[] bad;
	private final boolean[] good;
	/** Index of access points by position in {@link #columns}, for each site. */
	private final Map<String, int[]> indexes = new HashMap<>();
	private final boolean twice;
	private long silent;

	WideReader(FilePlan plan, IntakeOptions options, MapSink sink, FloorNames floors, Workers workers) {
		super(plan, options, sink, floors, workers);
		columns = Arrays.stream(plan.columns(ColumnRole.SIGNAL)).filter(c -> !plan.leftOut.contains(c)).toArray();
		bad = new long[columns.length];
		good = new boolean[columns.length];
		twice = Arrays.stream(columns).mapToObj(plan.signalNames::get).distinct().count() < columns.length;
	}

	@Override
	void read() throws IntakeException, Fallback.Amended {
		readRows();
		learnNotHeard();
		leaveOutBadColumns();
		noteLevels();
		if (silent > 0) {
			plan.note(Words.bind(Messages.WideReader_samplesHeardNoAccessPoint, CellWords.count(silent)));
		}
	}

	@Override
	Batch newBatch(LevelReader levels, PlaceReader place) {
		return new Batch(levels, place, columns.length);
	}

	@Override
	void take(JoinedRows row, Batch batch) {
		String trouble = Widths.trouble(row.signals(), plan);
		if (trouble == null) {
			trouble = row.partnerTrouble();
		}
		if (trouble != null) {
			batch.refuse(row, Fault.FIELD_COUNT, trouble);
			return;
		}
		int firstBad = levels(row.signals(), batch);
		if (firstBad >= 0) {
			int column = columns[firstBad];
			batch.refuse(row, batch.firstSign == LevelReader.NO_NUMBER ? Fault.NOT_A_NUMBER : Fault.OUT_OF_RANGE,
					plan.called(column) + ": " + batch.levels.describe(batch.firstSign, row.get(column)));
			return;
		}
		if (!batch.place.read(row)) {
			batch.refuse(row, batch.place.fault(), batch.place.reason() + row.where());
			return;
		}
		batch.samples.add(new HeardRow(row.signals().line(), RowPlace.of(batch.place),
				Arrays.copyOf(batch.accessPoint, batch.heard), Arrays.copyOf(batch.rssiDbm, batch.heard)));
		batch.accepted++;
	}

	/** Reads the levels of a row; the position of the first bad one, or -1. */
	private int levels(BlockRows row, Batch batch) {
		int firstBad = -1;
		batch.heard = 0;
		for (int k = 0; k < columns.length; k++) {
			int level = batch.levels.read(row, columns[k]);
			if (level <= 0) {
				batch.good[k] = true;
				batch.accessPoint[batch.heard] = k;
				batch.rssiDbm[batch.heard++] = level;
			} else if (level != LevelReader.NOT_HEARD) {
				batch.bad[k]++;
				if (firstBad < 0) {
					firstBad = k;
					batch.firstSign = level;
				}
			}
		}
		return firstBad;
	}

	@Override
	void join(Batch batch) throws IntakeException {
		for (int k = 0; k < columns.length; k++) {
			good[k] |= batch.good[k];
			bad[k] += batch.bad[k];
		}
		for (HeardRow sample : batch.samples) {
			int[] index = indexes(sample.place().site(), sample.line());
			int[] accessPoint = sample.accessPoint();
			int[] rssiDbm = sample.rssiDbm();
			for (int k = 0; k < accessPoint.length; k++) {
				accessPoint[k] = index[accessPoint[k]];
			}
			int heard = twice ? strongestOfEach(accessPoint, rssiDbm) : accessPoint.length;
			silent += heard == 0 ? 1 : 0;
			sink.sample(plan, sample.line(), sample.place(), accessPoint, rssiDbm, heard);
		}
	}

	private int[] indexes(String site, long line) throws IntakeException {
		// without names per site one entry does for all
		String key = options.accessPointsPerSite() ? site : "";
		int[] index = indexes.get(key);
		if (index == null) {
			index = new int[columns.length];
			for (int k = 0; k < columns.length; k++) {
				index[k] = sink.accessPoint(plan, line, plan.signalNames.get(columns[k]), site);
			}
			indexes.put(key, index);
		}
		return index;
	}

	/** Puts the strongest level of each access point to the front; how many there are. */
	private static int strongestOfEach(int[] accessPoint, int[] rssiDbm) {
		Map<Integer, Integer> best = new LinkedHashMap<>();
		for (int k = 0; k < accessPoint.length; k++) {
			best.merge(accessPoint[k], rssiDbm[k], Math::max);
		}
		int heard = 0;
		for (Map.Entry<Integer, Integer> each : best.entrySet()) {
			accessPoint[heard] = each.getKey();
			rssiDbm[heard++] = each.getValue();
		}
		return heard;
	}

	/** A column that never held a level is a question of mapping, not of so many bad rows. */
	private void leaveOutBadColumns() throws Fallback.Amended, IntakeException {
		boolean any = false;
		for (int k = 0; k < columns.length; k++) {
			if (!good[k] && bad[k] >= BAD_COLUMN_CELLS) {
				plan.leftOut.add(columns[k]);
				plan.note(Words.bind(Messages.WideReader_holdsNoLevelFrom120, plan.called(columns[k]),
						CellWords.count(bad[k])));
				any = true;
			}
		}
		if (any && Arrays.stream(plan.columns(ColumnRole.SIGNAL)).allMatch(plan.leftOut::contains)) {
			throw new IntakeException(plan.file, 0, Messages.WideReader_noColumnHoldsLevelsFrom,
					Messages.WideReader_sayWithAMappingWhich);
		}
		if (any) {
			throw new Fallback.Amended();
		}
	}
}
