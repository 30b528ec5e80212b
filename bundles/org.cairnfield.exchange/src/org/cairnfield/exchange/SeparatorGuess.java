package org.cairnfield.exchange;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.CellNumbers;

/**
 * The separator that cuts the first rows into the same number of sensible fields. A field that still holds
 * another separator speaks against; {@code 12,5;7,3} is two decimals and not three fields.
 */
record SeparatorGuess(char separator, String evidence) {

	private static final char[] CANDIDATES = { ';', '\t', ',' };
	private static final int ROWS = 40;
	private static final int CHARS = 1 << 18;

	static SeparatorGuess of(String text, Character told) {
		if (told != null) {
			return new SeparatorGuess(told, Messages.SeparatorGuess_asTold);
		}
		String head = text.length() > CHARS ? cut(text) : text;
		SeparatorGuess best = new SeparatorGuess(',', Messages.SeparatorGuess_noSeparatorFoundASingle);
		double bestScore = 0;
		for (char candidate : CANDIDATES) {
			List<CSVRecord> rows = rows(head, candidate);
			Map<Integer, Integer> sizes = new HashMap<>();
			long clean = 0;
			for (CSVRecord row : rows) {
				sizes.merge(row.size(), 1, Integer::sum);
				clean += row.size() > 1 ? clean(row, candidate) : 0;
			}
			int usual = sizes.entrySet().stream().filter(e -> e.getKey() > 1).max(Map.Entry.comparingByValue())
					.map(Map.Entry::getKey).orElse(0);
			if (usual == 0) {
				continue;
			}
			double score = (double) clean / rows.size() * sizes.get(usual) / rows.size();
			if (score > bestScore) {
				bestScore = score;
				best = new SeparatorGuess(candidate, Words.bind(Messages.SeparatorGuess_ofTheFirstRowsHave,
						sizes.get(usual), rows.size(), usual));
			}
		}
		return best;
	}

	private static CSVFormat format(char separator) {
		return CSVFormat.Builder.create().setDelimiter(separator).setQuote('"').setIgnoreEmptyLines(false)
				.setTrailingData(true).get();
	}

	private static String cut(String text) {
		int end = text.lastIndexOf('\n', CHARS);
		return end > 0 ? text.substring(0, end + 1) : text;
	}

	private static long clean(CSVRecord row, char separator) {
		long clean = 0;
		for (String field : row) {
			boolean split = false;
			for (char other : CANDIDATES) {
				split |= other != separator && field.indexOf(other) >= 0
						&& !(other == ',' && CellNumbers.hasMark(field, ','));
			}
			clean += split ? -2 : 1;
		}
		return clean;
	}

	private static List<CSVRecord> rows(String head, char separator) {
		List<CSVRecord> rows = new ArrayList<>();
		try (CSVParser parser = CSVParser.builder().setReader(new StringReader(head))
				.setFormat(format(separator)).get()) {
			for (CSVRecord row : parser) {
				if (row.size() > 1 || !row.get(0).isBlank()) {
					rows.add(row);
				}
				if (rows.size() == ROWS) {
					break;
				}
			}
		} catch (IOException | UncheckedIOException e) {
			// a quotation mark that is not closed: the rows before it must do; reading tells about it
		}
		return rows;
	}
}
