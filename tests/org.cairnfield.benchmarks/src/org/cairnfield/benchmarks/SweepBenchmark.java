package org.cairnfield.benchmarks;

import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.cluster.Sweep;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.task.Workers;

/** DBSCAN for 8 ε × 3 minPts at once, beside one DBSCAN at the median ε and minPts. */
final class SweepBenchmark implements Benchmark {

	private static final double[] CURVE_SHARES = { 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9 };
	private static final int[] MIN_PTS = { 3, 5, 8 };

	@Override
	public void run(Harness harness) throws Exception {
		for (CampusSize size : List.of(Maps.MANY, Maps.FEW)) {
			RadioMap map = harness.maps().of(size, harness.quick() ? 5000 : 20_000);
			Workers both = harness.workers(Machine.cores());
			Signals signals = Signals.of(map);
			double[] curve = KDistances.of(signals, both, Densities.MIN_PTS).sorted(Densities.MIN_PTS);
			double[] epsilons = Arrays.stream(CURVE_SHARES).map(share -> curve[(int) (share * curve.length)]).toArray();
			Subject<Clustering> one = new Subject<>("one DBSCAN",
					() -> Dbscan.cluster(signals, epsilons[4], Densities.MIN_PTS, both));
			Subject<List<Sweep.Cell>> sweep = new Subject<>("sweep of 8 ε × 3 minPts",
					() -> Sweep.run(signals, epsilons, MIN_PTS, both));
			harness.measure(5, List.of(one, sweep));
			String data = Maps.describe(map) + ", " + Machine.cores() + " threads";
			harness.times(data, List.of(one, sweep), one);
			harness.figure(data, "sweep / one DBSCAN, time", "×", sweep.wall() / one.wall(), "≤ 3");
			harness.agree("every label of all 24 cells with a DBSCAN each", check(signals, sweep.result(), both));
		}
	}

	private static boolean check(Signals signals, List<Sweep.Cell> cells, Workers workers) {
		return cells.size() == CURVE_SHARES.length * MIN_PTS.length && cells.stream().allMatch(c -> Partitions
				.identical(c.clustering(), Dbscan.cluster(signals, c.epsilon(), c.minPts(), workers)));
	}
}
