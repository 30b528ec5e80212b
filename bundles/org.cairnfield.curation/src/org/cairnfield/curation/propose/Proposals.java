package org.cairnfield.curation.propose;

import java.util.List;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.Placement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.Split;

/**
 * Where each noise sample of a split could go. Noise that no proposal is made for stays noise.
 *
 * @param split      whose noise it is
 * @param rule       gate and threshold
 * @param open       whether there was noise enough for proposals; if not, placements is empty
 * @param placements one a noise sample, ascending
 */
public record Proposals(Split split, ProposalRule rule, boolean open, List<Placement> placements) {

	/** Correlates where the gate is reached. */
	public static Proposals of(Split split, ProposalRule rule, Workers workers) {
		boolean open = rule.opens(split.clustering());
		return new Proposals(split, rule, open,
				open ? NoiseCorrelation.place(split.signals(), split.clustering(), workers) : List.of());
	}

	/** Whether a placement is offered to its cluster. */
	public boolean isMade(Placement placement) {
		return rule.proposes(placement) && placement.cluster() != Clustering.NOISE;
	}

	/** How many proposals are made. */
	public int made() {
		return (int) placements.stream().filter(this::isMade).count();
	}

	/** How many noise samples get none. */
	public int unplaced() {
		return split.clustering().noise() - made();
	}

	/** The split as it would be with every proposal approved. */
	public Clustering approved() {
		int[] labels = split.clustering().labels();
		for (Placement p : placements) {
			if (isMade(p)) {
				labels[p.sample()] = p.cluster();
			}
		}
		return split.clustering().relabelled(labels);
	}
}
