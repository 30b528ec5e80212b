package org.cairnfield.exchange;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What was understood of one file before it is read.
 *
 * @param file      the file
 * @param layout    how it will be read
 * @param part      "table", or which part of a paired survey it is: signals, coordinates, ids, times,
 *                  channels
 * @param partners  the other files of a paired survey
 * @param guesses   layout, separator, character set, decimal mark, header, not heard, site, floor: each with
 *                  its evidence
 * @param columns   all columns with their roles
 * @param notes     what a person should know
 * @param problems  why the file could not be read as it is understood: what the user must say first
 * @param firstRows the first rows below the header, cells cut to a readable length
 * @param options   the options that fix what was understood
 */
public record Preview(Path file, Layout layout, String part, List<Path> partners, List<Guess> guesses,
		List<Column> columns, List<String> notes, List<String> problems, List<List<String>> firstRows,
		IntakeOptions options) {

	/** The columns of a role. */
	public List<Column> columns(ColumnRole role) {
		return columns.stream().filter(c -> c.role() == role).toList();
	}

	/** The guess about {@code what}, such as "not heard". */
	public Optional<Guess> guess(String what) {
		return guesses.stream().filter(g -> g.what().equals(what)).findFirst();
	}

	/** As lines of text. */
	public String toText() {
		StringBuilder out = new StringBuilder().append(file.getFileName()).append(": ").append(part).append('\n');
		guesses.forEach(g -> out.append("  ").append(g).append('\n'));
		for (Column c : columns) {
			if (c.role() != ColumnRole.SIGNAL && c.role() != ColumnRole.IGNORED) {
				out.append(Messages.Preview_column).append(c.number()).append(" '").append(c.name()).append("': ")
						.append(c.role().word()).append(" (").append(c.evidence()).append(")\n");
			}
		}
		int signals = columns(ColumnRole.SIGNAL).size();
		if (signals > 0) {
			out.append(Messages.Preview_accessPoints).append(signals).append(Messages.Preview_columns);
		}
		problems.forEach(p -> out.append(Messages.Preview_problem).append(p).append('\n'));
		notes.forEach(n -> out.append(Messages.Preview_note).append(n).append('\n'));
		return out.toString();
	}
}
