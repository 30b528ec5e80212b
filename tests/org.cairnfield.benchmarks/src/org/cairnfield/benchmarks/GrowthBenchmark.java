package org.cairnfield.benchmarks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.match.PlainMatcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Workers;

/** How times grow when the same campus is surveyed ever more densely; CPU time, as it is one thread's. */
final class GrowthBenchmark implements Benchmark {

	private static final int QUERIES = 1000;

	@Override
	public void run(Harness harness) throws Exception {
		int[] sizes = harness.quick() ? new int[] { 2500, 5000, 10_000 } : new int[] { 5000, 10_000, 20_000, 40_000 };
		Map<String, SimpleRegression> growth = new LinkedHashMap<>();
		for (int n : sizes) {
			RadioMap map = harness.maps().of(Maps.MANY, n);
			List<Subject<?>> subjects = subjects(harness, map);
			harness.measure(n <= 10_000 ? 3 : 1, subjects);
			harness.times(Maps.describe(map) + ", 15 % noise, 1 thread", subjects, subjects.get(0));
			for (Subject<?> s : subjects) {
				growth.computeIfAbsent(s.name(), name -> new SimpleRegression()).addData(Math.log(n),
						Math.log(s.cpu()));
			}
		}
		harness.say("%nexponent of growth, fitted from %d to %d samples", sizes[0], sizes[sizes.length - 1]);
		growth.forEach((name, line) -> harness.figure("growth", name, "exponent", line.getSlope(), ""));
	}

	private static List<Subject<?>> subjects(Harness harness, RadioMap map) {
		Workers one = Workers.inline();
		Signals signals = Signals.of(map);
		double epsilon = Densities.epsilon(signals, 0.15, harness.workers(Machine.cores()));
		Clustering clustering = Dbscan.cluster(signals, epsilon, Densities.MIN_PTS, one);
		SignalRows queries = signals.align(harness.maps().queries(Maps.MANY, QUERIES));
		PlainMatcher plain = new PlainMatcher(new Neighbours(signals), Voting.NEAREST);
		List<Subject<?>> subjects = new ArrayList<>();
		subjects.add(new Subject<>("DBSCAN", () -> Dbscan.cluster(signals, epsilon, Densities.MIN_PTS, one)));
		subjects.add(new Subject<>("k-distance curve", () -> KDistances.of(signals, one, Densities.MIN_PTS)));
		subjects.add(new Subject<>("proposals", () -> NoiseCorrelation.place(signals, clustering, one)));
		subjects.add(new Subject<>(QUERIES + " plain queries", () -> Estimates.of(plain, queries, one)));
		return subjects;
	}
}
