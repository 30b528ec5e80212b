package org.cairnfield.archive.internal.text;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.model.Round;

/**
 * The lines with verdicts of a ledger's file, in their order and as they were written, without a look at what they mean. The
 * last columns are left away where they say nothing, as they come and go with what other lines say.
 */
public final class LedgerLines {

	private static final int PERSON = 7;
	private static final int ENTERED_BY = 14;
	private static final String NOTHING = "\t-";
	private static final String NOTHING_MORE = '\t' + Round.FIRST.getLiteral() + "\t-\t-\t-";

	private LedgerLines() {
	}

	/** The lines of a file; none for null. A file that is damaged gives what lines it has. */
	public static List<String> of(byte[] file) {
		if (file == null) {
			return List.of();
		}
		List<String> lines = new ArrayList<>(Arrays.asList(new String(file, StandardCharsets.UTF_8).split("\n")));
		if (!lines.isEmpty() && lines.get(lines.size() - 1).startsWith("end\t")) {
			lines.remove(lines.size() - 1);
		}
		int columns = 0;
		while (columns < lines.size() && !LedgerText.isColumns(lines.get(columns))) {
			columns++;
		}
		boolean all = columns < lines.size() && lines.get(columns).equals(LedgerText.ALL_COLUMNS);
		int first = columns < lines.size() ? columns + 1 : 0;
		return lines.subList(first, lines.size()).stream()
				.map(line -> without(NOTHING_MORE, all ? without(NOTHING, line) : line)).toList();
	}

	private static String without(String end, String line) {
		return line.endsWith(end) ? line.substring(0, line.length() - end.length()) : line;
	}

	/** Who a line says gave the verdict; empty where it names nobody. */
	public static String person(String line) {
		return text(line, PERSON);
	}

	/** Who a line says entered the verdict for that person; empty where it names nobody. */
	public static String enteredBy(String line) {
		return text(line, ENTERED_BY);
	}

	private static String text(String line, int field) {
		String[] fields = line.split("\t", -1);
		try {
			return field >= fields.length || fields[field].equals("-") ? "" : Escapes.unescape(fields[field]);
		} catch (IllegalArgumentException e) {
			return fields[field];
		}
	}

	/** The id of the verdict in a line. */
	public static String id(String line) {
		int end = line.indexOf('\t');
		return end < 0 ? line : line.substring(0, end);
	}
}
