package org.cairnfield.curation.decide;

import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.values.Proposal;

/**
 * What the verdicts make of a split: approved samples and those that were moved join their cluster as border samples, and
 * centroids follow; others go to the pool; the rest is left out of the map.
 *
 * @param clustering by sample of the split's map; samples of the pool and those left out have no cluster
 * @param joined     how many samples joined a cluster
 * @param pool       samples of the split's map that every query searches, ascending
 * @param noise      how many are left out
 * @param open       how many hold a release back
 */
public record Outcome(SplitOnMap split, Clustering clustering, int joined, int[] pool, int noise, int open) {

	/** @param standings of the same split */
	public static Outcome of(SplitOnMap split, Standings standings) {
		int[] labels = split.clustering().labels();
		IntStream.Builder pool = IntStream.builder();
		int joined = 0;
		for (Standing standing : standings.all()) {
			int sample = split.index(standing.sample());
			Home home = standing.home();
			if (sample >= 0 && home.kind() == Home.Kind.CLUSTER) {
				labels[sample] = home.cluster();
				joined++;
			} else if (sample >= 0 && home.kind() == Home.Kind.POOL) {
				pool.add(sample);
			}
		}
		Clustering approved = split.clustering().relabelled(labels);
		int[] pooled = pool.build().sorted().toArray();
		return new Outcome(split, approved, joined, pooled, approved.noise() - pooled.length, standings.open());
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
		return new Outcome(split, approved, joined, new int[0], approved.noise(), 0);
	}
}
