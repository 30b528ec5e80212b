package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/** A comma-separated file without quotation marks, read in the plainest way. */
record Csv(List<String> header, List<List<String>> rows) {

	static Csv of(Path file) {
		try {
			List<List<String>> lines = Files.readAllLines(file).stream().map(l -> List.of(l.split(",", -1))).toList();
			for (List<String> line : lines) {
				assertEquals(lines.get(0).size(), line.size(), file + ": " + line);
			}
			return new Csv(lines.get(0), lines.subList(1, lines.size()));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	int size() {
		return rows.size();
	}

	int column(String name) {
		int at = header.indexOf(name);
		assertTrue(at >= 0, name + " is missing in " + header);
		return at;
	}

	String text(int row, String column) {
		return rows.get(row).get(column(column));
	}

	double number(int row, String column) {
		return Double.parseDouble(text(row, column));
	}

	List<String> texts(String column) {
		int at = column(column);
		return rows.stream().map(r -> r.get(at)).toList();
	}

	/** Columns behind the named one: those of the access points. */
	int[] columnsAfter(String name) {
		return IntStream.range(column(name) + 1, header.size()).toArray();
	}
}
