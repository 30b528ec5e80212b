package org.cairnfield.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.task.Workers;

/**
 * An archive of eight sites out of each other's reach beside one site with as many samples and access points, and
 * beside its own sites each by itself: together they should cost about as much as one by one.
 */
final class ArchiveBenchmark implements Benchmark {

	private static final int SITES = 8;
	private static final CampusSize ARCHIVE = CampusSize.of(SITES, 2, 520).apart();
	private static final CampusSize ONE_SITE = CampusSize.of(1, 16, 520);

	@Override
	public void run(Harness harness) throws Exception {
		for (int n : harness.quick() ? new int[] { 10_000 } : new int[] { 20_000, 40_000 }) {
			Task archive = Task.of(harness, harness.maps().of(ARCHIVE, n));
			Task large = Task.of(harness, harness.maps().of(ONE_SITE, n));
			List<Task> alone = new ArrayList<>();
			for (int site = 0; site < SITES; site++) {
				alone.add(Task.of(archive.signals.map().atSite(site), archive.epsilon));
			}
			harness.say("%n%d components, the largest of %d samples", archive.signals.components().count(),
					archive.signals.components().largest());
			String data = String.format(Locale.ROOT, "%,d samples × 520 access points, 15 %% noise, 1 thread", n);
			compare(harness, data, "DBSCAN", archive, alone, large, Task::cluster);
			compare(harness, data, "proposals", archive, alone, large, Task::place);
		}
	}

	private static void compare(Harness harness, String data, String what, Task archive, List<Task> alone, Task large,
			Function<Task, Object> work) {
		Subject<Object> whole = new Subject<>(what + ", archive of " + SITES + " sites", () -> work.apply(archive));
		Subject<Object> parts = new Subject<>(what + ", the same sites each by itself",
				() -> alone.stream().map(work).toList());
		Subject<Object> single = new Subject<>(what + ", one large site", () -> work.apply(large));
		List<Subject<Object>> subjects = List.of(whole, parts, single);
		harness.measure(archive.signals.size() <= 20_000 ? 3 : 1, subjects);
		harness.times(data, subjects, whole);
		harness.figure(data, what + ": archive / sites each by itself, CPU", "×", whole.cpu() / parts.cpu(), "about 1");
		harness.figure(data, what + ": one large site / archive, CPU", "×", single.cpu() / whole.cpu(), "");
	}

	private record Task(Signals signals, double epsilon, Clustering clustering) {

		static Task of(Harness harness, RadioMap map) {
			return of(map, Densities.epsilon(Signals.of(map), 0.15, harness.workers(Machine.cores())));
		}

		static Task of(RadioMap map, double epsilon) {
			Signals signals = Signals.of(map);
			return new Task(signals, epsilon, Dbscan.cluster(signals, epsilon, Densities.MIN_PTS, Workers.inline()));
		}

		Clustering cluster() {
			return Dbscan.cluster(signals, epsilon, Densities.MIN_PTS, Workers.inline());
		}

		List<NoisePlacement> place() {
			return NoiseCorrelation.place(signals, clustering, Workers.inline());
		}
	}
}
