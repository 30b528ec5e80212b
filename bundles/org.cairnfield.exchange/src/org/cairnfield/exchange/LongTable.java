package org.cairnfield.exchange;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.exchange.internal.text.Guard;
import org.cairnfield.exchange.internal.text.CellNumbers;

/**
 * Writes a radio map as a long table: header {@code id,bssid,rssi,time,device,building,floor,x,y}, a row per reading. RFC 4180
 * with its line end CR LF, UTF-8, guarded as {@link WideTable} is. A sample that heard nothing has one row without a reading.
 */
public final class LongTable {

	private LongTable() {
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

	private static void write(Writer out, RadioMap map, List<String> ids) throws IOException {
		WideTable.require(map, ids);
		CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180);
		csv.printRecord("id", "bssid", "rssi", "time", "device", "building", "floor", "x", "y");
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				row(csv, map, ids, s, Guard.on(map.accessPoints().get(map.accessPoint(k))),
						Integer.toString(map.rssiDbm(k)));
			}
			if (map.heard(s) == 0) {
				row(csv, map, ids, s, "", "");
			}
		}
		csv.flush();
	}

	private static void row(CSVPrinter csv, RadioMap map, List<String> ids, int s, String accessPoint, String level)
			throws IOException {
		csv.printRecord(Guard.on(ids.get(s)), accessPoint, level,
				map.timeMillis(s) == RadioMap.NO_TIME ? "" : Instant.ofEpochMilli(map.timeMillis(s)).toString(),
				map.device(s) == RadioMap.NO_DEVICE ? "" : Guard.on(map.devices().get(map.device(s))),
				Guard.on(map.sites().get(map.site(s))), Integer.toString(map.floor(s)), CellNumbers.plain(map.x(s)),
				CellNumbers.plain(map.y(s)));
	}
}
