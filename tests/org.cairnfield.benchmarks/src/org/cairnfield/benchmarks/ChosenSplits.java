package org.cairnfield.benchmarks;

import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.task.Workers;

/** Maps split as the automatic choice has it, every noise sample in the cluster that it correlates with best. */
final class ChosenSplits {

	static final long SEED = 1;

	private ChosenSplits() {
	}

	static SplitMap of(Signals signals, AutomaticChoice.Tried chosen, Workers workers) {
		Clustering clustering = Dbscan.cluster(signals, chosen.epsilon(), chosen.minPts(), workers);
		int[] labels = clustering.labels();
		for (NoisePlacement p : NoiseCorrelation.place(signals, clustering, workers)) {
			labels[p.sample()] = p.cluster();
		}
		Clustering cells = chosen.search().cells(signals, clustering.relabelled(labels), SEED, workers);
		return chosen.search().map(signals, cells, SEED, workers);
	}
}
