package org.cairnfield.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.cairnfield.exchange.internal.text.Guard;

/**
 * Writes a table of results: RFC 4180 but for its line end, LF, which other programs' line tools expect;
 * UTF-8; numbers in full with a point, NaN and null as an empty field. Texts that a spreadsheet could take
 * for a formula get a leading apostrophe, numbers never do.
 */
public final class ResultTable {

	private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

	private ResultTable() {
	}

	/**
	 * Writes whole or not at all, over an older file.
	 *
	 * @param rows fields are numbers, texts or null
	 * @throws IntakeException where the file cannot be written
	 */
	public static void write(Path file, List<String> header, Stream<List<?>> rows) throws IntakeException {
		try {
			AtomicFile.write(file, out -> {
				@SuppressWarnings("resource") // out is closed where it was opened
				CSVPrinter csv = new CSVPrinter(out, FORMAT);
				csv.printRecord(header);
				for (List<?> row : (Iterable<List<?>>) rows::iterator) {
					for (Object field : row) {
						csv.print(text(field));
					}
					csv.println();
				}
				csv.flush();
			});
		} catch (IOException e) {
			throw Failures.writing(file, e);
		}
	}

	private static String text(Object field) {
		if (field == null || (field instanceof Double d && d.isNaN())) {
			return "";
		}
		return field instanceof Number ? field.toString() : Guard.on(field.toString());
	}
}
