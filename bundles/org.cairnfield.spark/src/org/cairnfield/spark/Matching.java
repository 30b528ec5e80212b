package org.cairnfield.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.match.PlainMatcher;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.SplitMatcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.pack.DevicePack;
import org.cairnfield.exchange.pack.PackLimitException;
import org.cairnfield.exchange.pack.PackSettings;

/** The whole map made ready for matching, once on each machine; test samples come in parts. */
final class Matching implements Serializable {

	/** In the order of the figures; {@link #CHOSEN} is what a device does. */
	static final List<String> WAYS = List.of("plain", "plain-3w", "split", "split+proposals", "chosen");

	private static final long serialVersionUID = 1;
	private static final int LEVEL_STEP_DB = 1;

	private final RadioMap map;
	private final int[] split;
	private final int[] withProposals;
	private final Search search;
	private final long seed;
	private transient List<Matcher> matchers;
	private transient DevicePack pack;

	/**
	 * @param split         cluster of each sample
	 * @param withProposals likewise, as if all proposals were approved
	 */
	Matching(RadioMap map, int[] split, int[] withProposals, Search search, long seed) {
		this.map = map;
		this.split = split;
		this.withProposals = withProposals;
		this.search = search;
		this.seed = seed;
	}

	/**
	 * Where a test sample is placed.
	 *
	 * @param query its number among the test samples
	 * @param way   in {@link #WAYS}
	 * @param site  number in the map, {@link Estimates#UNKNOWN} where it is not placed
	 */
	record Estimate(int query, int way, double x, double y, int floor, int site, int comparisons)
			implements Serializable {
	}

	/** @param queries numbers of the test samples */
	List<Estimate> estimates(RadioMap tests, int[] queries) {
		List<Estimate> found = new ArrayList<>();
		for (int way = 0; way < WAYS.size(); way++) {
			Matcher matcher = matchers().get(way);
			RadioMap asked = pack != null && way == WAYS.size() - 1 ? pack.packed().queries(tests) : tests;
			SignalRows rows = matcher.signals().align(asked);
			Estimates estimates = Estimates.of(matcher, rows, Workers.inline());
			for (int q = 0; q < queries.length; q++) {
				found.add(new Estimate(queries[q], way, estimates.x(q), estimates.y(q), estimates.floor(q),
						estimates.site(q), estimates.comparisons(q)));
			}
		}
		return found;
	}

	private synchronized List<Matcher> matchers() {
		if (matchers == null) {
			Signals signals = Signals.of(map);
			Neighbours neighbours = new Neighbours(signals);
			matchers = List.of(new PlainMatcher(neighbours, Voting.NEAREST),
					new PlainMatcher(neighbours, Voting.THREE_WEIGHTED),
					published(signals, split), published(signals, withProposals), chosen(signals));
		}
		return matchers;
	}

	private static Matcher published(Signals signals, int[] labels) {
		return new SplitMatcher(SplitMap.of(signals, new Clustering(labels, null), Centroids.Kind.MEAN, false), 1, 1,
				false, Voting.NEAREST);
	}

	private Matcher chosen(Signals signals) {
		SplitMap searched = searched(signals, withProposals, search, seed);
		try {
			pack = DevicePack.of(searched, new PackSettings(LEVEL_STEP_DB, search));
			return pack.matcher();
		} catch (PackLimitException e) {
			return search.matcher(searched);
		}
	}

	/** A map as a device searches it; where nothing has a cluster it compares with every sample. */
	private static SplitMap searched(Signals signals, int[] labels, Search search, long seed) {
		Clustering clusters = new Clustering(labels, null);
		clusters = clusters.clusters() == 0 ? new Clustering(new int[labels.length], null) : clusters;
		return search.map(signals, search.cells(signals, clusters, seed, Workers.inline()), seed, Workers.inline());
	}

	/**
	 * The pack of part of a map.
	 *
	 * @param labels clusters without gaps
	 * @throws PackLimitException where no pack holds it
	 */
	static DevicePack pack(RadioMap part, int[] labels, Search search, long seed) {
		return DevicePack.of(searched(Signals.of(part), labels, search, seed), new PackSettings(LEVEL_STEP_DB, search));
	}
}
