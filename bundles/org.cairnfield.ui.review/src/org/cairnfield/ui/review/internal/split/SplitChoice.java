package org.cairnfield.ui.review.internal.split;

import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.model.values.Scope;
import org.cairnfield.ui.review.internal.desk.ReviewNumber;
import org.cairnfield.ui.review.internal.desk.ReviewSettings;

/**
 * What is to be split, and how distances are measured; all but ε.
 *
 * @param representation name of how levels become values
 * @param distance       name of the distance
 * @param minPts         the sample itself counted
 */
record SplitChoice(Scope scope, String representation, String distance, int minPts) {

	SplitChoice {
		Objects.requireNonNull(scope);
		Objects.requireNonNull(representation);
		Objects.requireNonNull(distance);
	}

	/** As a service wants it; what is empty is chosen on held-out training positions. */
	SplitRequest request(OptionalDouble epsilon, OptionalInt givenMinPts) {
		return SplitRequest.named(representation, distance, epsilon, givenMinPts, OptionalDouble.empty(),
				Optional.empty(), SplitWork.SEED);
	}

	/** That an automatic choice may take, as the preferences have it now. */
	static Duration time() {
		return Duration.ofMillis(Math.round(ReviewSettings.number(ReviewNumber.CHOICE_MINUTES) * 60_000));
	}

	/** Unit of the distance; sums of levels are in dB, all others have none. */
	String unit() {
		return representation.equals("positive") ? "dB" : "";
	}

	/** Whether the same distances are compared, so that curve and sweep stay comparable. */
	boolean sameDistances(SplitChoice other) {
		return other != null && scope.equals(other.scope) && representation.equals(other.representation)
				&& distance.equals(other.distance);
	}
}
