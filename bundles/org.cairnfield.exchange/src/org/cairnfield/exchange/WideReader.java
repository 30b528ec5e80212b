package org.cairnfield.exchange;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

import org.cairnfield.core.task.Progress;
import org.cairnfield.exchange.internal.text.FloorNames;

/** Reads a table with a column per access point; where it has partners, their rows alongside. */
final class WideReader extends FileReader {

	/** A column with this many bad cells and no good one was taken for levels by mistake. */
	private static final int BAD_COLUMN_CELLS = 10;

	private final int[] columns;
	private final long[] bad;
	private final boolean[] good;
	/** Index of access points by position in {@link #columns}, for each site. */
	private final Map<String, int[]> indexes = new HashMap<>();
	private final boolean twice;
	private int[] accessPoint;
	private int[] rssiDbm;
	private int heard;
	private int firstSign;
	private long silent;

	WideReader(FilePlan plan, IntakeOptions options, MapSink sink, FloorNames floors, Progress progress) {
		super(plan, options, sink, floors, progress);
		columns = Arrays.stream(plan.columns(ColumnRole.SIGNAL)).filter(c -> !plan.leftOut.contains(c)).toArray();
		bad = new long[columns.length];
		good = new boolean[columns.length];
		accessPoint = new int[columns.length];
		rssiDbm = new int[columns.length];
		twice = Arrays.stream(columns).mapToObj(plan.signalNames::get).distinct().count() < columns.length;
	}

	@Override
	void read() throws IntakeException, Fallback.Amended {
		FilePlan positions = plan.coordinates == null ? plan : plan.coordinates;
		try (Companions tables = new Companions(plan, options.limits())) {
			PlaceReader place = new PlaceReader(tables.columns(), positions, plan.site, options, floors);
			while (tables.next()) {
				row(tables.consumed());
				take(tables, place);
			}
			noteTimes(place);
		}
		learnNotHeard();
		leaveOutBadColumns();
		levels.note(plan);
		if (silent > 0) {
			plan.note(CellWords.count(silent) + " samples heard no access point");
		}
	}

	private void take(Companions tables, PlaceReader place) throws IntakeException {
		RowReader row = tables.signals();
		String trouble = Widths.trouble(row, plan);
		if (trouble == null) {
			trouble = tables.partnerTrouble();
		}
		if (trouble != null) {
			refuse(row, Fault.FIELD_COUNT, trouble);
			return;
		}
		int firstBad = levels(row);
		if (firstBad >= 0) {
			int column = columns[firstBad];
			refuse(row, firstSign == LevelReader.NO_NUMBER ? Fault.NOT_A_NUMBER : Fault.OUT_OF_RANGE,
					plan.called(column) + ": " + levels.describe(firstSign, row.get(column)));
			return;
		}
		if (!place.read(tables)) {
			refuse(row, place.fault(), place.reason() + tables.where());
			return;
		}
		int[] index = indexes(place.site, row.line());
		for (int k = 0; k < heard; k++) {
			accessPoint[k] = index[accessPoint[k]];
		}
		if (twice) {
			strongestOfEach();
		}
		silent += heard == 0 ? 1 : 0;
		sink.sample(plan, row.line(), RowPlace.of(place), accessPoint, rssiDbm, heard);
		accepted++;
	}

	/** Reads the levels of a row; the position of the first bad one, or -1. */
	private int levels(RowReader row) {
		int firstBad = -1;
		heard = 0;
		for (int k = 0; k < columns.length; k++) {
			int level = levels.read(row.get(columns[k]));
			if (level <= 0) {
				good[k] = true;
				accessPoint[heard] = k;
				rssiDbm[heard++] = level;
			} else if (level != LevelReader.NOT_HEARD) {
				bad[k]++;
				if (firstBad < 0) {
					firstBad = k;
					firstSign = level;
				}
			}
		}
		return firstBad;
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

	private void strongestOfEach() {
		Map<Integer, Integer> best = new java.util.LinkedHashMap<>();
		for (int k = 0; k < heard; k++) {
			best.merge(accessPoint[k], rssiDbm[k], Math::max);
		}
		heard = 0;
		for (Map.Entry<Integer, Integer> each : best.entrySet()) {
			accessPoint[heard] = each.getKey();
			rssiDbm[heard++] = each.getValue();
		}
	}

	/** A column that never held a level is a question of mapping, not of so many bad rows. */
	private void leaveOutBadColumns() throws Fallback.Amended, IntakeException {
		boolean any = false;
		for (int k = 0; k < columns.length; k++) {
			if (!good[k] && bad[k] >= BAD_COLUMN_CELLS) {
				plan.leftOut.add(columns[k]);
				plan.note(plan.called(columns[k]) + " holds no level from -120 to 0 dBm anywhere but " + CellWords.count(bad[k])
						+ " other values, so it is left out; say with a mapping what it is");
				any = true;
			}
		}
		if (any && Arrays.stream(plan.columns(ColumnRole.SIGNAL)).allMatch(plan.leftOut::contains)) {
			throw new IntakeException(plan.file, 0, "no column holds levels from -120 to 0 dBm",
					"Say with a mapping which columns hold levels, and what means not heard");
		}
		if (any) {
			throw new Fallback.Amended();
		}
	}
}
