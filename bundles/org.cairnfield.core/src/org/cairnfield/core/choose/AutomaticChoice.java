package org.cairnfield.core.choose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Workers;

/**
 * Chooses ε and how the split is searched, by trying: ε × {clusters as they are, large ones cut} × {one level, two levels} ×
 * probes × voters, judged by the mean error of held-out blocks of the training positions within a {@link Budget} of
 * comparisons. Noise counts as given to the cluster that it correlates with best. Test samples play no part.
 */
public final class AutomaticChoice {

	/** minPts of all that is tried, unless given; the sample itself counted. */
	public static final int MIN_PTS = 3;
	/** Shares of the k-distance curve at which ε is tried; beyond the half of it clusters of real maps run together. */
	private static final double[] CURVE_SHARES = { 0.3, 0.5 };
	private static final List<Voting> VOTINGS = List.of(Voting.THREE_WEIGHTED, new Voting(5, true));
	private static final Voting WIDEST = VOTINGS.get(VOTINGS.size() - 1);
	/** Groups and cells searched; 0 groups: in one level. */
	private static final int[][] PROBES = { { 0, 1 }, { 0, 2 }, { 0, 3 }, { 2, 3 }, { 3, 4 }, { 4, 6 }, { 6, 8 } };
	/** Small maps are judged on several hold-outs, for they vary more and cost less. */
	private static final int MOST_HOLD_OUTS = 4;
	private static final int SAMPLES_IN_ALL = 12_000;
	/** Held-out errors this close to the smallest are not told apart; the search that compares most samples is taken. */
	private static final double TOLERANCE = 1.03;
	/** Held-out comparisons may be this share of the budget: the whole map differs a little. */
	private static final double CAUTION = 0.9;

	/**
	 * One combination that was tried.
	 *
	 * @param epsilon         for the whole map, in the signals' units
	 * @param minPts          the sample itself counted
	 * @param search          of the cells
	 * @param meanErrorMetres of the held-out samples, mean over the hold-outs
	 * @param comparisonShare fingerprints compared, as a share of plain matching, likewise
	 * @param sampleShare     of these the samples, centroids left out; reckoned as if groups were of one size
	 */
	public record Tried(double epsilon, int minPts, Search search, double meanErrorMetres, double comparisonShare, double sampleShare) {

		private Tried plus(Tried other) {
			return new Tried(epsilon, minPts, search, meanErrorMetres + other.meanErrorMetres, comparisonShare + other.comparisonShare,
					sampleShare + other.sampleShare);
		}
	}

	/**
	 * What was found.
	 *
	 * @param tried       all that was, best first: the first is the one chosen
	 * @param budgetShare comparisons that a query may cost, as a share of plain matching
	 * @param questions   held-out samples that were asked about, over all hold-outs
	 */
	public record Choice(List<Tried> tried, double budgetShare, int questions) {

		/** The combination chosen. */
		public Tried best() {
			return tried.get(0);
		}
	}

	private record Combination(double epsilon, Search search) {
	}

	private final Signals signals;
	private final int minPts;
	private final long seed;
	private final Workers workers;
	private final Workers inner;

	private AutomaticChoice(Signals signals, int minPts, long seed, Workers workers) {
		this.signals = signals;
		this.minPts = minPts;
		this.seed = seed;
		this.workers = workers;
		inner = workers.quietly();
	}

	/** Chooses ε and search. Looks at the samples of {@code signals} only; at least one sample. */
	public static Choice choose(Signals signals, long seed, Workers workers) {
		return choose(signals, MIN_PTS, seed, workers);
	}

	/** Likewise with a minPts that was given. */
	public static Choice choose(Signals signals, int minPts, long seed, Workers workers) {
		AutomaticChoice choice = new AutomaticChoice(signals, minPts, seed, workers);
		Map<Double, Candidate> candidates = new LinkedHashMap<>();
		for (double share : CURVE_SHARES) {
			double epsilon = epsilonAt(signals, minPts, share, choice.inner);
			candidates.putIfAbsent(epsilon, new Candidate(epsilon, kept -> epsilonAt(kept, minPts, share, choice.inner)));
		}
		return choice.among(List.copyOf(candidates.values()));
	}

	/** Chooses the search alone, for an ε that was given. */
	public static Choice searchFor(Signals signals, double epsilon, int minPts, long seed, Workers workers) {
		return new AutomaticChoice(signals, minPts, seed, workers).among(List.of(new Candidate(epsilon, kept -> epsilon)));
	}

	/** @param onHeldOut its ε on a map from which samples are held out */
	private record Candidate(double epsilon, ToDoubleFunction<Signals> onHeldOut) {
	}

	private Choice among(List<Candidate> candidates) {
		int count = Math.max(1, Math.min(MOST_HOLD_OUTS, SAMPLES_IN_ALL / Math.max(1, signals.size())));
		Map<Combination, Tried> tried = new LinkedHashMap<>();
		int questions = 0;
		workers.progress().begin("trying splits and searches", (long) count * candidates.size());
		for (HeldOut heldOut : HeldOut.of(signals, count, seed)) {
			for (Candidate candidate : candidates) {
				Clustering clustering = Dbscan.cluster(heldOut.signals, candidate.onHeldOut.applyAsDouble(heldOut.signals), minPts, inner);
				search(heldOut, candidate.epsilon, placed(heldOut.signals, clustering), tried, 1.0 / count);
				workers.progress().advance(1);
			}
			questions += heldOut.questions();
		}
		if (tried.isEmpty()) { // nothing is dense enough to be a cluster
			tried.put(new Combination(candidates.get(0).epsilon, Search.USUAL),
					new Tried(candidates.get(0).epsilon, minPts, Search.USUAL, Double.NaN, Double.NaN, Double.NaN));
		}
		return new Choice(ranked(List.copyOf(tried.values())), Budget.share(signals.size()), questions);
	}

	private Clustering placed(Signals kept, Clustering clustering) {
		int[] labels = clustering.labels();
		for (NoisePlacement p : NoiseCorrelation.place(kept, clustering, inner)) {
			labels[p.sample()] = p.cluster();
		}
		return clustering.relabelled(labels);
	}

	private void search(HeldOut heldOut, double epsilon, Clustering clustering, Map<Combination, Tried> tried, double weight) {
		if (clustering.clusters() == 0) {
			return;
		}
		for (boolean cut : new boolean[] { false, true }) {
			Search cells = new Search(cut, 0, 1, true, WIDEST);
			SplitMap oneLevel = cells.map(heldOut.signals, cells.cells(heldOut.signals, clustering, seed, inner), seed, inner);
			SplitMap twoLevels = oneLevel.inTwoLevels(seed, inner);
			for (int[] probes : PROBES) {
				Search search = new Search(cut, probes[0], probes[1], true, WIDEST);
				SplitMap searched = search.twoLevels() ? twoLevels : oneLevel;
				double centroids = (double) centroids(searched, search) / heldOut.signals.size();
				List<HeldOut.Score> scores = heldOut.scores(search.matcher(searched), VOTINGS, inner);
				for (int v = 0; v < VOTINGS.size(); v++) {
					Search by = search.with(probes[1], VOTINGS.get(v));
					tried.merge(new Combination(epsilon, by), new Tried(epsilon, minPts, by, weight * scores.get(v).meanErrorMetres(),
							weight * scores.get(v).comparisonShare(), weight * (scores.get(v).comparisonShare() - centroids)), Tried::plus);
				}
			}
		}
	}

	/** How many centroids, of groups and of cells, a query compares. */
	private static int centroids(SplitMap split, Search search) {
		int groups = split.groups();
		return groups == 0 ? split.cells() : groups + Math.min(groups, search.groupProbes()) * split.cells() / groups;
	}

	/** First those within the budget and the tolerance, the one that compares most samples first; then by error. */
	private List<Tried> ranked(List<Tried> tried) {
		double allowed = Budget.share(signals.size()) * CAUTION;
		double close = TOLERANCE * tried.stream().filter(t -> t.comparisonShare() <= allowed)
				.mapToDouble(Tried::meanErrorMetres).min().orElse(Double.NEGATIVE_INFINITY);
		List<Tried> ranked = new ArrayList<>(tried);
		ranked.sort(Comparator.comparing((Tried t) -> t.comparisonShare() <= allowed ? 0 : t.comparisonShare())
				.thenComparing(t -> t.meanErrorMetres() <= close ? 0 : t.meanErrorMetres())
				.thenComparing(Tried::sampleShare, Comparator.reverseOrder()));
		return List.copyOf(ranked);
	}

	/** The k-distance (k = minPts) below which a share of the samples lies; of repeated scans, at 0, the first above. */
	private static double epsilonAt(Signals signals, int minPts, double share, Workers workers) {
		double[] curve = KDistances.of(signals, workers, minPts).sorted(minPts);
		int i = Math.min(curve.length - 1, (int) (share * curve.length));
		while (i >= 0 && i < curve.length - 1 && curve[i] == 0) {
			i++;
		}
		return i < 0 || Double.isInfinite(curve[i]) ? 0 : curve[i];
	}
}
