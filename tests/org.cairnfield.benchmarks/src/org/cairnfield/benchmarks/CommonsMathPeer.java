package org.cairnfield.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.ml.clustering.Cluster;
import org.apache.commons.math3.ml.clustering.Clusterable;
import org.apache.commons.math3.ml.clustering.DBSCANClusterer;
import org.apache.commons.math3.ml.distance.ManhattanDistance;
import org.cairnfield.core.distance.Signals;

/** Apache Commons Math, which does not count the sample itself in minPts. */
final class CommonsMathPeer implements Peer {

	private record Vector(int sample, double[] values) implements Clusterable {
		@Override
		public double[] getPoint() {
			return values;
		}

		// By identity: the clusterer keeps points in a map, and comparing arrays there would slow it down.
		@Override
		public boolean equals(Object other) {
			return this == other;
		}

		@Override
		public int hashCode() {
			return sample;
		}
	}

	@Override
	public Prepared prepare(Signals signals) {
		List<Vector> vectors = new ArrayList<>();
		for (int s = 0; s < signals.size(); s++) {
			vectors.add(new Vector(s, Peer.dense(signals, s)));
		}
		return (epsilon, minPts) -> {
			int[] labels = new int[vectors.size()];
			Arrays.fill(labels, -1);
			int label = 0;
			for (Cluster<Vector> c : new DBSCANClusterer<Vector>(epsilon, minPts - 1, new ManhattanDistance())
					.cluster(vectors)) {
				for (Vector v : c.getPoints()) {
					labels[v.sample()] = label;
				}
				label++;
			}
			return labels;
		};
	}

	@Override
	public String toString() {
		return "Commons Math 3.6.1, dense";
	}
}
