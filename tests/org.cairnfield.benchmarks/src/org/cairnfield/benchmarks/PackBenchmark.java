package org.cairnfield.benchmarks;

import java.util.List;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.choose.Splitting;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.match.PlainMatcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.pack.DevicePack;
import org.cairnfield.exchange.pack.PackAddresses;
import org.cairnfield.exchange.pack.PackReader;
import org.cairnfield.exchange.pack.PackSettings;

/** What a device pays: bytes a sample, and the time of a query by the pack's own reader beside plain matching. */
final class PackBenchmark implements Benchmark {

	private static final int QUERIES = 2000;
	private static final long SEED = 1;

	@Override
	public void run(Harness harness) throws Exception {
		RadioMap map = harness.maps().of(Maps.MANY, harness.quick() ? 5000 : 20_000);
		RadioMap asked = harness.maps().queries(Maps.MANY, QUERIES);
		Signals signals = Signals.of(map);
		Workers workers = harness.workers(Machine.cores());
		Splitting splitting = AutomaticChoice.choose(signals, SEED, workers).splitting();
		DevicePack pack = DevicePack.of(map, splitting.clustering().labels(), false, PackSettings.USUAL);
		byte[] bytes = pack.bytes(null, "");
		PackReader reader = new PackReader(bytes);
		RadioMap packed = pack.packed().queries(asked);
		Scans scans = Scans.of(asked);

		Subject<Estimates> plain = new Subject<>("plain, nearest",
				() -> Estimates.of(new PlainMatcher(new Neighbours(signals), Voting.NEAREST), signals.align(asked), Workers.inline()));
		Subject<Estimates> split = new Subject<>("split as packed, in the workbench",
				() -> Estimates.of(pack.matcher(), pack.matcher().signals().align(packed), Workers.inline()));
		Subject<PackReader.Position[]> device = new Subject<>("the pack's reader", () -> scans.locate(reader));
		List<Subject<?>> all = List.of(plain, split, device);
		harness.measure(1, all);
		all.forEach(Subject::forgetRuns); // more warming up, for a pass is short
		harness.round(harness.quick() ? 5 : 9, all);

		String data = Maps.describe(map) + ", " + asked.size() + " queries, 1 thread";
		harness.times(data, all, plain);
		harness.say("  %s; %.1f %% of the comparisons of plain", splitting,
				100 * split.result().meanComparisons() / plain.result().meanComparisons());
		harness.figure(data, "bytes a sample in the pack", "B", (double) bytes.length / pack.samples(), "");
		harness.figure(data, "readings a sample", "", (double) map.readingCount() / map.size(), "");
		harness.figure(data, "the pack's reader, a query, CPU", "µs", device.cpu() / asked.size() * 1e6, "");
		harness.figure(data, "the pack's reader, CPU / plain", "×", device.cpu() / plain.cpu(), "");
		boolean same = true;
		for (int q = 0; q < asked.size(); q++) {
			PackReader.Position found = device.result()[q];
			same &= found.xMetres() == split.result().x(q) && found.yMetres() == split.result().y(q)
					&& found.floor() == split.result().floor(q);
		}
		harness.agree("positions of the pack's reader and of the workbench, all " + asked.size(), same);
	}

	/** What a device hears, as it hands it over. */
	private record Scans(long[][] addresses, int[][] levels) {

		static Scans of(RadioMap map) {
			long[][] addresses = new long[map.size()][];
			int[][] levels = new int[map.size()][];
			for (int s = 0; s < map.size(); s++) {
				int first = map.firstReading(s);
				addresses[s] = new long[map.heard(s)];
				levels[s] = new int[map.heard(s)];
				for (int i = 0; i < levels[s].length; i++) {
					addresses[s][i] = PackAddresses.of(map.accessPoints().get(map.accessPoint(first + i)));
					levels[s][i] = map.rssiDbm(first + i);
				}
			}
			return new Scans(addresses, levels);
		}

		PackReader.Position[] locate(PackReader reader) {
			PackReader.Position[] found = new PackReader.Position[levels.length];
			for (int s = 0; s < levels.length; s++) {
				found[s] = reader.locate(addresses[s], levels[s]);
			}
			return found;
		}
	}
}
