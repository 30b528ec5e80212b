package org.cairnfield.curation.release;

import java.math.BigInteger;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A version by Semantic Versioning 2.0.0. The order is that of its item 11: build metadata plays no part there, so versions
 * that differ in nothing else compare as equal without being equal.
 *
 * @param core       major, minor, patch
 * @param preRelease identifiers after the hyphen; none for a release
 * @param build      metadata after the plus sign, or empty
 */
public record SemanticVersion(List<BigInteger> core, List<String> preRelease, String build)
		implements Comparable<SemanticVersion> {

	private static final String NUMBER = "(0|[1-9][0-9]*)";
	private static final String WORD = "(?:0|[1-9][0-9]*|[0-9]*[A-Za-z-][0-9A-Za-z-]*)";
	private static final Pattern FORM = Pattern
			.compile(NUMBER + "\\." + NUMBER + "\\." + NUMBER + "(?:-(" + WORD + "(?:\\." + WORD
					+ ")*))?(?:\\+([0-9A-Za-z-]+(?:\\.[0-9A-Za-z-]+)*))?");
	private static final int LONGEST = 80;

	/** The first version of a map that is fit for use. */
	public static final SemanticVersion FIRST = parse("1.0.0");

	/** What a version counts up. */
	public enum Part {
		/** Positions mean something else than before. */
		MAJOR,
		/** The map is another. */
		MINOR,
		/** The map is the same. */
		PATCH
	}

	/** Copies the lists. */
	public SemanticVersion {
		core = List.copyOf(core);
		preRelease = List.copyOf(preRelease);
	}

	/** @throws IllegalArgumentException for a text that is no version */
	public static SemanticVersion parse(String text) {
		Matcher m = FORM.matcher(text);
		if (text.length() > LONGEST || !m.matches()) {
			throw new IllegalArgumentException("no version by Semantic Versioning 2.0.0: '" + text + "'; one is 1.0.0");
		}
		return new SemanticVersion(
				List.of(new BigInteger(m.group(1)), new BigInteger(m.group(2)), new BigInteger(m.group(3))),
				m.group(4) == null ? List.of() : List.of(m.group(4).split("\\.")),
				m.group(5) == null ? "" : m.group(5));
	}

	/** Whether a text is a version. */
	public static boolean is(String text) {
		return text.length() <= LONGEST && FORM.matcher(text).matches();
	}

	/** The next version: the part counted up by one, those after it 0, nothing behind. A pre-release leads to its release. */
	public SemanticVersion next(Part part) {
		BigInteger major = core.get(0);
		BigInteger minor = core.get(1);
		BigInteger patch = core.get(2);
		boolean reached = !preRelease.isEmpty() && switch (part) {
		case MAJOR -> minor.signum() == 0 && patch.signum() == 0;
		case MINOR -> patch.signum() == 0;
		case PATCH -> true;
		};
		if (reached) {
			return new SemanticVersion(core, List.of(), "");
		}
		List<BigInteger> next = switch (part) {
		case MAJOR -> List.of(major.add(BigInteger.ONE), BigInteger.ZERO, BigInteger.ZERO);
		case MINOR -> List.of(major, minor.add(BigInteger.ONE), BigInteger.ZERO);
		case PATCH -> List.of(major, minor, patch.add(BigInteger.ONE));
		};
		return new SemanticVersion(next, List.of(), "");
	}

	@Override
	public int compareTo(SemanticVersion other) {
		for (int i = 0; i < 3; i++) {
			int order = core.get(i).compareTo(other.core.get(i));
			if (order != 0) {
				return order;
			}
		}
		if (preRelease.isEmpty() || other.preRelease.isEmpty()) {
			return Boolean.compare(preRelease.isEmpty(), other.preRelease.isEmpty());
		}
		for (int i = 0; i < Math.min(preRelease.size(), other.preRelease.size()); i++) {
			int order = compare(preRelease.get(i), other.preRelease.get(i));
			if (order != 0) {
				return order;
			}
		}
		return Integer.compare(preRelease.size(), other.preRelease.size());
	}

	private static int compare(String a, String b) {
		boolean numberA = isNumber(a);
		boolean numberB = isNumber(b);
		if (numberA && numberB) {
			return new BigInteger(a).compareTo(new BigInteger(b));
		}
		return numberA != numberB ? numberA ? -1 : 1 : a.compareTo(b);
	}

	private static boolean isNumber(String word) {
		return word.chars().allMatch(c -> c >= '0' && c <= '9');
	}

	@Override
	public String toString() {
		return core.get(0) + "." + core.get(1) + "." + core.get(2)
				+ (preRelease.isEmpty() ? "" : "-" + String.join(".", preRelease))
				+ (build.isEmpty() ? "" : "+" + build);
	}
}
