package org.cairnfield.core.correlate;

import org.cairnfield.core.cluster.Clustering;

/**
 * When noise samples are offered back to clusters. Both defaults are common practice.
 *
 * @param gate      the share of noise, 0 … 1, from which proposals are made at all
 * @param threshold the smallest strength r for which one is made
 */
public record ProposalRule(double gate, double threshold) {

	/** From 10 % noise on, for r ≥ 0.1. */
	public static final ProposalRule USUAL = new ProposalRule(0.10, 0.1);

	public ProposalRule {
		if (!(gate >= 0 && gate <= 1) || !(threshold >= -1 && threshold <= 1)) {
			throw new IllegalArgumentException(
					"gate must be within 0 … 1 and threshold within −1 … 1: " + gate + ", " + threshold);
		}
	}

	/** Whether there is noise enough. */
	public boolean opens(Clustering clustering) {
		return clustering.noise() > 0 && clustering.noiseShare() >= gate;
	}

	/** Whether a noise sample gets a proposal; what does not stays noise. */
	public boolean proposes(NoisePlacement placement) {
		return placement.strength() >= threshold;
	}
}
