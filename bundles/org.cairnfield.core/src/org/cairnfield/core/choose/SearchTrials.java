package org.cairnfield.core.choose;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.LargeClusters;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.match.JointSearch;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Workers;

/** Tries all ways to search one split of a map from which samples are held out. */
public final class SearchTrials {

	private static final List<Voting> VOTINGS = List.of(Voting.THREE_WEIGHTED, new Voting(5, true));
	private static final Voting WIDEST = VOTINGS.get(VOTINGS.size() - 1);
	/** Groups and cells searched; 0 groups: in one level. */
	private static final int[][] PROBES = { { 0, 1 }, { 0, 2 }, { 0, 3 }, { 2, 3 }, { 3, 4 }, { 4, 6 }, { 6, 8 } };

	private SearchTrials() {
	}

	/**
	 * Splits and searches.
	 *
	 * @param named   the ε for the whole map
	 * @param epsilon what that is here
	 * @param whole   samples of the whole map, of which this one may be a part: by these it is said which clusters are large
	 * @return empty where nothing is dense enough to be a cluster
	 */
	static Map<Combination, Totals.Outcome> on(HeldOut heldOut, double named, double epsilon, int minPts, int whole,
			long seed, Workers workers) {
		Map<Combination, Totals.Outcome> outcomes = new LinkedHashMap<>();
		Clustering found = Dbscan.cluster(heldOut.signals, epsilon, minPts, workers);
		if (found.clusters() == 0) {
			return outcomes;
		}
		Clustering clustering = placed(heldOut.signals, found, workers);
		for (boolean large : new boolean[] { false, true }) {
			Clustering cut = large
					? LargeClusters.cut(heldOut.signals, clustering, LargeClusters.usualLimit(whole), seed, workers)
					: clustering;
			outcomes(heldOut, SplitMap.of(heldOut.signals, cut, Centroids.Kind.MEAN, false), large, seed, workers)
					.forEach((search, outcome) -> outcomes.put(new Combination(named, search), outcome));
		}
		return outcomes;
	}

	/**
	 * Tries all ways to search a split, as it is and with large clusters cut.
	 *
	 * @param signals of the hold-out's map, or others made of the same samples
	 * @param cells   of these
	 * @param whole   samples of the whole map, by which it is said which clusters are large
	 */
	public static Map<Search, TrialScore> of(HeldOut heldOut, Signals signals, Clustering cells, int whole, long seed,
			Workers workers) {
		Map<Search, TrialScore> scores = new LinkedHashMap<>();
		for (boolean large : new boolean[] { false, true }) {
			Clustering cut = large ? LargeClusters.cut(signals, cells, LargeClusters.usualLimit(whole), seed, workers)
					: cells;
			scores.putAll(of(heldOut, SplitMap.of(signals, cut, Centroids.Kind.MEAN, false), large, seed, workers));
		}
		return scores;
	}

	/** Likewise a split that is made ready for a search in one level. @param cut whether large clusters were cut */
	public static Map<Search, TrialScore> of(HeldOut heldOut, SplitMap oneLevel, boolean cut, long seed,
			Workers workers) {
		Map<Search, TrialScore> scores = new LinkedHashMap<>();
		outcomes(heldOut, oneLevel, cut, seed, workers)
				.forEach((search, outcome) -> scores.put(search, outcome.score(search)));
		return scores;
	}

	private static Map<Search, Totals.Outcome> outcomes(HeldOut heldOut, SplitMap oneLevel, boolean cut, long seed,
			Workers workers) {
		Map<Search, Totals.Outcome> outcomes = new LinkedHashMap<>();
		SplitMap twoLevels = oneLevel.inTwoLevels(seed, workers);
		List<Search> searches = Arrays.stream(PROBES).map(probes -> new Search(cut, probes[0], probes[1], true, WIDEST))
				.toList();
		List<List<HeldOut.Score>> scores = heldOut.scores(new JointSearch(twoLevels, searches, WIDEST.k()), VOTINGS,
				workers);
		for (int s = 0; s < PROBES.length; s++) {
			CellCount count = CellCount.of(searches.get(s).twoLevels() ? twoLevels : oneLevel);
			for (int v = 0; v < VOTINGS.size(); v++) {
				HeldOut.Score score = scores.get(s).get(v);
				outcomes.put(searches.get(s).with(PROBES[s][1], VOTINGS.get(v)),
						new Totals.Outcome(score.meanErrorMetres(), score.comparisonShare(), count,
								heldOut.signals.size()));
			}
		}
		return outcomes;
	}

	private static Clustering placed(Signals kept, Clustering clustering, Workers workers) {
		int[] labels = clustering.labels();
		for (NoisePlacement p : NoiseCorrelation.place(kept, clustering, workers)) {
			labels[p.sample()] = p.cluster();
		}
		return clustering.relabelled(labels);
	}
}
