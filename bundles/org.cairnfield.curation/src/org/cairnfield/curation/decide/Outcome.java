package org.cairnfield.curation.decide;

import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.values.Proposal;

/**
 * What the verdicts make of a split: approved samples join their cluster as border samples, and centroids follow; the
 * others stay noise.
 *
 * @param clustering by sample of the split's map
 * @param joined     how many samples joined a cluster
 * @param noise      how many stay noise
 * @param open       how many hold a release back
 */
public record Outcome(SplitOnMap split, Clustering clustering, int joined, int noise, int open) {

	/** @param standings of the same split */
	public static Outcome of(SplitOnMap split, Standings standings) {
		int[] labels = split.clustering().labels();
		int joined = 0;
		for (Standing standing : standings.all()) {
			int sample = split.index(standing.sample());
			if (sample >= 0 && standing.joins() && standing.made()) {
				labels[sample] = standing.proposal().get().cluster();
				joined++;
			}
		}
		Clustering approved = split.clustering().relabelled(labels);
		return new Outcome(split, approved, joined, approved.noise(), standings.open());
	}

	/** As if every proposal that is made were approved. */
	public static Outcome allApproved(SplitOnMap split) {
		int[] labels = split.clustering().labels();
		int joined = 0;
		for (Proposal proposal : split.proposals().all()) {
			int sample = split.index(proposal.sample());
			if (sample >= 0 && proposal.strengthR() >= split.threshold()) {
				labels[sample] = proposal.cluster();
				joined++;
			}
		}
		Clustering approved = split.clustering().relabelled(labels);
		return new Outcome(split, approved, joined, approved.noise(), 0);
	}

	/** Samples of each cluster with approved ones, by its number. */
	public int[] sizes() {
		int[] sizes = new int[split.clustering().clusters()];
		System.arraycopy(clustering.sizes(), 0, sizes, 0, clustering.clusters());
		return sizes;
	}

	/** What stands for each cluster in a search: the mean of its samples, approved ones included. */
	public Centroids centroids() {
		return Centroids.of(split.signals(), clustering.members(), Centroids.Kind.MEAN);
	}
}
