package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Roles by the words of a header: a role's own word, and beside it only words that say nothing against. */
final class HeaderWords {

	/** Own words by role; within a role earlier words win over later ones. */
	private static final Map<ColumnRole, List<String>> OWN = Map.of(
			ColumnRole.X,
			List.of("x", "posx", "xpos", "xcoord", "e", "east", "easting", "lon", "lng", "long", "longitude"),
			ColumnRole.Y, List.of("y", "posy", "ypos", "ycoord", "n", "north", "northing", "lat", "latitude"),
			ColumnRole.FLOOR, List.of("floor", "storey", "story", "etage", "geschoss", "stockwerk", "flr", "level"),
			ColumnRole.SITE, List.of("building", "site", "house", "venue", "bldg", "gebaeude", "gebäude"),
			ColumnRole.TIME, List.of("timestamp", "time", "datetime", "date", "epoch", "utc", "tms"),
			ColumnRole.DEVICE, List.of("device", "phone", "smartphone", "handset", "terminal", "model"),
			ColumnRole.SURVEYOR, List.of("surveyor", "user", "operator", "person", "walker"),
			ColumnRole.RSSI, List.of("rssi", "rss", "signal", "strength", "dbm", "power"),
			ColumnRole.ACCESS_POINT, List.of("bssid", "mac", "ap", "accesspoint", "access", "address", "wap"),
			ColumnRole.ID, List.of("id", "sample", "sampleid", "fingerprint", "scan", "ids", "record"));
	private static final List<ColumnRole> ORDER = List.of(ColumnRole.X, ColumnRole.Y, ColumnRole.FLOOR,
			ColumnRole.SITE, ColumnRole.TIME, ColumnRole.DEVICE, ColumnRole.SURVEYOR, ColumnRole.RSSI,
			ColumnRole.ACCESS_POINT, ColumnRole.ID);
	private static final Set<String> NOISE = Set.of("id", "no", "nr", "number", "name", "label", "index", "coord",
			"coords", "coordinate", "position", "pos", "m", "cm", "mm", "ft", "feet", "metre", "metres", "meter",
			"meters", "local", "ms", "s", "sec", "unix", "sample", "scan", "point", "created", "at", "stamp", "type",
			"of", "in", "the", "utc", "level", "axis", "millis", "seconds", "grid", "degrees", "deg");
	private static final Pattern CUT = Pattern.compile(
			"[^\\p{L}\\p{N}]+|(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])");
	private static final Pattern ADDRESS = Pattern.compile(
			"(?:[0-9A-Fa-f]{2}[:.-]){5}[0-9A-Fa-f]{2}|(?=\\d*[A-Fa-f])[0-9A-Fa-f]{12}");

	/** @param rank smaller is surer */
	record Meaning(ColumnRole role, int rank, String word) {
	}

	private HeaderWords() {
	}

	/** The role a header speaks for, or null. */
	static Meaning meaning(String header) {
		if (header.length() > 60) {
			return null;
		}
		List<String> words = words(header);
		for (ColumnRole role : ORDER) {
			List<String> own = OWN.get(role);
			Meaning found = null;
			boolean against = false;
			for (String word : words) {
				int rank = own.indexOf(word);
				if (rank >= 0 && (found == null || rank < found.rank)) {
					found = new Meaning(role, rank, word);
				}
				against |= rank < 0 && !NOISE.contains(word);
			}
			if (found != null && !against) {
				return found;
			}
		}
		return null;
	}

	/** True for a name in the form of a BSSID. */
	static boolean isAddress(String name) {
		return name.length() >= 12 && name.length() <= 17 && ADDRESS.matcher(name).matches();
	}

	/** Metres to the unit that a header of a coordinate names, or NaN. */
	static double metresPerUnit(String header) {
		double metres = Double.NaN;
		for (String word : words(header)) {
			switch (word) {
			case "m", "metre", "metres", "meter", "meters" -> metres = 1;
			case "cm" -> metres = 0.01;
			case "mm" -> metres = 0.001;
			case "ft", "feet" -> metres = 0.3048;
			default -> {
				// says nothing about the unit
			}
			}
		}
		return metres;
	}

	static boolean isDegrees(String word) {
		return Set.of("lon", "lng", "long", "longitude", "lat", "latitude").contains(word);
	}

	private static List<String> words(String header) {
		List<String> words = new ArrayList<>();
		for (String part : CUT.split(header.strip())) {
			String word = part.toLowerCase(Locale.ROOT);
			if (word.length() > 4 && word.endsWith("id") && !word.equals("bssid")) {
				// FLOORID and the like
				words.add(word.substring(0, word.length() - 2));
				word = "id";
			}
			if (!word.isEmpty()) {
				words.add(word);
			}
		}
		return words;
	}
}
