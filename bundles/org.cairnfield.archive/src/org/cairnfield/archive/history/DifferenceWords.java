package org.cairnfield.archive.history;

import java.util.Locale;
import java.util.stream.Collectors;

import org.cairnfield.archive.internal.text.Escapes;

/** Changes in words. */
final class DifferenceWords {

	private DifferenceWords() {
	}

	static String of(ObjectChange.Way way) {
		return way.name().toLowerCase(Locale.ROOT);
	}

	/** A text without what a message can not hold: control characters but line breaks, halves of characters. */
	static String plain(String text) {
		return text.lines().map(Escapes::escape).collect(Collectors.joining("\n"));
	}
}
