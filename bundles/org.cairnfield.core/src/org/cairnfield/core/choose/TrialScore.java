package org.cairnfield.core.choose;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * What a way of finding positions came to on held-out training positions.
 *
 * @param meanErrorMetres of the samples asked about
 * @param comparisonShare fingerprints compared, as a share of plain matching
 * @param sampleShare     of these the samples, centroids left out
 */
public record TrialScore(double meanErrorMetres, double comparisonShare, double sampleShare) implements Serializable {

	/** Held-out errors this close to the smallest are not told apart; what compares most samples is taken. */
	private static final double TOLERANCE = 1.03;
	/** Held-out comparisons may be this share of the budget: the whole map differs a little. */
	private static final double CAUTION = 0.9;

	/** What the comparisons of a trial may be on a map of so many samples, as a share of plain matching. */
	public static double allowedShare(int samples) {
		return Budget.share(samples) * CAUTION;
	}

	/**
	 * The best first: those within the {@link Budget} and as good as the best of them, the one that compares most samples first;
	 * then by error; beyond the budget by comparisons.
	 *
	 * @param samples of the whole map
	 */
	public static <T> List<T> ranked(List<T> tried, Function<T, TrialScore> score, int samples) {
		double allowed = allowedShare(samples);
		double close = TOLERANCE * tried.stream().map(score).filter(t -> t.comparisonShare <= allowed)
				.mapToDouble(TrialScore::meanErrorMetres).min().orElse(Double.NEGATIVE_INFINITY);
		List<T> ranked = new ArrayList<>(tried);
		ranked.sort(Comparator.comparing(score,
				Comparator.comparing((TrialScore t) -> t.comparisonShare <= allowed ? 0 : t.comparisonShare)
						.thenComparing(t -> t.meanErrorMetres <= close ? 0 : t.meanErrorMetres)
						.thenComparing(TrialScore::sampleShare, Comparator.reverseOrder())));
		return List.copyOf(ranked);
	}

	/** The mean of several hold-outs. @param scores at least one */
	public static TrialScore mean(List<TrialScore> scores) {
		return new TrialScore(mean(scores, TrialScore::meanErrorMetres), mean(scores, TrialScore::comparisonShare),
				mean(scores, TrialScore::sampleShare));
	}

	private static double mean(List<TrialScore> scores, Function<TrialScore, Double> part) {
		return scores.stream().mapToDouble(part::apply).average().orElse(Double.NaN);
	}
}
