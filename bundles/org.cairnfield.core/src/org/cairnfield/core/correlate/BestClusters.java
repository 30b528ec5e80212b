package org.cairnfield.core.correlate;

import java.util.Arrays;
import org.cairnfield.core.cluster.Clustering;

/** The clusters that one noise sample correlates with best, each by its best sample, of equals the first in the map. One per thread. */
final class BestClusters {

	/** Far above the rounding of r. */
	private static final double MARGIN = 1e-9;

	private final Clustering clustering;
	private final RowMoments moments;
	private final double[] bestR;
	/** −1 for a cluster of which nothing correlates. */
	private final int[] carrier;
	private final int[] touched;
	private int touchedCount;
	private int sample;
	private int first;
	private int second;

	BestClusters(Clustering clustering, RowMoments moments) {
		this.clustering = clustering;
		this.moments = moments;
		bestR = new double[clustering.clusters()];
		carrier = new int[clustering.clusters()];
		touched = new int[clustering.clusters()];
		Arrays.fill(carrier, -1);
	}

	void begin(int noise) {
		sample = noise;
		while (touchedCount > 0) {
			carrier[touched[--touchedCount]] = -1;
		}
		first = -1;
		second = -1;
	}

	/** Looks at a labelled sample. @param product of its row and that of the noise sample */
	void take(int other, double product) {
		int cluster = clustering.label(other);
		if (carrier[cluster] >= 0 && moments.covariance(sample, other, product) < (bestR[cluster] - MARGIN)
				* moments.spread[sample] * moments.spread[other]) {
			return; // without a division
		}
		double r = moments.correlation(sample, other, product);
		if (Double.isNaN(r)) { // undefined: no match
			return;
		}
		if (carrier[cluster] < 0) {
			touched[touchedCount++] = cluster;
		} else if (r < bestR[cluster] || r == bestR[cluster] && other > carrier[cluster]) {
			return;
		}
		bestR[cluster] = r;
		carrier[cluster] = other;
		rank(cluster);
	}

	private void rank(int cluster) {
		if (cluster == first) {
			return;
		}
		if (first < 0 || better(cluster, first)) {
			second = first;
			first = cluster;
		} else if (second < 0 || cluster != second && better(cluster, second)) {
			second = cluster;
		}
	}

	private boolean better(int a, int b) {
		return bestR[a] > bestR[b] || (bestR[a] == bestR[b] && carrier[a] < carrier[b]);
	}

	/** What correlates less changes nothing. */
	double least() {
		return second < 0 ? Double.NEGATIVE_INFINITY : bestR[second];
	}

	/** The sample with the next best r, or −1. */
	int runnerUpCarrier() {
		return second < 0 ? -1 : carrier[second];
	}

	NoisePlacement placement(int nearest, double nearestDistance) {
		return new NoisePlacement(sample, first < 0 ? Clustering.NOISE : first, first < 0 ? Double.NaN : bestR[first],
				first < 0 ? -1 : carrier[first], second < 0 ? Clustering.NOISE : second,
				second < 0 ? Double.NaN : bestR[second], nearest, nearestDistance,
				nearest < 0 ? Clustering.NOISE : clustering.label(nearest));
	}
}
