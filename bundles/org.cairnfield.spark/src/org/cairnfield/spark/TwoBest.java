package org.cairnfield.spark;

import org.cairnfield.core.cluster.Clustering;

/** The two clusters whose samples correlate best with a noise sample; of equal r the one whose sample is first in the map. */
final class TwoBest {

	private int cluster = Clustering.NOISE;
	private double r = Double.NaN;
	private int carrier = -1;
	private int secondCluster = Clustering.NOISE;
	private double secondR = Double.NaN;
	private int secondCarrier = -1;

	/** A sample of a cluster; an undefined r is no match. */
	void offer(int ofCluster, double withR, int sample) {
		if (ofCluster == Clustering.NOISE || Double.isNaN(withR)) {
			return;
		}
		if (ofCluster == cluster) {
			if (isBetter(withR, sample, r, carrier)) {
				r = withR;
				carrier = sample;
			}
		} else if (isBetter(withR, sample, r, carrier)) {
			secondCluster = cluster;
			secondR = r;
			secondCarrier = carrier;
			cluster = ofCluster;
			r = withR;
			carrier = sample;
		} else if (isBetter(withR, sample, secondR, secondCarrier)) {
			secondCluster = ofCluster;
			secondR = withR;
			secondCarrier = sample;
		}
	}

	private static boolean isBetter(double r, int sample, double than, int thanSample) {
		return thanSample < 0 || r > than || r == than && sample < thanSample;
	}

	/** What a sample needs at least to be offered; −∞ where any is taken. */
	double threshold() {
		return secondCarrier < 0 ? Double.NEGATIVE_INFINITY : secondR;
	}

	int cluster() {
		return cluster;
	}

	/** NaN where there is none. */
	double r() {
		return r;
	}

	/** −1 where there is none. */
	int carrier() {
		return carrier;
	}

	int secondCluster() {
		return secondCluster;
	}

	/** NaN where there is none. */
	double secondR() {
		return secondR;
	}
}
