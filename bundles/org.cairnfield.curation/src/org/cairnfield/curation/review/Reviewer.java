package org.cairnfield.curation.review;

import java.util.Objects;

import org.cairnfield.curation.decide.ReviewPolicy;

/**
 * Who reviews, and by which policy.
 *
 * @param person name that verdicts carry
 */
public record Reviewer(String person, ReviewPolicy policy) {

	public Reviewer {
		Objects.requireNonNull(person);
		Objects.requireNonNull(policy);
	}
}
