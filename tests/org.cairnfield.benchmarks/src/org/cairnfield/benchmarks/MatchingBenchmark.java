package org.cairnfield.benchmarks;

import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Nearest;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.match.PlainMatcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.task.Workers;

/** Estimating a position on one core: against every sample, and with the split that the automatic choice makes. */
final class MatchingBenchmark implements Benchmark {

	private static final int QUERIES = 2000;
	private static final int CHECKED = 100;

	@Override
	public void run(Harness harness) throws Exception {
		for (CampusSize size : List.of(Maps.MANY, Maps.FEW)) {
			match(harness, size, harness.quick() ? 5000 : 20_000);
		}
	}

	private static void match(Harness harness, CampusSize size, int samples) throws Exception {
		RadioMap map = harness.maps().of(size, samples);
		RadioMap asked = harness.maps().queries(size, QUERIES);
		Signals signals = Signals.of(map);
		SignalRows queries = signals.align(asked);
		Subject<AutomaticChoice.Choice> choosing = new Subject<>("automatic choice, " + Machine.cores() + " threads",
				() -> AutomaticChoice.choose(signals, ChosenSplits.SEED, harness.workers(Machine.cores())));
		harness.round(1, List.of(choosing));
		AutomaticChoice.Choice choice = choosing.result();
		AutomaticChoice.Tried best = choice.best();
		Matcher chosen = best.search().matcher(ChosenSplits.of(signals, best, harness.workers(Machine.cores())));
		Neighbours neighbours = new Neighbours(signals);
		Subject<Estimates> plain = estimating("plain, nearest", new PlainMatcher(neighbours, Voting.NEAREST), queries);
		Subject<Estimates> three = estimating("plain, 3 weighted", new PlainMatcher(neighbours, Voting.THREE_WEIGHTED),
				queries);
		Subject<Estimates> split = estimating("split", chosen, queries);
		List<Subject<Estimates>> all = List.of(plain, three, split);
		harness.measure(1, all);
		all.forEach(Subject::forgetRuns); // more warming up, for a pass is short
		harness.round(harness.quick() ? 5 : 9, all);

		String data = Maps.describe(map) + ", " + asked.size() + " queries, 1 thread";
		harness.times(data, all, plain);
		harness.times(Maps.describe(map), List.of(choosing), choosing);
		harness.say("  chosen: ε %.0f, minPts %d; %s; of %d tried", best.epsilon(), best.minPts(), best.search(),
				choice.tried().size());
		for (Subject<Estimates> s : List.of(plain, split)) {
			String aim = s == plain ? "≤ 50" : "≤ 10";
			harness.figure(data, s.name() + ", a query, time", "µs", s.wall() / asked.size() * 1e6, aim);
			harness.figure(data, s.name() + ", a query, CPU", "µs", s.cpu() / asked.size() * 1e6, aim);
		}
		harness.figure(data, "split, comparisons of plain", "%",
				100 * split.result().meanComparisons() / plain.result().meanComparisons(), "≤ 6");
		double error = meanError(plain.result(), asked);
		harness.figure(data, "plain, mean error", "m", error, "");
		harness.figure(data, "plain 3 weighted, mean error / plain", "×", meanError(three.result(), asked) / error, "");
		harness.figure(data, "split, mean error / plain", "×", meanError(split.result(), asked) / error, "≤ 1");
		check(harness, signals, queries, chosen);
	}

	private static Subject<Estimates> estimating(String name, Matcher matcher, SignalRows queries) {
		return new Subject<>(name, () -> Estimates.of(matcher, queries, Workers.inline()));
	}

	private static double meanError(Estimates found, RadioMap asked) {
		double sum = 0;
		for (int q = 0; q < asked.size(); q++) {
			sum += Math.hypot(found.x(q) - asked.x(q), found.y(q) - asked.y(q));
		}
		return sum / asked.size();
	}

	/** Distances found, against dense vectors; the split's must be true ones, though not always the least. */
	private static void check(Harness harness, Signals signals, SignalRows queries, Matcher split) {
		double[][] vectors = new double[signals.size()][];
		Arrays.setAll(vectors, s -> Peer.dense(signals, s));
		Neighbours.Search search = new Neighbours(signals).search();
		Matcher.Session session = split.session();
		boolean plainAgrees = true;
		boolean splitAgrees = true;
		for (int q = 0; q < CHECKED; q++) {
			double[] query = new double[signals.map().accessPointCount()];
			for (int k = queries.start(q); k < queries.end(q); k++) {
				query[queries.column(k)] = signals.value(queries.step(k));
			}
			double least = Arrays.stream(vectors).mapToDouble(v -> Dense.cityBlock(query, v)).min().orElseThrow();
			plainAgrees &= search.of(queries, q, 1).distance(0) == least;
			Nearest found = session.nearest(queries, q);
			splitAgrees &= found.distance(0) == Dense.cityBlock(query, vectors[found.sample(0)]);
		}
		harness.agree(CHECKED + " least distances of plain with those from dense vectors", plainAgrees);
		harness.agree(CHECKED + " distances of the split with those from dense vectors", splitAgrees);
	}
}
