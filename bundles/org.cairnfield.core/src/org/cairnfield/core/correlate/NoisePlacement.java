package org.cairnfield.core.correlate;

import java.io.Serializable;
import org.cairnfield.core.cluster.Clustering;

/**
 * Where a noise sample fits. Correlations are Pearson's, of rows of the distance matrix.
 *
 * @param sample          the noise sample
 * @param cluster         the cluster that holds the most correlated labelled sample, or
 *                        {@link Clustering#NOISE} where no correlation is defined
 * @param strength        r with that sample, −1 … 1, NaN where undefined
 * @param carrier         that sample, the first in the map of equals, or −1
 * @param runnerUp        the cluster with the next best r, or {@link Clustering#NOISE}
 * @param runnerUpR       best r within it, NaN where there is none
 * @param nearest         the labelled sample nearest in signal space, the first of equals, or −1
 * @param nearestDistance its distance, in the signals' units
 * @param nearestCluster  its cluster, or {@link Clustering#NOISE}
 */
public record NoisePlacement(int sample, int cluster, double strength, int carrier, int runnerUp, double runnerUpR,
		int nearest, double nearestDistance, int nearestCluster) implements Serializable {

	/** By how much the best cluster beats the next, NaN where there is no other. */
	public double margin() {
		return strength - runnerUpR;
	}

	/** Whether the most correlated and the nearest sample are of one cluster. */
	public boolean nearestAgrees() {
		return cluster == nearestCluster;
	}
}
