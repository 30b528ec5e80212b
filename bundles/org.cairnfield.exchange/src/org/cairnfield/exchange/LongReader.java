package org.cairnfield.exchange;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Progress;
import org.cairnfield.exchange.internal.text.FloorNames;
import org.cairnfield.exchange.internal.text.Guard;

/**
 * Reads a table with a row per reading. Rows of one sample need not follow each other: they share an id, or
 * else building, floor, position, time and device. Where a sample has an access point more than once, the
 * strongest level counts. Samples come in the order of their first rows.
 */
final class LongReader extends FileReader {

	/** A sample being put together. */
	private static final class Pile {
		final RowPlace place;
		final long line;
		/** Access point in the upper bits, level above -120 dBm in the lowest seven. */
		long[] readings = new long[16];
		int size;

		Pile(RowPlace place, long line) {
			this.place = place;
			this.line = line;
		}

		void add(int accessPoint, int rssiDbm) {
			if (size == readings.length) {
				readings = Arrays.copyOf(readings, size * 2);
			}
			readings[size++] = (long) accessPoint << 7 | rssiDbm - RadioMap.LOWEST_RSSI_DBM;
		}
	}

	private final Map<String, Pile> piles = new LinkedHashMap<>();
	private final int addressColumn;
	private final int levelColumn;
	private final Map<ColumnRole, Integer> columns = new EnumMap<>(ColumnRole.class);
	private long readings;
	private long bad;
	private long repeatedEqual;
	private long repeatedOther;

	LongReader(FilePlan plan, IntakeOptions options, MapSink sink, FloorNames floors, Progress progress) {
		super(plan, options, sink, floors, progress);
		addressColumn = plan.column(ColumnRole.ACCESS_POINT);
		levelColumn = plan.column(ColumnRole.RSSI);
		for (ColumnRole role : ColumnRole.values()) {
			if (plan.has(role)) {
				columns.put(role, plan.column(role));
			}
		}
	}

	@Override
	void read() throws IntakeException, Fallback.Amended {
		try (RowReader row = new RowReader(plan.file, plan.dialect, options.limits())) {
			if (plan.dialect.header()) {
				row.next();
			}
			PlaceReader place = new PlaceReader(columns, plan, plan.site, options, floors);
			while (row.next()) {
				row(row.consumed());
				take(row, place);
			}
			noteTimes(place);
		}
		learnNotHeard();
		if (accepted == 0 && bad > 0) {
			throw new IntakeException(plan.file, 0, plan.called(levelColumn) + " holds no level from -120 to 0 dBm",
					"Say with a mapping which column holds the levels, and what means not heard");
		}
		emptyPiles();
		notes();
	}

	private void take(RowReader row, PlaceReader place) throws IntakeException {
		String trouble = Widths.trouble(row, plan);
		if (trouble != null) {
			refuse(row, Fault.FIELD_COUNT, trouble);
			return;
		}
		String cell = row.get(levelColumn);
		int level = levels.read(cell);
		if (level > LevelReader.NOT_HEARD) {
			bad++;
			refuse(row, level == LevelReader.NO_NUMBER ? Fault.NOT_A_NUMBER : Fault.OUT_OF_RANGE,
					levels.describe(level, cell));
			return;
		}
		String name = Guard.off(row.get(addressColumn).strip());
		boolean nothing = name.isEmpty() && level == LevelReader.NOT_HEARD;
		if (!nothing && (name.isEmpty() || !PlaceReader.isName(name))) {
			refuse(row, Fault.NAME, name.isEmpty() ? "the access point is missing"
					: "the access point has no usable name: " + CellWords.shown(name));
			return;
		}
		if (!place.read(row)) {
			refuse(row, place.fault(), place.reason());
			return;
		}
		Pile pile = pile(row, place);
		if (pile == null) {
			return;
		}
		accepted++;
		if (!nothing) {
			int accessPoint = sink.accessPoint(plan, row.line(), name, place.site);
			if (level != LevelReader.NOT_HEARD) {
				pile.add(accessPoint, level);
				requireMemory(row.line());
			}
		}
	}

	/** The row's sample; null where the row contradicts it and is refused. */
	private Pile pile(RowReader row, PlaceReader place) {
		RowPlace at = RowPlace.of(place);
		String key = at.id() != null ? "id " + at.id()
				: String.join("\u0000", at.site(), String.valueOf(at.floor()), String.valueOf(at.x()),
						String.valueOf(at.y()), String.valueOf(at.timeMillis()), String.valueOf(at.device()));
		Pile pile = piles.computeIfAbsent(key, k -> new Pile(at, row.line()));
		if (!pile.place.sameSpot(at)) {
			refuse(row, Fault.CONFLICT, "sample " + CellWords.shown(at.id()) + " was elsewhere on line " + pile.line);
			return null;
		}
		return pile;
	}

	private void requireMemory(long line) throws IntakeException {
		if (++readings + 8L * piles.size() > options.limits().readings()) {
			throw new IntakeException(plan.file, line, "more than " + CellWords.count(options.limits().readings())
					+ " readings, which is as much as memory is there for",
					"Give the program more memory (-Xmx), or split the file");
		}
	}

	private void emptyPiles() throws IntakeException {
		int[] accessPoint = new int[16];
		int[] rssiDbm = new int[16];
		for (Pile pile : piles.values()) {
			Arrays.sort(pile.readings, 0, pile.size);
			if (accessPoint.length < pile.size) {
				accessPoint = new int[pile.size];
				rssiDbm = new int[pile.size];
			}
			int heard = 0;
			for (int k = 0; k < pile.size; k++) {
				int index = (int) (pile.readings[k] >> 7);
				int level = (int) (pile.readings[k] & 127) + RadioMap.LOWEST_RSSI_DBM;
				if (heard > 0 && accessPoint[heard - 1] == index) {
					// sorted by level too, so the later is the stronger
					repeatedEqual += rssiDbm[heard - 1] == level ? 1 : 0;
					repeatedOther += rssiDbm[heard - 1] == level ? 0 : 1;
					rssiDbm[heard - 1] = level;
				} else {
					accessPoint[heard] = index;
					rssiDbm[heard++] = level;
				}
			}
			sink.sample(plan, pile.line, pile.place, accessPoint, rssiDbm, heard);
		}
	}

	private void notes() {
		levels.note(plan);
		if (repeatedEqual + repeatedOther > 0) {
			plan.note(CellWords.count(repeatedEqual + repeatedOther) + " readings repeat an access point of their sample, "
					+ CellWords.count(repeatedOther) + " of them with another level: the strongest counts");
		}
		if (piles.size() > 10 && accepted < 1.5 * piles.size()) {
			plan.note("nearly every row became a sample of its own: name the column that readings of one sample share");
		}
	}
}
