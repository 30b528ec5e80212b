package org.cairnfield.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.Guard;

/**
 * Reads back a table that {@link ResultTable} wrote and somebody filled in with a spreadsheet: RFC 4180, UTF-8 with or
 * without a byte order mark, comma or semicolon, columns by name in any order. Apostrophes that guard texts are taken off.
 */
public final class FilledTable {

	/** Larger files are no tables that somebody filled in. */
	private static final long MOST_BYTES = 200_000_000;

	/**
	 * One row.
	 *
	 * @param line   physical line on which it begins, from 1
	 * @param fields by name of the column
	 */
	public record Row(long line, Map<String, String> fields) {

		/** Without blanks around it; empty where the column is missing. */
		public String field(String column) {
			return fields.getOrDefault(column, "").strip();
		}
	}

	private FilledTable() {
	}

	/**
	 * Rows that are blank throughout are left out.
	 *
	 * @param required columns that must be there
	 * @throws IntakeException where the file cannot be read, or a column is missing
	 */
	public static List<Row> read(Path file, List<String> required) throws IntakeException {
		long line = 0;
		try {
			if (Files.size(file) > MOST_BYTES) {
				throw new IntakeException(file, 0, Messages.FilledTable_theFileIsLargerThan,
						Messages.FilledTable_nameTheTableThatWas);
			}
			String text = Files.readString(file, StandardCharsets.UTF_8);
			text = text.startsWith("\uFEFF") ? text.substring(1) : text;
			String head = text.lines().findFirst().orElse("");
			char separator = head.indexOf(';') >= 0 && head.indexOf(',') < 0 ? ';' : ',';
			CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).setIgnoreEmptyLines(true).get();
			List<Row> rows = new ArrayList<>();
			try (CSVParser parser = CSVParser.parse(text, format)) {
				List<String> header = null;
				long before = 0;
				for (CSVRecord record : parser) {
					line = before + 1;
					before = parser.getCurrentLineNumber();
					if (header == null) {
						header = header(file, record, required);
					} else if (record.stream().anyMatch(field -> !field.isBlank())) {
						rows.add(row(file, line, header, record));
					}
				}
				if (header == null) {
					throw new IntakeException(file, 0, Messages.FilledTable_theFileIsEmpty,
							Messages.FilledTable_exportTheTableAgain);
				}
			}
			return rows;
		} catch (java.io.UncheckedIOException e) {
			throw Failures.of(file, line, e.getCause());
		} catch (IOException e) {
			throw Failures.of(file, line, e);
		}
	}

	private static List<String> header(Path file, CSVRecord record, List<String> required) throws IntakeException {
		List<String> header = record.stream().map(String::strip).toList();
		for (String column : required) {
			if (!header.contains(column)) {
				throw new IntakeException(file, 1, Words.bind(Messages.FilledTable_thereIsNoColumn, column),
						Messages.FilledTable_keepTheHeaderOfThe);
			}
		}
		return header;
	}

	private static Row row(Path file, long line, List<String> header, CSVRecord record) throws IntakeException {
		if (record.size() > header.size()) {
			throw new IntakeException(file, line,
					Words.bind(Messages.FilledTable_theRowHasFieldsThe, record.size(), header.size()),
					Messages.FilledTable_putTextsWithAComma);
		}
		Map<String, String> fields = new LinkedHashMap<>();
		for (int i = 0; i < record.size(); i++) {
			fields.put(header.get(i), Guard.off(record.get(i)));
		}
		return new Row(line, fields);
	}
}
