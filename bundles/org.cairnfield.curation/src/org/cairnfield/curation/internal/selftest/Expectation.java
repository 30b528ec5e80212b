package org.cairnfield.curation.internal.selftest;

/**
 * What a rule's findings on one unit of a map are worth.
 *
 * @param precision share of what it names there that is to be expected faulty, 0 … 1
 * @param planted   faults planted in the copy
 * @param met       of these, found
 * @param strayed   sound samples or access points that it named in the copy and not before
 */
public record Expectation(double precision, int planted, int met, int strayed) {
}
