package org.cairnfield.curation.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.pack.DevicePack;
import org.cairnfield.exchange.pack.PackLimitException;
import org.cairnfield.exchange.pack.PackSettings;
import org.cairnfield.model.values.Count;

/**
 * How a map positions, on test samples: plainly, by its split as published without and with approved samples, and as a device
 * does that has the pack. The same archive gives the same figures, whoever asks.
 *
 * @param test samples asked for
 * @param ways in that order; the two of a split only where there is one; empty where there is no test sample, or no map
 * @param timeRatios processor time of each way, by name, to that of plain matching, on one thread and warm; empty unless asked for
 */
public record Measures(int test, List<Way> ways, Map<String, Double> timeRatios) {

	/** Name of the way that a release is judged by. */
	public static final String RELEASED = "released";
	/** A split with what was approved. */
	public static final String APPROVED = "split+approved";

	/** Measures one map. */
	public static Measures of(ReleasedMap released, RadioMap test, PackRequest request, Workers workers) {
		return new Measuring(released, test, workers).all(request, false);
	}

	/** Likewise with match times, which differ from run to run. */
	public static Measures timed(ReleasedMap released, RadioMap test, PackRequest request, Workers workers) {
		return new Measuring(released, test, workers).all(request, true);
	}

	/**
	 * The last of them alone, for a map to compare with.
	 *
	 * @param plain what its ratios are to; null: itself
	 */
	public static Way released(ReleasedMap released, RadioMap test, PackSettings settings, Way plain, Workers workers) {
		return new Measuring(released, test, workers).released(settings, plain);
	}

	private static final class Measuring {
		private final ReleasedMap released;
		private final RadioMap test;
		private final Workers workers;
		private final List<Way> ways = new ArrayList<>();
		private final Map<String, MatchTimes.Subject> subjects = new LinkedHashMap<>();

		Measuring(ReleasedMap released, RadioMap test, Workers workers) {
			this.released = released;
			this.test = test;
			this.workers = workers;
		}

		Measures all(PackRequest request, boolean timed) {
			if (test.size() == 0 || released.map().size() == 0) {
				return new Measures(test.size(), List.of(), Map.of());
			}
			Neighbours neighbours = new Neighbours(released.signals());
			double bytes = PackCost.plain(released.map());
			Way plain = Way.of(TestRun.PLAIN, TestRun.HOW_PLAIN, run(TestRun.PLAIN, TestRun.plain(neighbours), test),
					bytes, null);
			ways.add(plain);
			ways.add(Way.of(TestRun.PLAIN_3W, TestRun.HOW_PLAIN_3W,
					run(TestRun.PLAIN_3W, TestRun.plainWeighted(neighbours), test), bytes, plain));
			if (!released.splits().isEmpty()) {
				ways.add(split(TestRun.SPLIT, TestRun.HOW_SPLIT, new Clustering(released.before(), null), new int[0],
						plain));
				int[] pool = released.pool();
				String approved = Count.of(released.joined(), "approved sample");
				ways.add(split(APPROVED,
						pool.length == 0 ? Words.bind(Messages.Measures_approvedInClusters, approved)
								: Words.bind(Messages.Measures_approvedInClustersAndPool, approved, pool.length),
						released.clustering(), pool, plain));
			}
			ways.add(released(request.settings(released), plain));
			return new Measures(test.size(), List.copyOf(ways),
					timed ? MatchTimes.ratios(subjects, TestRun.PLAIN, workers) : Map.of());
		}

		/** @param plain null where it was not measured */
		Way released(PackSettings settings, Way plain) {
			SplitMap split = released.searched(settings.search(), workers);
			try {
				DevicePack pack = DevicePack.of(split, settings);
				TestRun run = run(RELEASED, pack.matcher(), pack.packed().queries(test));
				return Way.of(RELEASED, Words.bind(Messages.Measures_asTheDevicePackHas, settings.search()), run,
						PackCost.split(pack.split(), settings.search(), run.comparisons()), plain);
			} catch (PackLimitException e) {
				TestRun run = run(RELEASED, settings.search().matcher(split), test);
				return Way.of(RELEASED,
						Words.bind(Messages.Measures_noDevicePackHoldsIt, settings.search(), e.getMessage()), run,
						PackCost.split(split, settings.search(), run.comparisons()), plain);
			}
		}

		private Way split(String name, String how, Clustering clusters, int[] pool, Way plain) {
			SplitMap split = TestRun.clusters(released.signals(), clusters, pool);
			TestRun run = run(name, TestRun.split(split), test);
			return Way.of(name, how, run, PackCost.split(split, Search.PUBLISHED, run.comparisons()), plain);
		}

		private TestRun run(String name, Matcher matcher, RadioMap asked) {
			workers.checkCancelled();
			SignalRows queries = matcher.signals().align(asked);
			subjects.put(name, MatchTimes.of(matcher, queries));
			return TestRun.of(matcher, queries, test, workers);
		}
	}

	/** The way of a name; null where it was not measured. */
	public Way way(String name) {
		return ways.stream().filter(w -> w.name().equals(name)).findFirst().orElse(null);
	}

	/** Mean error as released over plain; NaN where not measured. */
	public double errorToPlain() {
		return ways.isEmpty() ? Double.NaN : way(RELEASED).ratio();
	}

	/** Fingerprints compared as released over plain; NaN where not measured. */
	public double costToPlain() {
		return ways.isEmpty() ? Double.NaN : way(RELEASED).comparisonShare();
	}

	/** Share of the test samples that a device puts on the right floor of the right site; NaN where not measured. */
	public double floorHitRate() {
		return ways.isEmpty() ? Double.NaN : (double) way(RELEASED).errors().siteAndFloorHits() / test;
	}
}
