package org.cairnfield.exchange.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.cairnfield.core.map.RadioMap;

/** What people must know before they pass an export on, or use it. */
public final class Caution {

	/** Name of the file that every export has beside it. */
	public static final String FILE = "CAUTION.txt";

	private Caution() {
	}

	/** What goes for every map, a paragraph each. */
	public static List<String> general() {
		return List.of(
				"Positions computed from this map are not for safety of life without independent validation. They can be wrong by"
						+ " many metres, by a floor or by a building, and nothing in this export shows when they are.",
				"Addresses of access points, places, times and the names of devices and surveyors can be personal data, alone or"
						+ " joined with other data: an access point may stand in a home or be carried by a person. Local law and qualified"
						+ " practice decide whether this may be passed on, to whom, and for how long it may be kept.",
				"A map ages: access points are moved, replaced and switched off. Measure again before relying on an old one.");
	}

	/**
	 * What would leave with a map under some options, a line each.
	 *
	 * @param map after the options
	 */
	public static List<String> leaving(RadioMap map, ExportOptions options) {
		List<String> lines = new ArrayList<>();
		lines.add(String.format(Locale.ROOT, "%d samples with their places, at %d sites", map.size(),
				map.sites().size()));
		lines.add(map.accessPointCount() + (options.pseudonyms() == null ? " access points by their addresses"
				: " access points by pseudonyms: a keyed hash (HMAC-SHA-256) of the address, whose key is not in the export;"
						+ " whoever has the key can find the addresses again"));
		lines.add(options.withoutLocal() ? "no locally administered addresses"
				: "locally administered addresses too, which are often those of phones");
		lines.add(switch (options.times()) {
		case FULL -> "times as recorded";
		case HOUR -> "times to the hour";
		case DAY -> "times to the day";
		case MONTH -> "times to the month";
		case NONE -> "no times";
		});
		lines.add(options.withDevices() ? "names of devices" : "no names of devices");
		return lines;
	}

	/**
	 * The page that goes with an export.
	 *
	 * @param source what the map is and was made from, a line each
	 */
	public static String page(String title, List<String> source, RadioMap map, ExportOptions options) {
		StringBuilder text = new StringBuilder(title).append("\n\n");
		source.forEach(line -> text.append(line).append('\n'));
		text.append("\nIn this export:\n");
		leaving(map, options).forEach(line -> text.append("- ").append(line).append('\n'));
		general().forEach(paragraph -> text.append('\n').append(wrapped(paragraph)));
		return text.toString();
	}

	private static String wrapped(String paragraph) {
		StringBuilder text = new StringBuilder();
		int length = 0;
		for (String word : paragraph.split(" ")) {
			if (length > 0 && length + 1 + word.length() > 100) {
				text.append('\n');
				length = 0;
			}
			text.append(length == 0 ? "" : " ").append(word);
			length += word.length() + (length == 0 ? 0 : 1);
		}
		return text.append('\n').toString();
	}
}
