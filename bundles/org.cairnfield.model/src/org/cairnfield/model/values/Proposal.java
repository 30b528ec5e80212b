package org.cairnfield.model.values;

import java.util.Objects;

/**
 * A sample that is noise, offered to a cluster.
 *
 * @param sample         the noise sample
 * @param cluster        number of the cluster
 * @param strengthR      correlation with the carrier, −1 … 1
 * @param margin         by how much strengthR beats the next best cluster, 0 … 2; NaN where there is no other
 * @param carrier        the sample of the cluster that it correlates with most
 * @param nearestCluster cluster of the sample that is nearest in signal space, or {@link Labels#NOISE} where none is
 */
public record Proposal(SampleKey sample, int cluster, double strengthR, double margin, SampleKey carrier,
		int nearestCluster) {

	/** @throws IllegalArgumentException where a number is out of range */
	public Proposal {
		Objects.requireNonNull(sample);
		Objects.requireNonNull(carrier);
		if (cluster < 0 || nearestCluster < Labels.NOISE) {
			throw new IllegalArgumentException(
					"no cluster " + Math.min(cluster, nearestCluster) + " for sample " + sample);
		}
		Numbers.within("strength r of sample " + sample, strengthR, -1, 1);
		if (!Double.isNaN(margin)) {
			Numbers.within("margin of sample " + sample, margin, 0, 2);
		}
	}

	/** Whether the most correlated and the nearest sample are of one cluster. */
	public boolean nearestAgrees() {
		return cluster == nearestCluster;
	}
}
