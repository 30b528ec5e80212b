package org.cairnfield.curation.rules;

import java.util.Objects;

/**
 * A remedy that a finding offers.
 *
 * @param way which of the rule's alternatives it is
 */
public record Offer(Alternative way, Remedy remedy) {

	public Offer {
		Objects.requireNonNull(way);
		Objects.requireNonNull(remedy);
	}
}
