package org.cairnfield.exchange;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToIntFunction;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.FloorNames;
import org.cairnfield.exchange.internal.text.Guard;
import org.cairnfield.exchange.internal.text.CellNumbers;
import org.cairnfield.exchange.internal.text.Times;

/** Reads where, when and by what a sample was taken. Holds the values of the row last read. */
final class PlaceReader {

	/** More than twice around the Earth; no plane frame goes so far. */
	private static final double FARTHEST_METRES = 1e8;
	/** Characters of a name of anything. */
	static final int LONGEST_NAME = 256;

	private final Map<ColumnRole, Integer> columns = new EnumMap<>(ColumnRole.class);
	private final IntakeOptions options;
	private final ToIntFunction<String> floors;
	private final boolean decimalComma;
	private final boolean exact;
	private final String siteOtherwise;
	private final double metresPerUnit;
	private final long timeBaseMillis;
	private long zoneless;
	private boolean unsettled;

	double x;
	double y;
	int floor;
	String site;
	/** Null where there is none. */
	String device;
	long timeMillis;
	/** Null where there is none. */
	String id;

	private Fault fault;
	private String reason;

	/**
	 * @param columns      by role, from 0, in the rows given to {@link #read}
	 * @param positions    the plan of the table that holds the positions
	 * @param siteOtherwise where no column names the site
	 * @param floors       levels by the names of floors; may answer {@link FloorNames#UNSETTLED}
	 */
	PlaceReader(Map<ColumnRole, Integer> columns, FilePlan positions, String siteOtherwise, IntakeOptions options,
			ToIntFunction<String> floors) {
		this.columns.putAll(columns);
		this.options = options;
		this.floors = floors;
		this.decimalComma = positions.dialect.decimalComma();
		this.exact = positions.exact;
		this.siteOtherwise = siteOtherwise;
		this.timeBaseMillis = positions.timeBaseMillis;
		this.metresPerUnit = options.metresPerUnit().orElse(positions.metresPerUnit);
	}

	/** True where the row is sound; otherwise {@link #fault} and {@link #reason} say what is wrong. */
	boolean read(Row row) {
		fault = null;
		double first = coordinate(row, ColumnRole.X);
		double second = coordinate(row, ColumnRole.Y);
		if (fault != null) {
			return false;
		}
		x = options.swapXY() ? second : first;
		y = options.swapXY() ? first : second;
		return readFloor(row) && readSite(row) && readTime(row) && readNames(row);
	}

	Fault fault() {
		return fault;
	}

	String reason() {
		return reason;
	}

	/** Whether a floor was met that the rows before must settle first. */
	boolean isUnsettled() {
		return unsettled;
	}

	/** Counts a row of the same time as one that was read. */
	void countZoneless(boolean same) {
		zoneless += same ? 1 : 0;
	}

	/** Times without a zone so far. */
	long zoneless() {
		return zoneless;
	}

	private double coordinate(Row row, ColumnRole axis) {
		String cell = cell(row, axis);
		double value = CellNumbers.parse(cell, decimalComma) * metresPerUnit;
		if (!(Math.abs(value) <= FARTHEST_METRES) && fault == null) {
			refuse(Fault.POSITION, cell.isBlank() ? Words.bind(Messages.PlaceReader_isMissing, axis.word())
					: axis.word()
							+ (Double.isNaN(value) ? Messages.PlaceReader_isNoNumber
									: Messages.PlaceReader_isBeyondTheEarth)
							+ CellWords.shown(cell));
		}
		return value;
	}

	private boolean readFloor(Row row) {
		if (options.floor().isPresent()) {
			floor = options.floor().get();
			return true;
		}
		if (!columns.containsKey(ColumnRole.FLOOR)) {
			floor = 0;
			return true;
		}
		String cell = cell(row, ColumnRole.FLOOR);
		if (cell.isBlank()) {
			return refuse(Fault.FLOOR, Messages.PlaceReader_theFloorIsMissing);
		}
		if (!isName(cell)) {
			return refuse(Fault.NAME, Words.bind(Messages.PlaceReader_theFloorIsNoUsable, CellWords.shown(cell)));
		}
		String text = Guard.off(cell);
		floor = floors.applyAsInt(decimalComma ? text.replace(',', '.') : text);
		unsettled |= floor == FloorNames.UNSETTLED;
		return floor != FloorNames.NONE
				|| refuse(Fault.FLOOR, Words.bind(Messages.PlaceReader_thisCannotBeAFloor, CellWords.shown(cell)));
	}

	private boolean readSite(Row row) {
		if (options.site().isPresent() || !columns.containsKey(ColumnRole.SITE)) {
			site = siteOtherwise;
			return true;
		}
		String cell = cell(row, ColumnRole.SITE);
		if (cell.isBlank()) {
			return refuse(Fault.NAME, Messages.PlaceReader_theBuildingIsMissing);
		}
		site = exact ? Guard.off(cell) : name(cell);
		return isName(cell)
				|| refuse(Fault.NAME, Words.bind(Messages.PlaceReader_theBuildingIsNoUsable, CellWords.shown(cell)));
	}

	private boolean readTime(Row row) {
		timeMillis = RadioMap.NO_TIME;
		String cell = columns.containsKey(ColumnRole.TIME) ? cell(row, ColumnRole.TIME) : "";
		if (cell.isBlank()) {
			return true;
		}
		if (timeBaseMillis != Times.NONE) {
			double seconds = CellNumbers.parse(cell, decimalComma);
			timeMillis = timeBaseMillis + Math.round(1000 * seconds);
			return !Double.isNaN(seconds) || refuse(Fault.TIME,
					Words.bind(Messages.PlaceReader_theTimeIsNotUnderstood, CellWords.shown(cell)));
		}
		timeMillis = Times.parse(cell);
		if (timeMillis == Times.NONE) {
			return refuse(Fault.TIME,
					Words.bind(Messages.PlaceReader_theTimeIsNotUnderstood, CellWords.shown(cell)));
		}
		zoneless += Times.statesZone(cell) ? 0 : 1;
		return true;
	}

	private boolean readNames(Row row) {
		String cell = columns.containsKey(ColumnRole.DEVICE) ? cell(row, ColumnRole.DEVICE) : "";
		device = options.device().orElse(cell.isBlank() ? null : exact ? Guard.off(cell) : name(cell));
		if (!isName(cell)) {
			return refuse(Fault.NAME, Words.bind(Messages.PlaceReader_theDeviceIsNoUsable, CellWords.shown(cell)));
		}
		cell = columns.containsKey(ColumnRole.ID) ? cell(row, ColumnRole.ID) : "";
		id = cell.isBlank() ? null : Guard.off(cell);
		return isName(cell)
				|| refuse(Fault.NAME, Words.bind(Messages.PlaceReader_theIdIsNoUsable, CellWords.shown(cell)));
	}

	private String cell(Row row, ColumnRole role) {
		String cell = row.get(columns.get(role));
		return exact ? cell : cell.strip();
	}

	/** A number loses its ".0", so that 1 and 1.0 are one building. */
	private String name(String cell) {
		return cell.endsWith(".0") && !Double.isNaN(CellNumbers.parse(cell, false))
				? cell.substring(0, cell.length() - 2)
				: Guard.off(cell);
	}

	static boolean isName(String cell) {
		return cell.length() <= LONGEST_NAME && cell.indexOf('\0') < 0;
	}

	private boolean refuse(Fault why, String words) {
		fault = why;
		reason = words;
		return false;
	}
}
