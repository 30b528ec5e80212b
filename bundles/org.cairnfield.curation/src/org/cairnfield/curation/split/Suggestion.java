package org.cairnfield.curation.split;

/**
 * Parameters to begin with.
 *
 * @param reason for a person, without a full stop
 */
public record Suggestion(double epsilon, int minPts, String reason) {
}
