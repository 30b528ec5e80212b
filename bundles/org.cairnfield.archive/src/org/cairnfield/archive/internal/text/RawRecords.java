package org.cairnfield.archive.internal.text;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A file of lines as lines by key, without a look at what they mean. The key of a record is its first field, that of a line
 * before the records its first two.
 *
 * @param head    lines before the records, that with the names of the columns last
 * @param records by key
 */
public record RawRecords(FileKind kind, Map<String, String> head, Map<String, String> records) {

	/** @throws IOException where the file is damaged */
	public static RawRecords of(FileKind kind, byte[] file) throws IOException {
		Map<String, String> head = new LinkedHashMap<>();
		Map<String, String> records = new LinkedHashMap<>();
		PartReport report = new PartReport("file");
		boolean[] columns = { false };
		new RecordReader(kind, report).read(new ByteArrayInputStream(file), line -> {
			String text = LineReader.text(line.bytes(), line.start(0), line.end(line.fields() - 1));
			if (text == null) {
				throw new Unreadable(Messages.RawRecords_notInUtf8);
			}
			String first = text.substring(0, text.indexOf('\t') < 0 ? text.length() : text.indexOf('\t'));
			if (columns[0]) {
				records.put(first, text);
				return true;
			}
			columns[0] = isColumns(text);
			head.put(line.fields() > 1 ? first + '\t' + line.shown(1) : first, text);
			return false;
		});
		if (report.isDamaged()) {
			throw new IOException(report.damages().get(0).reason());
		}
		return new RawRecords(kind, head, records);
	}

	private static boolean isColumns(String text) {
		return text.equals(SamplesText.COLUMNS) || text.equals(SplitText.COLUMNS) || LedgerText.isColumns(text);
	}

	/** The whole file, with header and seal. */
	public byte[] toBytes() throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		LineWriter writer = new LineWriter(out, kind);
		for (String line : head.values()) {
			if (!isColumns(line)) {
				writer.text(line).finishLine();
			}
		}
		for (String line : head.values()) { // the names of the columns stay last
			if (isColumns(line)) {
				writer.text(line).finishLine();
			}
		}
		for (String line : records.values()) {
			writer.text(line).end();
		}
		writer.seal();
		return out.toByteArray();
	}
}
