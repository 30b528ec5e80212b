package org.cairnfield.exchange;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.FloorNames;
import org.cairnfield.exchange.internal.text.Guard;

/**
 * Reads a table with a row per reading. Rows of one sample need not follow each other: they share an id, or
 * else building, floor, position, time and device. Where a sample has an access point more than once, the
 * strongest level counts. Samples come in the order of their first rows.
 */
final class LongReader extends FileReader<LongReader.Batch> {

	/** A sample being put together. */
	private static final class Pile {
		final RowPlace place;
		final long line;
		/** Whether the rows give a time without a zone. */
		final boolean zoneless;
		/** Access point in the upper bits, level above -120 dBm in the lowest seven. */
		long[] readings = new long[16];
		int size;

		Pile(RowPlace place, long line, boolean zoneless) {
			this.place = place;
			this.line = line;
			this.zoneless = zoneless;
		}

		void add(int accessPoint, int rssiDbm) {
			if (size == readings.length) {
				readings = Arrays.copyOf(readings, size * 2);
			}
			readings[size++] = (long) accessPoint << 7 | rssiDbm - RadioMap.LOWEST_RSSI_DBM;
		}

		int accessPoint(int reading) {
			return (int) (readings[reading] >> 7);
		}

		int rssiDbm(int reading) {
			return (int) (readings[reading] & 127) + RadioMap.LOWEST_RSSI_DBM;
		}
	}

	/** The samples of one block, with access points numbered by {@link #names}. */
	static final class Batch extends RowBatch {
		private final BatchNames names;
		private final Map<String, Pile> piles = new LinkedHashMap<>();
		/** By what the row says of place, time and sample, to the letter. */
		private final Map<ByteKey, Pile> byText = new HashMap<>();
		private final Map<ByteKey, String> addresses = new HashMap<>();
		private final ByteKey key = new ByteKey();
		private int readings;
		private long bad;
		private boolean contradicts;

		private Batch(LevelReader levels, PlaceReader place, BatchNames names) {
			super(levels, place);
			this.names = names;
		}
	}

	private final Map<String, Pile> piles = new LinkedHashMap<>();
	private final int addressColumn;
	private final int levelColumn;
	private final int[] placeColumns;
	private long readings;
	private long bad;
	private long repeatedEqual;
	private long repeatedOther;

	LongReader(FilePlan plan, IntakeOptions options, MapSink sink, FloorNames floors, Workers workers) {
		super(plan, options, sink, floors, workers);
		addressColumn = plan.column(ColumnRole.ACCESS_POINT);
		levelColumn = plan.column(ColumnRole.RSSI);
		placeColumns = Stream
				.of(ColumnRole.X, ColumnRole.Y, ColumnRole.FLOOR, ColumnRole.SITE, ColumnRole.TIME, ColumnRole.DEVICE,
						ColumnRole.ID)
				.filter(plan::has).mapToInt(plan::column).toArray();
	}

	@Override
	void read() throws IntakeException, Fallback.Amended {
		readRows();
		learnNotHeard();
		if (accepted == 0 && bad > 0) {
			throw new IntakeException(plan.file, 0,
					Words.bind(Messages.LongReader_holdsNoLevelFrom120, plan.called(levelColumn)),
					Messages.LongReader_sayWithAMappingWhich);
		}
		emptyPiles();
		notes();
	}

	@Override
	Batch newBatch(LevelReader levels, PlaceReader place) {
		return new Batch(levels, place, new BatchNames(options));
	}

	@Override
	void take(JoinedRows row, Batch batch) {
		BlockRows cells = row.signals();
		String trouble = Widths.trouble(cells, plan);
		if (trouble != null) {
			batch.refuse(row, Fault.FIELD_COUNT, trouble);
			return;
		}
		int level = batch.levels.read(cells, levelColumn);
		if (level > LevelReader.NOT_HEARD) {
			batch.bad++;
			batch.refuse(row, level == LevelReader.NO_NUMBER ? Fault.NOT_A_NUMBER : Fault.OUT_OF_RANGE,
					batch.levels.describe(level, cells.get(levelColumn)));
			return;
		}
		String name = address(row, batch);
		boolean nothing = name.isEmpty() && level == LevelReader.NOT_HEARD;
		if (!nothing && (name.isEmpty() || !PlaceReader.isName(name))) {
			batch.refuse(row, Fault.NAME, name.isEmpty() ? Messages.LongReader_theAccessPointIsMissing
					: Words.bind(Messages.LongReader_theAccessPointHasNo, CellWords.shown(name)));
			return;
		}
		Pile pile = pile(row, batch);
		if (pile == null) {
			return;
		}
		batch.accepted++;
		if (!nothing) {
			int accessPoint = batch.names.number(name, pile.place.site(), cells.line());
			if (level != LevelReader.NOT_HEARD) {
				pile.add(accessPoint, level);
				batch.readings++;
			}
		}
	}

	private String address(JoinedRows row, Batch batch) {
		row.appendTo(batch.key.clear(), addressColumn);
		String name = batch.addresses.get(batch.key);
		if (name == null) {
			name = Guard.off(row.get(addressColumn).strip());
			batch.addresses.put(batch.key.copy(), name);
		}
		return name;
	}

	/** The row's sample as far as its block goes; null where the row is refused. */
	private Pile pile(JoinedRows row, Batch batch) {
		ByteKey text = batch.key.clear();
		for (int column : placeColumns) {
			row.appendTo(text, column);
		}
		PlaceReader place = batch.place;
		Pile known = batch.byText.get(text);
		if (known != null) {
			place.countZoneless(known.zoneless);
			return known;
		}
		long zoneless = place.zoneless();
		if (!place.read(row)) {
			batch.refuse(row, place.fault(), place.reason());
			return null;
		}
		RowPlace at = RowPlace.of(place);
		Pile pile = batch.piles.computeIfAbsent(key(at),
				k -> new Pile(at, row.signals().line(), place.zoneless() > zoneless));
		if (!pile.place.sameSpot(at)) {
			batch.contradicts = true;
		} else if (pile.zoneless == place.zoneless() > zoneless) {
			batch.byText.put(text.copy(), pile);
		}
		return pile;
	}

	private static String key(RowPlace at) {
		return at.id() != null ? Words.bind(Messages.LongReader_id, at.id())
				: String.join("\u0000", at.site(), String.valueOf(at.floor()), String.valueOf(at.x()),
						String.valueOf(at.y()), String.valueOf(at.timeMillis()), String.valueOf(at.device()));
	}

	@Override
	boolean fits(Batch batch) {
		if (batch.contradicts || !sink.hasRoomFor(batch.names.size())
				|| readings + batch.readings + 8L * (piles.size() + batch.piles.size()) > options.limits().readings()) {
			return false;
		}
		return batch.piles.entrySet().stream().noneMatch(e -> contradicts(e.getKey(), e.getValue()));
	}

	private boolean contradicts(String key, Pile more) {
		Pile pile = piles.get(key);
		return pile != null && !pile.place.sameSpot(more.place);
	}

	/** Refuses a row that puts a sample elsewhere than an earlier one. */
	@Override
	void decide(JoinedRows row, Batch batch) {
		batch.piles.entrySet().removeIf(entry -> {
			boolean elsewhere = contradicts(entry.getKey(), entry.getValue());
			if (elsewhere) {
				batch.accepted = 0;
				batch.refuse(row, Fault.CONFLICT,
						Words.bind(Messages.LongReader_sampleWasElsewhereOnLine,
								CellWords.shown(entry.getValue().place.id()), piles.get(entry.getKey()).line));
			}
			return elsewhere;
		});
	}

	@Override
	void join(Batch batch) throws IntakeException {
		bad += batch.bad;
		if (batch.accepted > 0) {
			batch.names.tell(sink, plan, Long.MAX_VALUE);
		}
		for (Map.Entry<String, Pile> entry : batch.piles.entrySet()) {
			Pile more = entry.getValue();
			Pile pile = piles.computeIfAbsent(entry.getKey(), k -> new Pile(more.place, more.line, more.zoneless));
			for (int k = 0; k < more.size; k++) {
				pile.add(batch.names.index(more.accessPoint(k)), more.rssiDbm(k));
			}
			readings += more.size;
			if (readings + 8L * piles.size() > options.limits().readings() && more.size > 0) {
				// only rows that took their turns one by one come as far as this
				throw new IntakeException(plan.file, more.line,
						Words.bind(Messages.LongReader_moreThanReadingsWhichIs,
								CellWords.count(options.limits().readings())),
						Messages.LongReader_giveTheProgramMoreMemory);
			}
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
				int index = pile.accessPoint(k);
				int level = pile.rssiDbm(k);
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
		noteLevels();
		if (repeatedEqual + repeatedOther > 0) {
			plan.note(Words.bind(Messages.LongReader_readingsRepeatAnAccessPoint,
					CellWords.count(repeatedEqual + repeatedOther), CellWords.count(repeatedOther)));
		}
		if (piles.size() > 10 && accepted < 1.5 * piles.size()) {
			plan.note(Messages.LongReader_nearlyEveryRowBecameA);
		}
	}
}
