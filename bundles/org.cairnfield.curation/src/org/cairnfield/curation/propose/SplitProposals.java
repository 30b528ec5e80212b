package org.cairnfield.curation.propose;

import java.util.ArrayList;
import java.util.List;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.Placement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;

/**
 * Where the noise of a kept split could go.
 *
 * @param rule       gate and threshold
 * @param open       whether there was noise enough for proposals; if not, there are none
 * @param noiseShare 0 … 1
 * @param noise      samples that are noise
 * @param best       the best that each noise sample correlates with, below the threshold too, where it is defined
 * @param undefined  noise samples that correlate with nothing
 */
public record SplitProposals(ProposalRule rule, boolean open, double noiseShare, int noise,
		org.cairnfield.model.values.Proposals best, List<SampleKey> undefined) {

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
		List<Proposal> best = new ArrayList<>();
		List<SampleKey> undefined = new ArrayList<>();
		if (open) {
			for (Placement p : NoiseCorrelation.place(split.signals(), clustering, workers)) {
				if (p.cluster() == Clustering.NOISE) {
					undefined.add(split.key(p.sample()));
				} else {
					best.add(proposal(split, p));
				}
			}
		}
		return new SplitProposals(rule, open, clustering.noiseShare(), clustering.noise(),
				org.cairnfield.model.values.Proposals.of(best), List.copyOf(undefined));
	}

	/** Rounding may leave r a little beyond ±1. */
	private static Proposal proposal(SplitOnMap split, Placement p) {
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
