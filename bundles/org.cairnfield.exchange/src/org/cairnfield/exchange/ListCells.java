package org.cairnfield.exchange;

import java.util.Arrays;
import java.util.List;

import org.cairnfield.core.map.RadioMap;

/**
 * Cells of a name and a number with a colon between them: {@code name:level} in a list of what one scan heard, or
 * {@code name:channel}. The name may have colons of its own, as addresses do.
 */
final class ListCells {

	private ListCells() {
	}

	/** Where the number begins that ends a cell, or -1. */
	static int numberStart(String cell) {
		int colon = cell.lastIndexOf(':');
		return colon > 0 && colon < cell.length() - 1 ? colon + 1 : -1;
	}

	/** Signals or channels, where nearly every cell of the rows is such a pair; otherwise null. */
	static FilePlan.Part part(List<String[]> rows) {
		long cells = 0;
		long levels = 0;
		long channels = 0;
		for (String cell : rows.stream().flatMap(Arrays::stream).map(String::strip).filter(c -> !c.isEmpty())
				.toList()) {
			cells++;
			int number = number(cell);
			levels += number >= RadioMap.LOWEST_RSSI_DBM && number < 0 ? 1 : 0;
			channels += number > 0 ? 1 : 0;
		}
		return levels * 10 > cells * 9 ? FilePlan.Part.SIGNALS
				: channels * 10 > cells * 9 ? FilePlan.Part.CHANNELS : null;
	}

	/** The whole number that ends a cell; 0 where there is none. Addresses end in two digits, which are no number here. */
	private static int number(String cell) {
		int start = numberStart(cell);
		if (start < 0 || HeaderWords.isAddress(cell) || cell.length() - start > 4) {
			return 0;
		}
		try {
			return Integer.parseInt(cell.substring(start));
		} catch (NumberFormatException e) {
			return 0;
		}
	}
}
