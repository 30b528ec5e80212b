package org.cairnfield.curation.rules;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A survey as rules know it.
 *
 * @param id           unique
 * @param surveyor     initials, empty where unknown
 * @param sourceDigest digest of the file it came from, where known
 */
public record Survey(String id, String site, Optional<LocalDate> date, String surveyor,
		Optional<String> sourceDigest) {

	public Survey {
		Objects.requireNonNull(id);
		Objects.requireNonNull(site);
		Objects.requireNonNull(date);
		Objects.requireNonNull(surveyor);
		Objects.requireNonNull(sourceDigest);
	}

	/** One of which little is known. */
	public static Survey undated(String id, String site) {
		return new Survey(id, site, Optional.empty(), "", Optional.empty());
	}

	/** One with a date. */
	public static Survey dated(String id, String site, LocalDate date) {
		return new Survey(id, site, Optional.of(date), "", Optional.empty());
	}
}
