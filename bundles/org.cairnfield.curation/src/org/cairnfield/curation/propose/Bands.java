package org.cairnfield.curation.propose;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The bands of strength that people use, weakest first. Text form, as in preferences: names with lower bounds,
 * {@code loose -1; fair 0.5; close 0.8}.
 */
public final class Bands {

	/** Unless people say otherwise. */
	public static final Bands USUAL = parse("loose -1; fair 0.5; close 0.8");

	private final List<Band> bands;

	private Bands(List<Band> bands) {
		this.bands = List.copyOf(bands);
	}

	/** @throws IllegalArgumentException for a text that names no bands; the message says what is wrong */
	public static Bands parse(String text) {
		List<String> names = new ArrayList<>();
		List<Double> lows = new ArrayList<>();
		Set<String> seen = new HashSet<>();
		for (String part : text.split(";")) {
			String band = part.strip();
			int space = band.lastIndexOf(' ');
			if (space < 0) {
				throw new IllegalArgumentException(
						"a band is a name and its lowest r, such as 'close 0.8': '" + band + "'");
			}
			double low = bound(band.substring(space + 1), band);
			String name = band.substring(0, space).strip();
			if (!lows.isEmpty() && low <= lows.get(lows.size() - 1)) {
				throw new IllegalArgumentException("bands are named from the weakest to the strongest: '" + band
						+ "' does not begin above the one before it");
			}
			if (!seen.add(name.toLowerCase(Locale.ROOT))) {
				throw new IllegalArgumentException("two bands are named '" + name + "'");
			}
			names.add(name);
			lows.add(low);
		}
		List<Band> bands = new ArrayList<>();
		for (int i = 0; i < names.size(); i++) {
			bands.add(new Band(names.get(i), lows.get(i),
					i + 1 < lows.size() ? lows.get(i + 1) : Double.POSITIVE_INFINITY));
		}
		return new Bands(bands);
	}

	private static double bound(String text, String band) {
		try {
			double low = Double.parseDouble(text);
			if (low >= -1 && low <= 1) {
				return low;
			}
		} catch (NumberFormatException e) {
			// said below
		}
		throw new IllegalArgumentException("the lowest r of a band is a number from -1 to 1: '" + band + "'");
	}

	/** Weakest first. */
	public List<Band> all() {
		return bands;
	}

	/** The band of a strength; empty below the weakest. */
	public Optional<Band> of(double r) {
		return bands.stream().filter(band -> band.has(r)).findFirst();
	}

	/** By name, whatever the case. */
	public Optional<Band> named(String name) {
		return bands.stream().filter(band -> band.name().equalsIgnoreCase(name)).findFirst();
	}

	/** The text form. */
	@Override
	public String toString() {
		return bands.stream().map(band -> band.name() + ' ' + band.lowR()).collect(Collectors.joining("; "));
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Bands b && bands.equals(b.bands);
	}

	@Override
	public int hashCode() {
		return bands.hashCode();
	}
}
