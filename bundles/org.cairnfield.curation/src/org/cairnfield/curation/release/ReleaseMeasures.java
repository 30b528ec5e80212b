package org.cairnfield.curation.release;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.measure.PackCost;
import org.cairnfield.curation.measure.TestRun;
import org.cairnfield.exchange.pack.DevicePack;
import org.cairnfield.exchange.pack.PackSettings;

/**
 * How a map positions, on the archive's test samples: plainly, by its split as published, and as a device does that has the
 * pack.
 *
 * @param test samples asked for
 * @param ways in that order; empty where there is no test sample
 */
public record ReleaseMeasures(int test, List<Way> ways) {

	/** Name of the way that a release is judged by. */
	public static final String RELEASED = "released";
	/** Name of the way that it is compared with. */
	public static final String PLAIN = TestRun.PLAIN;

	/** Of all that is drawn. */
	static final long SEED = 1;

	/**
	 * One way of matching, measured.
	 *
	 * @param name "plain", "plain-3w", "split", "split+approved", "released"; of an earlier release "release 1.0.0"
	 * @param how  the same for a person
	 * @param run  of all test samples
	 * @param mean 95 % interval of the mean error, metres
	 * @param bytes that a device reads a query, mean; see {@link PackCost}
	 */
	public record Way(String name, String how, TestRun run, Interval mean, double bytes) {

		/** Errors of all test samples. */
		public PositionErrors errors() {
			return run.errors();
		}

		/** Fingerprints compared a query, mean. */
		public double comparisons() {
			return run.comparisons();
		}
	}

	/** Measures one map; no ways where the map or the test has no sample. */
	public static ReleaseMeasures of(ReleasedMap released, RadioMap test, PackSettings settings, Workers workers) {
		if (test.size() == 0 || released.map().size() == 0) {
			return new ReleaseMeasures(test.size(), List.of());
		}
		Signals signals = Signals.of(released.map());
		Neighbours neighbours = new Neighbours(signals);
		double all = PackCost.plain(released.map());
		List<Way> ways = new ArrayList<>();
		ways.add(way(PLAIN, TestRun.HOW_PLAIN, run(TestRun.plain(neighbours), test, test, workers), all));
		ways.add(way(TestRun.PLAIN_3W, TestRun.HOW_PLAIN_3W, run(TestRun.plainWeighted(neighbours), test, test, workers), all));
		if (!released.splits().isEmpty()) {
			ways.add(split(TestRun.SPLIT, TestRun.HOW_SPLIT, signals, released.before(), test, workers));
			ways.add(split("split+approved", "the same, with the noise that reviewers approved", signals, released.labels(), test, workers));
		}
		ways.add(released(released, test, settings, workers));
		return new ReleaseMeasures(test.size(), List.copyOf(ways));
	}

	/** The last of them alone, for a map to compare with. */
	public static Way released(ReleasedMap released, RadioMap test, PackSettings settings, Workers workers) {
		DevicePack pack = released.pack(settings);
		TestRun run = run(pack.matcher(), pack.packed().queries(test), test, workers);
		return way(RELEASED, settings.cellProbes() + " nearest clusters, " + settings.voting() + ", as the device pack has it", run,
				PackCost.split(pack.split(), run.comparisons()));
	}

	private static Way split(String name, String how, Signals signals, int[] labels, RadioMap test, Workers workers) {
		SplitMap split = TestRun.clusters(signals, new Clustering(labels, null));
		TestRun run = run(TestRun.split(split), test, test, workers);
		return way(name, how, run, PackCost.split(split, run.comparisons()));
	}

	private static TestRun run(Matcher matcher, RadioMap queries, RadioMap test, Workers workers) {
		workers.checkCancelled();
		return TestRun.of(matcher, matcher.signals().align(queries), test, workers);
	}

	private static Way way(String name, String how, TestRun run, double bytes) {
		return new Way(name, how, run, run.mean(SEED), bytes);
	}

	/** The last of a map that was released, by its version. */
	static Way earlier(ReleasedState release, ReleasedMap map, RadioMap test, Workers workers) {
		Way way = released(map, test, release.manifest().settings(), workers);
		return new Way("release " + release.version(), way.how, way.run, way.mean, way.bytes);
	}

	/** The way of a name; null where it was not measured. */
	public Way way(String name) {
		return ways.stream().filter(w -> w.name().equals(name)).findFirst().orElse(null);
	}

	/** Mean error as released over plain; NaN where not measured. */
	public double errorToPlain() {
		return ways.isEmpty() ? Double.NaN : way(RELEASED).errors().meanMetres() / way(PLAIN).errors().meanMetres();
	}

	/** Fingerprints compared as released over plain; NaN where not measured. */
	public double costToPlain() {
		return ways.isEmpty() ? Double.NaN : way(RELEASED).comparisons() / way(PLAIN).comparisons();
	}

	/** Share of the test samples that a device puts on the right floor of the right site; NaN where not measured. */
	public double floorHitRate() {
		return ways.isEmpty() ? Double.NaN : (double) way(RELEASED).errors().siteAndFloorHits() / test;
	}
}
