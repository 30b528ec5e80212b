package org.cairnfield.benchmarks;

import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.task.Workers;

/** The k-distance curve beside one DBSCAN of the same map. */
final class CurveBenchmark implements Benchmark {

	private static final int CHECKED = 50;

	@Override
	public void run(Harness harness) throws Exception {
		for (CampusSize size : List.of(Maps.MANY, Maps.FEW)) {
			RadioMap map = harness.maps().of(size, harness.quick() ? 5000 : 20_000);
			Workers both = harness.workers(Machine.cores());
			Signals signals = Signals.of(map);
			double epsilon = Densities.epsilon(signals, 0.15, both);
			Subject<Clustering> dbscan = new Subject<>("DBSCAN, 15 % noise",
					() -> Dbscan.cluster(signals, epsilon, Densities.MIN_PTS, both));
			Subject<KDistances> curve = new Subject<>("k-distance curve, k = " + Densities.MIN_PTS,
					() -> KDistances.of(signals, both, Densities.MIN_PTS));
			harness.measure(5, List.of(dbscan, curve));
			String data = Maps.describe(map) + ", " + Machine.cores() + " threads";
			harness.times(data, List.of(dbscan, curve), dbscan);
			harness.figure(data, "curve / DBSCAN, time", "×", curve.wall() / dbscan.wall(), "≤ 1");
			harness.agree(CHECKED + " k-distances with those from dense vectors",
					check(signals, curve.result().bySample(Densities.MIN_PTS)));
		}
	}

	private static boolean check(Signals signals, double[] found) {
		double[][] vectors = new double[signals.size()][];
		Arrays.setAll(vectors, s -> Peer.dense(signals, s));
		for (int i = 0; i < CHECKED; i++) {
			double[] sample = vectors[i * (vectors.length / CHECKED)];
			double[] all = Arrays.stream(vectors).mapToDouble(v -> Dense.cityBlock(sample, v)).sorted().toArray();
			if (all[Densities.MIN_PTS] != found[i * (vectors.length / CHECKED)]) { // all[0] is the sample itself
				return false;
			}
		}
		return true;
	}
}
