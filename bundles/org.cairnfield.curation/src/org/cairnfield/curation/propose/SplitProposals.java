package org.cairnfield.curation.propose;

import java.util.List;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Proposals;

/**
 * Where the noise of a kept split could go.
 *
 * @param rule       gate and threshold
 * @param open       whether there was noise enough for proposals; if not, there are none
 * @param noiseShare 0 … 1
 * @param noise      samples that are noise
 * @param best       the best that each noise sample correlates with, below the threshold too, where it is defined
 * @param placements of all noise samples on the split's map, ascending; none below the gate
 */
public record SplitProposals(ProposalRule rule, boolean open, double noiseShare, int noise, Proposals best,
		List<NoisePlacement> placements) {

	/**
	 * Correlates where the gate is reached.
	 *
	 * @param gate      share of noise from which proposals are made, 0 … 1
	 * @param threshold smallest r for one, −1 … 1
	 * @throws IllegalArgumentException where one is out of range
	 */
	public static SplitProposals of(SplitOnMap split, double gate, double threshold, Workers workers) {
		return of(split, new ProposalRule(gate, threshold), workers);
	}

	/** Correlates where the gate is reached. */
	public static SplitProposals of(SplitOnMap split, ProposalRule rule, Workers workers) {
		Clustering clustering = split.clustering();
		boolean open = rule.opens(clustering);
		List<NoisePlacement> placements = open ? NoiseCorrelation.place(split.signals(), clustering, workers)
				: List.of();
		return new SplitProposals(rule, open, clustering.noiseShare(), clustering.noise(),
				Proposals.of(placements.stream()
						.filter(p -> p.cluster() != Clustering.NOISE).map(p -> proposal(split, p)).toList()),
				placements);
	}

	/** Whether a placement is offered to its cluster. */
	public boolean isMade(NoisePlacement placement) {
		return rule.proposes(placement) && placement.cluster() != Clustering.NOISE;
	}

	/** Rounding may leave r a little beyond ±1. */
	private static Proposal proposal(SplitOnMap split, NoisePlacement p) {
		double r = Math.max(-1, Math.min(1, p.strength()));
		double margin = Double.isNaN(p.margin()) ? Double.NaN : Math.max(0, Math.min(2, p.margin()));
		return new Proposal(split.key(p.sample()), p.cluster(), r, margin, split.key(p.carrier()), p.nearestCluster());
	}

	/** How many proposals are made: those whose r reaches the threshold. */
	public int made() {
		return (int) best.all().stream().filter(p -> p.strengthR() >= rule.threshold()).count();
	}

	/** How many noise samples get none. */
	public int unplaced() {
		return noise - made();
	}
}
