package org.cairnfield.core.choose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.SplitMatcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Workers;

/**
 * Chooses how to split and search a map, by trying: {DBSCAN + correlation, DBSCAN + nearest, k-means} ×
 * {one level, two levels} × probes × k, judged by the mean error of held-out blocks of the training
 * positions within a {@link Budget} of comparisons. Test samples play no part.
 */
public final class AutomaticChoice {

	private static final List<Voting> VOTINGS = List.of(Voting.THREE_WEIGHTED, new Voting(5, true));
	private static final Voting WIDEST = VOTINGS.get(VOTINGS.size() - 1);
	/** Small maps are judged on several hold-outs, for they vary more and cost less. */
	private static final int MOST_HOLD_OUTS = 4;
	private static final int SAMPLES_IN_ALL = 12_000;
	/** Held-out errors this close to the smallest are not told apart; the more thorough search is taken. */
	private static final double TOLERANCE = 1.03;
	/** Held-out comparisons may be this share of the budget: the whole map differs a little. */
	private static final double CAUTION = 0.9;

	/**
	 * One combination that was tried.
	 *
	 * @param splitting       on the first held-out map
	 * @param meanErrorMetres of the held-out samples, mean over the hold-outs
	 * @param comparisonShare of plain matching, likewise
	 */
	public record Tried(Splitting splitting, SearchPlan plan, Voting voting, double meanErrorMetres,
			double comparisonShare) {

		private Tried plus(Tried other) {
			return new Tried(splitting, plan, voting, meanErrorMetres + other.meanErrorMetres,
					comparisonShare + other.comparisonShare);
		}
	}

	/**
	 * What was chosen, made for the whole map.
	 *
	 * @param tried all that was, best first
	 */
	public record Choice(Splitting splitting, SearchPlan plan, Matcher matcher, List<Tried> tried) {
	}

	private final Signals signals;
	private final long seed;
	private final Workers workers;
	private final Workers inner;

	private AutomaticChoice(Signals signals, long seed, Workers workers) {
		this.signals = signals;
		this.seed = seed;
		this.workers = workers;
		this.inner = workers.quietly();
	}

	/** Looks at the samples of {@code signals} only; at least one sample. */
	public static Choice choose(Signals signals, long seed, Workers workers) {
		return new AutomaticChoice(signals, seed, workers).choose();
	}

	private Choice choose() {
		int count = Math.max(1, Math.min(MOST_HOLD_OUTS, SAMPLES_IN_ALL / Math.max(1, signals.size())));
		Map<Combination, Tried> tried = new LinkedHashMap<>();
		workers.progress().begin("trying splits and searches", (long) count * Recipe.all().size() + 1);
		for (HeldOut heldOut : HeldOut.of(signals, count, seed)) {
			SplittingMaker maker = new SplittingMaker(heldOut.signals, seed, inner);
			for (Recipe recipe : Recipe.all()) {
				search(heldOut, recipe, maker.make(recipe), tried, 1.0 / count);
				workers.progress().advance(1);
			}
		}
		List<Combination> ranked = ranked(tried);
		Combination best = ranked.get(0);
		Splitting splitting = new SplittingMaker(signals, seed, inner).make(best.recipe());
		SplitMap split = SplitMap.of(signals, splitting.clustering(), Centroids.Kind.MEAN, false);
		workers.progress().advance(1);
		return new Choice(splitting, best.plan(), matcher(split, best.plan(), best.voting()),
				ranked.stream().map(tried::get).toList());
	}

	private record Combination(Recipe recipe, SearchPlan plan, Voting voting) {
	}

	/** First those within the budget and the tolerance, most thorough first; then by error; then by cost. */
	private List<Combination> ranked(Map<Combination, Tried> tried) {
		double allowed = Budget.share(signals.size()) * CAUTION;
		double close = TOLERANCE * tried.values().stream().filter(t -> t.comparisonShare() <= allowed)
				.mapToDouble(Tried::meanErrorMetres).min().orElse(Double.NEGATIVE_INFINITY);
		Comparator<Tried> preference = Comparator
				.comparing((Tried t) -> t.comparisonShare() <= allowed ? 0 : t.comparisonShare())
				.thenComparing(t -> t.meanErrorMetres() <= close ? 0 : t.meanErrorMetres())
				.thenComparing(Tried::comparisonShare, Comparator.reverseOrder());
		return tried.keySet().stream().sorted(Comparator.comparing(tried::get, preference)).toList();
	}

	private void search(HeldOut heldOut, Recipe recipe, Splitting splitting, Map<Combination, Tried> tried,
			double weight) {
		if (splitting.clustering().clusters() == 0) {
			return;
		}
		SplitMap split = SplitMap.of(heldOut.signals, splitting.clustering(), Centroids.Kind.MEAN, false);
		for (SearchPlan plan : SearchPlan.TRIED) {
			List<HeldOut.Score> scores = heldOut.scores(matcher(split, plan, WIDEST), VOTINGS, inner);
			for (int v = 0; v < VOTINGS.size(); v++) {
				Tried once = new Tried(splitting, plan, VOTINGS.get(v), weight * scores.get(v).meanErrorMetres(),
						weight * scores.get(v).comparisonShare());
				tried.merge(new Combination(recipe, plan, VOTINGS.get(v)), once, Tried::plus);
			}
		}
	}

	private Matcher matcher(SplitMap split, SearchPlan plan, Voting voting) {
		SplitMap searched = plan.twoLevel() ? split.inTwoLevels(seed, inner) : split;
		return new SplitMatcher(searched, plan.groupProbes(), plan.cellProbes(), true, voting);
	}
}
