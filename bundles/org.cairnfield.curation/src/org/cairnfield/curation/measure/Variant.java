package org.cairnfield.curation.measure;

import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.core.stats.Interval;

/**
 * One way of matching, measured.
 *
 * @param name                 "plain", "plain-3w", "split", "split+proposals" or "chosen"
 * @param how                  the same for a person
 * @param errors               of all test samples
 * @param meanInterval         95 % bootstrap interval of the mean error, metres
 * @param comparisonsPerQuery  fingerprints compared, mean
 * @param matchTimeRatio       wall time to plain 1-NN of the same run, both on one thread
 */
public record Variant(String name, String how, PositionErrors errors, Interval meanInterval,
		double comparisonsPerQuery, double matchTimeRatio) {
}
