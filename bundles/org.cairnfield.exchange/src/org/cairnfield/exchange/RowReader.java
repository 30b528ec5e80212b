package org.cairnfield.exchange;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Path;
import java.util.Iterator;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Streams the rows of one file, knowing line and text of each. Blank lines are passed over. */
final class RowReader implements Row, AutoCloseable {

	private final Path file;
	private final Limits limits;
	private final ByteSource source;
	private final Recent recent;
	private final CSVParser parser;
	private final Iterator<CSVRecord> records;
	private CSVRecord record;
	private long line;
	private long lines;

	RowReader(Path file, Dialect dialect, Limits limits) throws IntakeException {
		this.file = file;
		this.limits = limits;
		ByteSource opened = null;
		try {
			opened = ByteSource.open(file, limits);
			opened.in().skipNBytes(dialect.markBytes());
			recent = new Recent(new InputStreamReader(opened.in(), dialect.charset().newDecoder()
					.onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT)),
					limits.recordChars());
			parser = CSVParser.builder().setReader(recent).setFormat(format(dialect.separator())).get();
			records = parser.iterator();
			source = opened;
		} catch (IOException e) {
			close(opened);
			throw Failures.of(file, 0, e);
		}
	}

	/** RFC 4180 with another separator; text after a closing quotation mark belongs to the field. */
	static CSVFormat format(char separator) {
		return CSVFormat.Builder.create().setDelimiter(separator).setQuote('"').setIgnoreEmptyLines(false)
				.setTrailingData(true).get();
	}

	/** Moves to the next row that is not blank; false at the end. */
	boolean next() throws IntakeException {
		while (true) {
			long before = parser.getCurrentLineNumber();
			try {
				if (!records.hasNext()) {
					return false;
				}
				record = records.next();
			} catch (UncheckedIOException e) {
				throw Failures.of(file, before + 1, e.getCause());
			}
			line = before + 1;
			lines = Math.max(1, parser.getCurrentLineNumber() - before);
			recent.forgetBefore(record.getCharacterPosition());
			if (record.size() > limits.columns()) {
				throw new IntakeException(file, line, CellWords.count(record.size()) + " columns, more than the "
						+ CellWords.count(limits.columns()) + " that are taken", "Check that the file is a survey table");
			}
			if (record.size() > 1 || !record.get(0).isBlank()) {
				return true;
			}
		}
	}

	@Override
	public String get(int column) {
		return column < record.size() ? record.get(column) : "";
	}

	@Override
	public int size() {
		return record.size();
	}

	/** Physical line on which the row begins, from 1. */
	long line() {
		return line;
	}

	/** How many physical lines the row takes. */
	long lines() {
		return lines;
	}

	/** The row as it stands in the file. */
	String raw() {
		return recent.text(record.getCharacterPosition(), lines);
	}

	/** Bytes of the file read so far. */
	long consumed() {
		return source.consumed();
	}

	@Override
	public void close() {
		close(source);
	}

	private static void close(ByteSource source) {
		try {
			if (source != null) {
				source.close();
			}
		} catch (IOException e) {
			// it was only read: nothing is lost
		}
	}
}
