package org.cairnfield.archive.internal.text;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.model.Round;

/**
 * The lines with verdicts of a ledger's file, in their order and as they were written, without a look at what they mean. The
 * last four columns are left away where they say nothing, as they come and go with what other lines say.
 */
public final class LedgerLines {

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
		int columns = Math.max(lines.indexOf(LedgerText.COLUMNS), lines.indexOf(LedgerText.MORE_COLUMNS));
		return lines.subList(columns + 1, lines.size()).stream()
				.map(line -> line.endsWith(NOTHING_MORE) ? line.substring(0, line.length() - NOTHING_MORE.length()) : line).toList();
	}

	/** The id of the verdict in a line. */
	public static String id(String line) {
		int end = line.indexOf('\t');
		return end < 0 ? line : line.substring(0, end);
	}
}
