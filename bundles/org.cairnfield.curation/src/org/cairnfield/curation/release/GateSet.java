package org.cairnfield.curation.release;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.model.Archive;

/**
 * The gates of an archive, kept as {@code releases/gates.txt}: a line a gate, {@code key at most BOUND} or
 * {@code key at least BOUND}, and two lines that are none. {@code second-review-bands = NAMES} names bands of strength in
 * which verdicts need a second reviewer, besides those of the archive's review policy. {@code signer = another} wants somebody to sign who has not prepared the release,
 * {@code signer = anyone} does not. What follows # says nothing. A gate without a line is not asked.
 *
 * @param bounds        by gate
 * @param secondBands   names of bands
 * @param anotherSigns  whether who prepared a release must not sign it
 */
public record GateSet(Map<Gate, Double> bounds, Set<String> secondBands, boolean anotherSigns) {

	/** Name of the file below {@code releases}. */
	public static final String FILE = "gates.txt";

	/** All gates that have a usual bound, no second reviewer, anyone signs. */
	public static final GateSet USUAL = usual();

	private static final String HEADER = "# Gates of this archive, version 1 of the format. What does not meet them is not released,\n"
			+ "# unless somebody overrides a gate by name and with a reason, which the release then carries.\n";
	private static final String BANDS = "second-review-bands";
	private static final String SIGNER = "signer";

	/** Copies map and set. */
	public GateSet {
		EnumMap<Gate, Double> copy = new EnumMap<>(Gate.class);
		copy.putAll(bounds);
		bounds = java.util.Collections.unmodifiableMap(copy);
		secondBands = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(secondBands));
	}

	private static GateSet usual() {
		Map<Gate, Double> bounds = new EnumMap<>(Gate.class);
		for (Gate gate : Gate.values()) {
			gate.usualBound().ifPresent(bound -> bounds.put(gate, bound));
		}
		return new GateSet(bounds, Set.of(), false);
	}

	/** @throws IllegalArgumentException telling the line that is wrong */
	public static GateSet parse(String text) {
		Map<Gate, Double> bounds = new EnumMap<>(Gate.class);
		Set<String> bands = new LinkedHashSet<>();
		boolean another = false;
		int number = 0;
		for (String each : text.lines().toList()) {
			String line = each.strip();
			number++;
			if (line.isEmpty() || line.startsWith("#")) {
				continue;
			}
			line = line.replaceFirst("\\s+#.*$", "");
			String[] word = line.split("\\s+");
			String value = line.contains("=") ? line.substring(line.indexOf('=') + 1).strip() : "";
			if (word[0].equals(BANDS) && line.contains("=")) {
				List.of(value.split(",")).stream().map(String::strip).filter(b -> !b.isEmpty()).forEach(bands::add);
			} else if (word[0].equals(SIGNER) && (value.equals("another") || value.equals("anyone"))) {
				another = value.equals("another");
			} else if (bounds.put(gate(word, number, line), bound(word, number, line)) != null) {
				throw wrong(number, line, Messages.GateSet_theGateWasNamedBefore);
			}
		}
		try {
			ReviewPolicy.USUAL.withSecond(bands);
		} catch (IllegalArgumentException e) {
			throw new IllegalArgumentException(FILE + ": " + e.getMessage(), e);
		}
		return new GateSet(bounds, bands, another);
	}

	private static Gate gate(String[] word, int number, String line) {
		for (Gate gate : Gate.values()) {
			if (gate.key().equals(word[0])) {
				if (word.length != 4 || !word[1].equals("at") || !word[2].equals(gate.atMost() ? "most" : "least")) {
					throw wrong(number, line, Words.bind(Messages.GateSet_write, gate.example()));
				}
				return gate;
			}
		}
		throw wrong(number, line, Messages.GateSet_thereIsNoSuchGate);
	}

	private static double bound(String[] word, int number, String line) {
		try {
			double bound = Double.parseDouble(word[3]);
			if (Double.isFinite(bound) && bound >= 0) {
				return bound;
			}
		} catch (NumberFormatException e) {
			// told below
		}
		throw wrong(number, line, Messages.GateSet_aBoundIsANumber);
	}

	private static IllegalArgumentException wrong(int number, String line, String why) {
		return new IllegalArgumentException(FILE + " line " + number + ": '" + line + "': " + why);
	}

	/**
	 * How verdicts of an archive are judged: by its review policy; bands that the file names need a second reviewer besides.
	 *
	 * @throws ReviewRefused where the policy of the archive cannot be read, or has no such band
	 */
	public ReviewPolicy policy(Archive archive) {
		ReviewPolicy own = ReviewPolicy.of(archive);
		Set<String> second = new LinkedHashSet<>(own.secondBands());
		secondBands.stream().filter(name -> second.stream().noneMatch(name::equalsIgnoreCase)).forEach(second::add);
		try {
			return own.withSecond(second);
		} catch (IllegalArgumentException e) {
			throw new ReviewRefused(FILE + ": " + e.getMessage());
		}
	}

	/** The text form, which {@link #parse} reads. */
	@Override
	public String toString() {
		StringBuilder text = new StringBuilder(HEADER);
		bounds.forEach((gate, bound) -> text.append(String.format(Locale.ROOT, "%-20s at %-5s  %s   # %s%n", gate.key(),
				gate.atMost() ? "most" : "least", number(bound), gate.title()).replace("\r", "")));
		for (Gate gate : Gate.values()) {
			if (!bounds.containsKey(gate)) {
				text.append(String.format(Locale.ROOT, "# %-38s # not asked: %s%n", gate.example(), gate.title())
						.replace("\r", ""));
			}
		}
		text.append(BANDS).append(" = ").append(String.join(", ", secondBands)).append('\n');
		return text.append(SIGNER).append(" = ").append(anotherSigns ? "another" : "anyone").append('\n').toString();
	}

	static String number(double value) {
		return value == Math.rint(value) && Math.abs(value) < 1e15 ? Long.toString((long) value)
				: Double.toString(value);
	}
}
