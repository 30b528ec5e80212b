package org.cairnfield.benchmarks;

import java.util.List;
import java.util.Locale;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.task.Workers;

/** Proposals for all noise of a map, and the same by the whole matrix on maps that it fits. */
final class CorrelationBenchmark implements Benchmark {

	private static final double EXACT = 1e-9;

	@Override
	public void run(Harness harness) throws Exception {
		int samples = harness.quick() ? 5000 : 20_000;
		for (CampusSize size : List.of(Maps.MANY, Maps.FEW)) {
			for (double noiseShare : new double[] { 0.15, 0.35 }) {
				whole(harness, size, samples, noiseShare);
			}
		}
		double last = 0;
		int[] bruteSizes = harness.quick() ? new int[] { 2500, 5000 } : new int[] { 5000, 10_000 };
		for (int n : bruteSizes) {
			last = brute(harness, n);
		}
		int largest = bruteSizes[bruteSizes.length - 1];
		// n² rows' products of length n; and n² doubles, which no array of arrays of this heap would hold
		harness.figure("EXTRAPOLATED from " + largest + " by n³", "whole matrix at 20,000 samples, 1 thread", "seconds",
				last * Math.pow(20_000.0 / largest, 3), "");
	}

	private static void whole(Harness harness, CampusSize size, int samples, double noiseShare) throws Exception {
		RadioMap map = harness.maps().of(size, samples);
		Workers both = harness.workers(Machine.cores());
		Signals signals = Signals.of(map);
		double epsilon = Densities.epsilon(signals, noiseShare, both);
		Clustering clustering = Dbscan.cluster(signals, epsilon, Densities.MIN_PTS, both);
		Subject<List<NoisePlacement>> wide = new Subject<>("proposals, " + Machine.cores() + " threads",
				() -> NoiseCorrelation.place(signals, clustering, both));
		Subject<List<NoisePlacement>> single = new Subject<>("proposals, 1 thread",
				() -> NoiseCorrelation.place(signals, clustering, Workers.inline()));
		harness.measure(3, List.of(wide, single));
		String data = Maps.describe(map) + String.format(Locale.ROOT, ", %.0f %% noise", 100 * noiseShare);
		harness.times(data, List.of(wide, single), wide);
		harness.say("  %d noise samples, %d clusters (aim: ≤ 10 s)", clustering.noise(), clustering.clusters());
		harness.agree("1 thread and more, every placement", wide.result().equals(single.result()));
		Heap.report(harness, data, "correlation", harness.maps().file(size, samples), epsilon, clustering.noise());
	}

	private static double brute(Harness harness, int samples) throws Exception {
		RadioMap map = harness.maps().of(Maps.MANY, samples);
		Signals signals = Signals.of(map);
		Workers both = harness.workers(Machine.cores());
		Clustering clustering = Dbscan.cluster(signals, Densities.epsilon(signals, 0.15, both), Densities.MIN_PTS,
				both);
		Subject<List<NoisePlacement>> ours = new Subject<>("proposals, 1 thread",
				() -> NoiseCorrelation.place(signals, clustering, Workers.inline()));
		Subject<List<BruteCorrelation.Best>> brute = new Subject<>("whole matrix, 1 thread",
				() -> BruteCorrelation.of(signals, clustering));
		harness.measure(3, List.of(ours));
		harness.round(1, List.of(brute));
		String data = Maps.describe(map) + ", 15 % noise";
		harness.times(data, List.of(ours, brute), ours);
		harness.figure(data, "whole matrix / proposals, time, 1 thread each", "×", brute.wall() / ours.wall(), "≥ 20");
		double off = 0;
		boolean same = ours.result().size() == brute.result().size();
		for (int i = 0; same && i < ours.result().size(); i++) {
			NoisePlacement p = ours.result().get(i);
			BruteCorrelation.Best b = brute.result().get(i);
			off = Math.max(off, Math.max(Math.abs(p.strength() - b.r()), Math.abs(p.runnerUpR() - b.runnerUpR())));
			same = p.sample() == b.sample() && (p.cluster() == b.cluster() || b.r() - b.runnerUpR() < EXACT);
		}
		harness.figure(data, "largest difference of r", "", off, "≤ 1e-9");
		harness.agree("cluster, r and runner-up's r of every noise sample", same && off <= EXACT);
		return brute.wall();
	}
}
