package org.cairnfield.ui.internal.intake;

import java.util.List;

/** Separators by the names that previews give them. */
final class Separators {

	static final List<String> NAMES = List.of("comma", "semicolon", "tab");

	private Separators() {
	}

	/** The character, or null where the text names none. */
	static Character of(String text) {
		return switch (text) {
		case "comma" -> ',';
		case "semicolon" -> ';';
		case "tab" -> '\t';
		default -> text.length() == 1 && text.charAt(0) != '"' ? (Character) text.charAt(0) : null;
		};
	}
}
