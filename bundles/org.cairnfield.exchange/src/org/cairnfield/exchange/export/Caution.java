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
				Messages.Caution_positionsComputedFromThisMap,
				Messages.Caution_addressesOfAccessPointsPlaces,
				Messages.Caution_aMapAgesAccessPoints);
	}

	/**
	 * What would leave with a map under some options, a line each.
	 *
	 * @param map after the options
	 */
	public static List<String> leaving(RadioMap map, ExportOptions options) {
		List<String> lines = new ArrayList<>();
		lines.add(String.format(Locale.ROOT, Messages.Caution_samplesWithTheirPlacesAt, map.size(),
				map.sites().size()));
		lines.add(map.accessPointCount() + (options.pseudonyms() == null ? Messages.Caution_accessPointsByTheirAddresses
				: Messages.Caution_accessPointsByPseudonymsA));
		lines.add(options.withoutLocal() ? Messages.Caution_noLocallyAdministeredAddresses
				: Messages.Caution_locallyAdministeredAddressesToo);
		lines.add(switch (options.times()) {
		case FULL -> Messages.Caution_timesAsRecorded;
		case HOUR -> Messages.Caution_timesToTheHour;
		case DAY -> Messages.Caution_timesToTheDay;
		case MONTH -> Messages.Caution_timesToTheMonth;
		case NONE -> Messages.Caution_noTimes;
		});
		lines.add(options.withDevices() ? Messages.Caution_namesOfDevices : Messages.Caution_noNamesOfDevices);
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
		text.append(Messages.Caution_inThisExport);
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
