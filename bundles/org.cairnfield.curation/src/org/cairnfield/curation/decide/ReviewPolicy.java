package org.cairnfield.curation.decide;

import java.util.Set;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.propose.Bands;

/**
 * How a team reviews.
 *
 * @param bands       of strength
 * @param secondBands names of those whose verdicts need a second reviewer
 * @param limitShare  a band with more wrong proposals than this share, between 0 and 1, must not pass an audit
 * @param confidence  with this probability, such as 0.95
 */
public record ReviewPolicy(Bands bands, Set<String> secondBands, double limitShare, double confidence) {

	/** The usual bands, no second reviewer, audits that stop bands with more than 5 % wrong at 95 %. */
	public static final ReviewPolicy USUAL = new ReviewPolicy(Bands.USUAL, Set.of(), 0.05, 0.95);

	/** @throws IllegalArgumentException for a second reviewer in a band that is none, or a share out of range */
	public ReviewPolicy {
		secondBands = Set.copyOf(secondBands);
		for (String name : secondBands) {
			if (bands.named(name).isEmpty()) {
				throw new IllegalArgumentException("there is no band '" + name + "'; the bands are " + bands);
			}
		}
		if (!(limitShare > 0 && limitShare < 1) || !(confidence > 0 && confidence < 1)) {
			throw new IllegalArgumentException("limiting share and confidence lie between 0 and 1, were " + limitShare + " and "
					+ confidence);
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
}
