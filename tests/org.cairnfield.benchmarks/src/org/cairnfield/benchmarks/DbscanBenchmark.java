package org.cairnfield.benchmarks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.task.Workers;

/**
 * DBSCAN against Commons Math and ELKI: the same samples, city-block distance of positive values, ε and minPts.
 * Cairnfield's time includes making the lists that distances need; the peers get their vectors ready-made.
 */
final class DbscanBenchmark implements Benchmark {

	private static final double NOISE_SHARE = 0.15;
	private static final double SHORT_SECONDS = 10;
	private static final int WARM_UP_SAMPLES = 1000;

	@Override
	public void run(Harness harness) throws Exception {
		for (CampusSize size : List.of(Maps.FEW, Maps.MANY)) {
			compare(harness, size, harness.quick() ? 5000 : 20_000);
		}
	}

	private static void compare(Harness harness, CampusSize size, int samples) throws Exception {
		RadioMap map = harness.maps().of(size, samples);
		Workers both = harness.workers(Machine.cores());
		Signals signals = Signals.of(map);
		double epsilon = Densities.epsilon(signals, NOISE_SHARE, both);
		Subject<Clustering> wide = new Subject<>("Cairnfield, " + Machine.cores() + " threads",
				() -> Dbscan.cluster(Signals.of(map), epsilon, Densities.MIN_PTS, both));
		Subject<Clustering> single = new Subject<>("Cairnfield, 1 thread",
				() -> Dbscan.cluster(Signals.of(map), epsilon, Densities.MIN_PTS, Workers.inline()));
		harness.measure(5, List.of(wide, single));

		RadioMap few = map.where(s -> s % (map.size() / WARM_UP_SAMPLES) == 0);
		List<Subject<int[]>> peers = new ArrayList<>();
		for (Peer peer : Peer.all(harness.quick())) {
			peer.prepare(Signals.of(few)).labels(epsilon, Densities.MIN_PTS);
			Peer.Prepared prepared = peer.prepare(signals);
			Subject<int[]> subject = new Subject<>(peer.toString(), () -> prepared.labels(epsilon, Densities.MIN_PTS));
			harness.round(1, List.of(subject));
			if (subject.wall() < SHORT_SECONDS) { // the first may still have been warming up
				subject.forgetRuns();
				harness.round(3, List.of(subject));
			}
			peers.add(subject);
			harness.say("  done: %s, %.1f s", subject.name(), subject.wall()); // some take minutes
		}

		String data = Maps.describe(map);
		List<Subject<?>> all = new ArrayList<>(List.of(wide, single));
		all.addAll(peers);
		harness.times(data, all, wide);
		Clustering found = wide.result();
		harness.say("  ε %.0f, minPts %d: %d clusters, %.2f %% noise", epsilon, Densities.MIN_PTS, found.clusters(),
				100 * found.noiseShare());
		for (Subject<int[]> peer : peers) {
			harness.agree("noise and partition of core samples of " + peer.name(),
					Partitions.same(found, peer.result()));
		}
		harness.agree("1 thread and more, every label", Partitions.identical(found, single.result()));
		harness.say("  the fastest peer beside Cairnfield");
		for (String form : List.of("dense", "sparse")) {
			List<Subject<int[]>> alike = peers.stream().filter(p -> p.name().contains(form)).toList();
			Subject<int[]> scan = fastest(alike.stream().filter(p -> !p.name().endsWith("tree")).toList());
			harness.figure(data, form + ", no index: time, " + Machine.cores() + " threads", "×",
					scan.wall() / wide.wall(), "≥ 60");
			harness.figure(data, form + ", no index: CPU, 1 thread", "×", scan.cpu() / single.cpu(), "");
			Subject<int[]> any = fastest(alike);
			harness.figure(data, form + ", any index: time, " + Machine.cores() + " threads", "×",
					any.wall() / wide.wall(), "≥ 60");
			harness.figure(data, form + ", any index: CPU, 1 thread", "×", any.cpu() / single.cpu(), "");
		}
		Heap.report(harness, data, "dbscan", harness.maps().file(size, samples), epsilon, found.noise());
	}

	private static Subject<int[]> fastest(List<Subject<int[]>> peers) {
		return peers.stream().min(Comparator.comparing(Subject::cpu)).orElseThrow();
	}
}
