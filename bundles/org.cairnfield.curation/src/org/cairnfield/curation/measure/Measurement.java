package org.cairnfield.curation.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.SignalRows;
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
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.propose.Proposals;

/**
 * Several ways of matching on the same test samples: plain nearest neighbour, plain with three weighted,
 * the split with noise left out, the split with every proposal approved, and the automatic choice.
 *
 * @param variants in that order, "plain" first
 * @param choice   what was chosen and what was tried for it
 */
public record Measurement(List<Variant> variants, AutomaticChoice.Choice choice) {

	/**
	 * @param proposals of a split of the cleaned training map
	 * @param test      samples that played no part in the split
	 */
	public static Measurement of(Proposals proposals, RadioMap test, long seed, Workers workers) {
		Signals signals = proposals.split().signals();
		AutomaticChoice.Choice choice = AutomaticChoice.choose(signals, seed, workers);
		Map<String, Matcher> matchers = new LinkedHashMap<>();
		Neighbours neighbours = new Neighbours(signals);
		matchers.put("plain", new PlainMatcher(neighbours, Voting.NEAREST));
		matchers.put("plain-3w", new PlainMatcher(neighbours, Voting.THREE_WEIGHTED));
		matchers.put("split", nearestCluster(signals, proposals.split().clustering()));
		matchers.put("split+proposals", nearestCluster(signals, proposals.approved()));
		matchers.put("chosen", choice.matcher());
		SignalRows queries = signals.align(test);
		MatchTimes times = MatchTimes.of(matchers, queries, workers);
		List<Variant> variants = new ArrayList<>();
		matchers.forEach((name, matcher) -> variants.add(
				variant(name, how(name, choice), matcher, queries, test, times.ratio(name, "plain"), seed, workers)));
		return new Measurement(List.copyOf(variants), choice);
	}

	/** As published: the nearest centroid's cluster, then the nearest sample in it. */
	private static Matcher nearestCluster(Signals signals, Clustering clustering) {
		return new SplitMatcher(SplitMap.of(signals, clustering, Centroids.Kind.MEAN, false), 1, 1, false,
				Voting.NEAREST);
	}

	private static String how(String name, AutomaticChoice.Choice choice) {
		return switch (name) {
		case "plain" -> "nearest sample of the whole map";
		case "plain-3w" -> "three nearest samples of the whole map, weighted 1/(d + 1)";
		case "split" -> "nearest cluster, nearest sample in it; noise left out";
		case "split+proposals" -> "the same, noise in the cluster proposed";
		default -> choice.splitting() + "; " + choice.plan() + "; " + choice.matcher().voting();
		};
	}

	private static Variant variant(String name, String how, Matcher matcher, SignalRows queries, RadioMap test,
			double timeRatio, long seed, Workers workers) {
		Estimates estimates = Estimates.of(matcher, queries, workers);
		PositionErrors errors = PositionErrors.of(estimates.positions(), truth(test, matcher.signals().map()));
		return new Variant(name, how, errors, Bootstrap.seeded(seed).mean(errors.errorsMetres()),
				estimates.meanComparisons(), timeRatio);
	}

	/** True positions, sites numbered as in the searched map. */
	static Positions truth(RadioMap test, RadioMap searched) {
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

	/** The variant of a name. */
	public Variant variant(String name) {
		return variants.stream().filter(v -> v.name().equals(name)).findFirst()
				.orElseThrow(() -> new IllegalArgumentException("no variant " + name));
	}
}
