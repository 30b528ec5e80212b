package org.cairnfield.archive.internal.merge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.conflict.Unit;

/** The file of gates, line by line: a word that the line is known by, and what it is set to. What follows # says nothing. */
public final class GateLines {

	/** Where conflicts over gates are; the unit is the word that a line is known by. */
	public static final String PLACE = Place.FILE + ArchiveLayout.GATES;

	private static final Pattern LINE = Pattern.compile("\\s*([^\\s#=]+)\\s*([^#]*?)\\s*(#.*)?");

	private GateLines() {
	}

	static Unit unit(String word) {
		return new Unit(PLACE, word);
	}

	/** Words of all lines that say something. @param text null for no file */
	static SortedSet<String> words(String text) {
		return new TreeSet<>(values(text).keySet());
	}

	/** What a line is set to; null where there is none. @param text null for no file */
	public static String value(String text, String word) {
		return values(text).get(word);
	}

	private static Map<String, String> values(String text) {
		Map<String, String> values = new LinkedHashMap<>();
		for (String line : lines(text)) {
			Matcher parts = LINE.matcher(line);
			if (parts.matches()) {
				values.putIfAbsent(parts.group(1), parts.group(2).replaceAll("\\s+", " "));
			}
		}
		return values;
	}

	private static List<String> lines(String text) {
		return text == null ? List.of() : text.lines().toList();
	}

	/** The text with a line set, which is added where it is not there; without it for a value of null. */
	public static String with(String text, String word, String value) {
		List<String> lines = new ArrayList<>();
		String set = value == null ? null : word + ' ' + value;
		boolean done = value == null;
		for (String line : lines(text)) {
			Matcher parts = LINE.matcher(line);
			if (!parts.matches() || !parts.group(1).equals(word)) {
				lines.add(line);
			} else if (!done) {
				lines.add(set);
				done = true;
			}
		}
		if (!done) {
			lines.add(set);
		}
		return String.join("\n", lines) + '\n';
	}
}
