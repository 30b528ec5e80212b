package org.cairnfield.curation.split;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.match.Search;

/**
 * What a split is asked to be.
 *
 * @param representation how levels become values
 * @param distance       between fingerprints
 * @param epsilon        DBSCAN's ε; empty: chosen on held-out training positions
 * @param minPts         DBSCAN's, the sample itself counted; empty: likewise
 * @param pcaShare       reduce to the principal components that explain this share of the variance before
 *                       DBSCAN; empty: do not reduce
 * @param search         how it is searched; empty: chosen likewise
 * @param most           time that a choice may take; what was not tried by then is left out, and said
 * @param seed           for whatever is drawn
 */
public record SplitRequest(Representation representation, Distance distance, OptionalDouble epsilon,
		OptionalInt minPts, OptionalDouble pcaShare, Optional<Search> search, Duration most, long seed) {

	/** Time for a choice, unless told otherwise. */
	public static final Duration USUAL_TIME = Duration.ofMinutes(10);

	/** Positive representation, city-block; ε, minPts and search chosen. */
	public static SplitRequest automatic(long seed) {
		return new SplitRequest(Representation.positive(), Distance.CITY_BLOCK, OptionalDouble.empty(),
				OptionalInt.empty(), OptionalDouble.empty(), Optional.empty(), USUAL_TIME, seed);
	}

	/** Names of the representations that {@link #named} takes; the first is the usual one. */
	public static List<String> representations() {
		return List.of("positive", "normalised", "exponential", "powed");
	}

	/** Names of the distances likewise. */
	public static List<String> distances() {
		return Arrays.stream(Distance.values()).map(Distance::toString).toList();
	}

	/**
	 * By names.
	 *
	 * @throws IllegalArgumentException for a name that is none
	 */
	public static SplitRequest named(String representation, String distance, OptionalDouble epsilon, OptionalInt minPts,
			OptionalDouble pcaShare, Optional<Search> search, long seed) {
		return new SplitRequest(Representation.named(representation), Distance.named(distance), epsilon, minPts,
				pcaShare, search, USUAL_TIME, seed);
	}

	/** The same with ε and minPts given, searched as published. */
	public SplitRequest published(double givenEpsilon, int givenMinPts) {
		return new SplitRequest(representation, distance, OptionalDouble.of(givenEpsilon), OptionalInt.of(givenMinPts),
				pcaShare,
				Optional.of(Search.PUBLISHED), most, seed);
	}

	/** The same with another time for the choice. */
	public SplitRequest within(Duration time) {
		return new SplitRequest(representation, distance, epsilon, minPts, pcaShare, search, time, seed);
	}
}
