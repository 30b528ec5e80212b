package org.cairnfield.curation.release;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.match.PlainMatcher;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.SplitMatcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.core.measure.Positions;
import org.cairnfield.core.stats.Bootstrap;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.core.task.Workers;
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
	public static final String PLAIN = "plain";

	private static final long SEED = 1;

	/**
	 * One way of matching, measured.
	 *
	 * @param name        "plain", "plain-3w", "split", "split+approved", "released"
	 * @param how         the same for a person
	 * @param errors      of all test samples
	 * @param mean        95 % interval of the mean error, metres
	 * @param comparisons fingerprints compared a query, mean
	 */
	public record Way(String name, String how, PositionErrors errors, Interval mean, double comparisons) {
	}

	/** Measures one map; no ways where the map or the test has no sample. */
	public static ReleaseMeasures of(ReleasedMap released, RadioMap test, PackSettings settings, Workers workers) {
		if (test.size() == 0 || released.map().size() == 0) {
			return new ReleaseMeasures(test.size(), List.of());
		}
		Signals signals = Signals.of(released.map());
		Neighbours neighbours = new Neighbours(signals);
		List<Way> ways = new ArrayList<>();
		ways.add(way(PLAIN, "nearest sample of the whole map", new PlainMatcher(neighbours, Voting.NEAREST), test, test, workers));
		ways.add(way("plain-3w", "three nearest samples of the whole map, weighted", new PlainMatcher(neighbours, Voting.THREE_WEIGHTED),
				test, test, workers));
		if (!released.splits().isEmpty()) {
			ways.add(way("split", "nearest cluster, nearest sample in it; noise left out", nearest(signals, released.before()), test, test,
					workers));
			ways.add(way("split+approved", "the same, with the noise that reviewers approved", nearest(signals, released.labels()), test,
					test, workers));
		}
		ways.add(released(released, test, settings, workers));
		return new ReleaseMeasures(test.size(), List.copyOf(ways));
	}

	/** The last of them alone, for a map to compare with. */
	public static Way released(ReleasedMap released, RadioMap test, PackSettings settings, Workers workers) {
		DevicePack pack = released.pack(settings);
		String how = settings.cellProbes() + " nearest clusters, " + settings.voting() + ", as the device pack has it";
		return way(RELEASED, how, pack.matcher(), pack.packed().queries(test), test, workers);
	}

	private static Matcher nearest(Signals signals, int[] labels) {
		return new SplitMatcher(SplitMap.of(signals, new Clustering(labels, null), Centroids.Kind.MEAN, false), 1, 1, false,
				Voting.NEAREST);
	}

	private static Way way(String name, String how, Matcher matcher, RadioMap queries, RadioMap test, Workers workers) {
		workers.checkCancelled();
		Estimates estimates = Estimates.of(matcher, matcher.signals().align(queries), workers);
		PositionErrors errors = PositionErrors.of(estimates.positions(), truth(test, matcher.signals().map()));
		return new Way(name, how, errors, Bootstrap.seeded(SEED).mean(errors.errorsMetres()), estimates.meanComparisons());
	}

	/** True positions, sites numbered as in the searched map. */
	private static Positions truth(RadioMap test, RadioMap searched) {
		int n = test.size();
		double[] x = new double[n];
		double[] y = new double[n];
		int[] floor = new int[n];
		int[] site = new int[n];
		for (int s = 0; s < n; s++) {
			x[s] = test.x(s);
			y[s] = test.y(s);
			floor[s] = test.floor(s);
			site[s] = searched.sites().indexOf(test.sites().get(test.site(s)));
		}
		return new Positions(x, y, floor, site);
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
