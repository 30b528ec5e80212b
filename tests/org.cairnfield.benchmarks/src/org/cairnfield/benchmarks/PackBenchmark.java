package org.cairnfield.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cairnfield.core.choose.AutomaticChoice;
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

/**
 * What a device pays: bytes a sample, and the time of a query by the pack's own reader beside plain matching; for the best
 * search in one level and the best one in two of those that the automatic choice tried.
 */
final class PackBenchmark implements Benchmark {

	private static final int QUERIES = 2000;

	/** A pack, and the two ways of asking it. */
	private record Packed(AutomaticChoice.Tried tried, DevicePack pack, byte[] bytes, Subject<Estimates> split,
			Subject<PackReader.Position[]> device) {

		static Packed of(AutomaticChoice.Tried tried, Signals signals, RadioMap asked, Workers workers) {
			DevicePack pack = DevicePack.of(ChosenSplits.of(signals, tried, workers),
					new PackSettings(1, tried.search()));
			byte[] bytes = pack.bytes(null, "");
			PackReader reader = new PackReader(bytes);
			RadioMap queries = pack.packed().queries(asked);
			Scans scans = Scans.of(asked);
			String level = tried.search().twoLevels() ? "two levels" : "one level";
			return new Packed(tried, pack, bytes,
					new Subject<>("split as packed, in the workbench, " + level,
							() -> Estimates.of(pack.matcher(), pack.matcher().signals().align(queries),
									Workers.inline())),
					new Subject<>("the pack's reader, " + level, () -> scans.locate(reader)));
		}
	}

	@Override
	public void run(Harness harness) throws Exception {
		RadioMap map = harness.maps().of(Maps.MANY, harness.quick() ? 5000 : 20_000);
		RadioMap asked = harness.maps().queries(Maps.MANY, QUERIES);
		Signals signals = Signals.of(map);
		Workers workers = harness.workers(Machine.cores());
		AutomaticChoice.Choice choice = AutomaticChoice.choose(signals, ChosenSplits.SEED, workers);
		List<Packed> packs = Stream.of(false, true)
				.map(two -> choice.tried().stream().filter(t -> t.search().twoLevels() == two).findFirst()
						.orElseThrow())
				.map(tried -> Packed.of(tried, signals, asked, workers)).toList();

		Subject<Estimates> plain = new Subject<>("plain, nearest",
				() -> Estimates.of(new PlainMatcher(new Neighbours(signals), Voting.NEAREST), signals.align(asked),
						Workers.inline()));
		List<Subject<?>> all = new ArrayList<>(List.of(plain));
		packs.forEach(p -> all.addAll(List.of(p.split, p.device)));
		harness.measure(1, all);
		all.forEach(Subject::forgetRuns); // more warming up, for a pass is short
		harness.round(harness.quick() ? 5 : 9, all);

		String data = Maps.describe(map) + ", " + asked.size() + " queries, 1 thread";
		harness.times(data, all, plain);
		harness.figure(data, "readings a sample", "", (double) map.readingCount() / map.size(), "");
		for (Packed p : packs) {
			report(harness, data, p, plain, choice.best() == p.tried);
		}
	}

	private static void report(Harness harness, String data, Packed p, Subject<Estimates> plain, boolean chosen) {
		RadioMap packed = p.pack.packed().map();
		double comparisons = p.split.result().meanComparisons();
		harness.say("  %sε %.0f, minPts %d; %s; %d cells, %d groups; %.1f %% of the comparisons of plain",
				chosen ? "chosen: " : "",
				p.tried.epsilon(), p.tried.minPts(), p.tried.search(), p.pack.split().cells(), p.pack.split().groups(),
				100 * comparisons / plain.result().meanComparisons());
		double readBytes = DevicePack.queryBytes(p.pack.split(), p.tried.search(), comparisons);
		double allBytes = IntStream.range(0, packed.size()).mapToLong(s -> DevicePack.sampleBytes(packed, s)).sum();
		harness.figure(data, p.device.name() + ", bytes a sample in the pack", "B",
				(double) p.bytes.length / p.pack.samples(), "");
		harness.figure(data, p.device.name() + ", bytes reckoned to be read for a query", "kB", readBytes / 1000, "");
		harness.figure(data, p.device.name() + ", bytes read / plain", "×", readBytes / allBytes, "");
		harness.figure(data, p.device.name() + ", a query, CPU", "µs", p.device.cpu() / p.device.result().length * 1e6,
				"");
		harness.figure(data, p.device.name() + ", CPU / plain", "×", p.device.cpu() / plain.cpu(), "");
		boolean same = true;
		for (int q = 0; q < p.device.result().length; q++) {
			PackReader.Position found = p.device.result()[q];
			same &= found.xMetres() == p.split.result().x(q) && found.yMetres() == p.split.result().y(q)
					&& found.floor() == p.split.result().floor(q);
		}
		harness.agree("positions of " + p.device.name() + " and of the workbench, all " + p.device.result().length,
				same);
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
