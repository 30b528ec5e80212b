package org.cairnfield.exchange;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.exchange.internal.text.Guard;
import org.cairnfield.exchange.internal.text.CellNumbers;

/**
 * Writes a radio map as a wide table: header {@code id,time,device,building,floor,x,y} and the names of the
 * access points, a row per sample, blank for not heard. RFC 4180 with its line end CR LF, UTF-8, times as
 * RFC 3339 in UTC, numbers with a point. Texts that a spreadsheet could take for a formula get a leading
 * apostrophe, which {@link SurveyIntake} takes off again. Equal maps give equal bytes, and what is written
 * reads back as the same map.
 */
public final class WideTable {

	private static final List<String> HEAD = List.of("id", "time", "device", "building", "floor", "x", "y");

	private WideTable() {
	}

	/** True for a header of this layout. */
	static boolean isHead(String[] header) {
		return header.length >= HEAD.size() && HEAD.equals(Arrays.asList(header).subList(0, HEAD.size()));
	}

	/**
	 * Writes whole or not at all, over an older file.
	 *
	 * @param ids a name for each sample
	 * @throws IntakeException          where the file cannot be written
	 * @throws IllegalArgumentException for names that such a table cannot hold, or a wrong number of ids
	 */
	public static void write(Path file, RadioMap map, List<String> ids) throws IntakeException {
		try {
			AtomicFile.write(file, out -> write(out, map, ids));
		} catch (IOException e) {
			throw Failures.writing(file, e);
		}
	}

	/** As {@link #write(Path, RadioMap, List)}, to a writer that stays open. */
	public static void write(Writer out, RadioMap map, List<String> ids) throws IOException {
		require(map, ids);
		@SuppressWarnings("resource") // out is the caller's to close
		CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180);
		for (String name : HEAD) {
			csv.print(name);
		}
		int n = map.accessPointCount();
		for (String name : map.accessPoints()) {
			csv.print(Guard.on(name));
		}
		csv.println();
		for (int s = 0; s < map.size(); s++) {
			csv.print(Guard.on(ids.get(s)));
			csv.print(map.timeMillis(s) == RadioMap.NO_TIME ? "" : Instant.ofEpochMilli(map.timeMillis(s)).toString());
			csv.print(map.device(s) == RadioMap.NO_DEVICE ? "" : Guard.on(map.devices().get(map.device(s))));
			csv.print(Guard.on(map.sites().get(map.site(s))));
			csv.print(Integer.toString(map.floor(s)));
			csv.print(CellNumbers.plain(map.x(s)));
			csv.print(CellNumbers.plain(map.y(s)));
			int k = map.firstReading(s);
			int end = map.endReading(s);
			for (int ap = 0; ap < n; ap++) {
				boolean heard = k < end && map.accessPoint(k) == ap;
				csv.print(heard ? Integer.toString(map.rssiDbm(k++)) : "");
			}
			csv.println();
		}
		csv.flush();
	}

	static void require(RadioMap map, List<String> ids) {
		if (ids.size() != map.size()) {
			throw new IllegalArgumentException(ids.size() + " ids for " + map.size() + " samples");
		}
		for (List<String> names : List.of(ids, map.sites(), map.devices(), map.accessPoints())) {
			for (String name : names) {
				if (name.isBlank() || !PlaceReader.isName(name)) {
					throw new IllegalArgumentException("a table cannot hold this name: " + CellWords.shown(name));
				}
			}
		}
	}
}
