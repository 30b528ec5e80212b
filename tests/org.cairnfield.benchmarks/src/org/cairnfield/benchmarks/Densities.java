package org.cairnfield.benchmarks;

import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/** Finds an ε that leaves a wanted share of noise, so that maps of all sizes pose like tasks. */
final class Densities {

	static final int MIN_PTS = 5;

	private Densities() {
	}

	/** The smallest whole ε that leaves at most {@code noiseShare}; distances are whole numbers, and so exact in any library. */
	static double epsilon(Signals signals, double noiseShare, Workers workers) {
		double[] curve = KDistances.of(signals, workers, MIN_PTS).sorted(MIN_PTS);
		int low = 0;
		int high = (int) curve[curve.length - 1];
		while (low < high) {
			int middle = (low + high) / 2;
			if (Dbscan.cluster(signals, middle, MIN_PTS, workers).noiseShare() > noiseShare) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low;
	}
}
