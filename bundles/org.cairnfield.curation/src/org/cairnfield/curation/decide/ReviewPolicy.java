package org.cairnfield.curation.decide;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.model.Archive;

/**
 * How a team reviews. It belongs to the archive, which keeps it in a text form:
 * {@code bands: loose -1; fair 0.5; close 0.8 | second: fair, close | limit: 0.05 | confidence: 0.95}. What is not named
 * there is as usual.
 *
 * @param bands       of strength
 * @param secondBands names of those whose verdicts need a second reviewer
 * @param limitShare  a band with more wrong proposals than this share, between 0 and 1, must not pass an audit
 * @param confidence  with this probability, such as 0.95
 */
public record ReviewPolicy(Bands bands, Set<String> secondBands, double limitShare, double confidence) {

	/** The usual bands, no second reviewer, audits that stop bands with more than 5 % wrong at 95 %. */
	public static final ReviewPolicy USUAL = new ReviewPolicy(Bands.USUAL, Set.of(), 0.05, 0.95);

	private static final String BANDS = "bands";
	private static final String SECOND = "second";
	private static final String LIMIT = "limit";
	private static final String CONFIDENCE = "confidence";

	/** @throws IllegalArgumentException for a second reviewer in a band that is none, or a share out of range */
	public ReviewPolicy {
		secondBands = Set.copyOf(secondBands);
		for (String name : secondBands) {
			if (bands.named(name).isEmpty()) {
				throw new IllegalArgumentException("there is no band '" + name + "'; the bands are " + bands);
			}
		}
		if (!(limitShare > 0 && limitShare < 1) || !(confidence > 0 && confidence < 1)) {
			throw new IllegalArgumentException(
					"limiting share and confidence lie between 0 and 1, were " + limitShare + " and "
							+ confidence);
		}
	}

	/**
	 * That of an archive; empty where it has none.
	 *
	 * @throws ReviewRefused where it cannot be read
	 */
	public static Optional<ReviewPolicy> set(Archive archive) {
		String text = archive.getReviewPolicy();
		try {
			return text == null || text.isBlank() ? Optional.empty() : Optional.of(parse(text));
		} catch (IllegalArgumentException e) {
			throw new ReviewRefused(
					Words.bind(Messages.ReviewPolicy_theReviewPolicyOfThe, e.getMessage()));
		}
	}

	/** That of an archive, or the usual one. @throws ReviewRefused where it cannot be read */
	public static ReviewPolicy of(Archive archive) {
		return set(archive).orElse(USUAL);
	}

	/** @throws IllegalArgumentException for a text that is none; the message says what is wrong */
	public static ReviewPolicy parse(String text) {
		Map<String, String> parts = new LinkedHashMap<>();
		for (String part : text.split("\\|")) {
			int colon = part.indexOf(':');
			String key = colon < 0 ? "" : part.substring(0, colon).strip().toLowerCase(Locale.ROOT);
			if (!Set.of(BANDS, SECOND, LIMIT, CONFIDENCE).contains(key)) {
				throw new IllegalArgumentException("'" + part.strip() + "' is no part of a review policy");
			}
			parts.put(key, part.substring(colon + 1).strip());
		}
		Set<String> second = new TreeSet<>();
		for (String name : parts.getOrDefault(SECOND, "").split(",")) {
			if (!name.isBlank()) {
				second.add(name.strip());
			}
		}
		return new ReviewPolicy(parts.containsKey(BANDS) ? Bands.parse(parts.get(BANDS)) : Bands.USUAL, second,
				share(parts.get(LIMIT), USUAL.limitShare), share(parts.get(CONFIDENCE), USUAL.confidence));
	}

	private static double share(String text, double usual) {
		try {
			return text == null ? usual : Double.parseDouble(text);
		} catch (NumberFormatException e) {
			throw new IllegalArgumentException("'" + text + "' is no share", e);
		}
	}

	/** The same with a second reviewer for some bands. */
	public ReviewPolicy withSecond(Set<String> names) {
		return new ReviewPolicy(bands, names, limitShare, confidence);
	}

	/** Whether a proposal of that strength needs a second reviewer. */
	public boolean needsSecond(double strengthR) {
		return bands.of(strengthR).map(Band::name)
				.filter(name -> secondBands.stream().anyMatch(second -> second.equalsIgnoreCase(name))).isPresent();
	}

	/** The text form, which {@link #parse} reads. */
	@Override
	public String toString() {
		return BANDS + ": " + bands + " | " + SECOND + ": " + String.join(", ", new TreeSet<>(secondBands)) + " | "
				+ LIMIT + ": " + limitShare
				+ " | " + CONFIDENCE + ": " + confidence;
	}
}
