package org.cairnfield.core.cluster;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.stats.Draw;
import org.cairnfield.core.task.Workers;

/**
 * Affinity propagation (B. J. Frey, D. Dueck, "Clustering by passing messages between data points", Science 315, 2007): picks
 * exemplars among the samples so that the sum of similarities to exemplars, plus a preference for each exemplar, becomes large.
 * Similarity is negative distance. The number of clusters follows from the preference. No sample is noise.
 *
 * <p>Samples out of earshot of each other are clustered separately; those that heard nothing form one cluster. Where the signals have
 * an {@link Signals#index() index}, samples with equal readings are one point, weighted by their number, which leaves the sum as it is.
 * In the end each cluster chooses its exemplar again, by the sum of similarities to it, and all samples are assigned once more.
 *
 * <p>Deterministic. Messages may oscillate where similarities are equal, so each is changed by a trifle, the same way in each run. Of
 * equally similar exemplars the first in the map wins.
 *
 * <p>Cost for n points in a component: a few n² steps a round, and three n × n matrices of doubles: 600 MB for 5,000 points, which took 20
 * to 30 s of processor time. Where a component has more points than allowed, landmarks are drawn by seed, and the other points join
 * the nearest exemplar.
 */
public final class AffinityPropagation {

	/** Numbers of a matrix stay below what an array can hold. */
	private static final int MOST_POINTS = 20_000;

	/**
	 * How it is done.
	 *
	 * @param preference   of each point for being an exemplar, in units of similarity, so below 0; NaN for the median of the
	 *                     similarities of a component. The smaller, the fewer clusters
	 * @param damping      the share of a message that stays from the round before, from 0.5 to below 1
	 * @param steadyRounds rounds for which exemplars must stay the same
	 * @param mostRounds   rounds after which it is given up
	 * @param mostPoints   points of a component above which landmarks are drawn, 2 to 20,000
	 * @param seed         draws landmarks
	 */
	public record Settings(double preference, double damping, int steadyRounds, int mostRounds, int mostPoints,
			long seed) {

		/** @throws IllegalArgumentException for a number out of range */
		public Settings {
			if (!(damping >= 0.5 && damping < 1) || steadyRounds < 1 || mostRounds < 1 || mostPoints < 2
					|| mostPoints > MOST_POINTS) {
				throw new IllegalArgumentException(
						"damping must be from 0.5 to below 1, rounds at least 1, points 2 to " + MOST_POINTS + ": "
								+ damping + ", " + steadyRounds + ", " + mostRounds + ", " + mostPoints);
			}
		}

		/** Median preference, at most 5,000 points of a component. */
		public static Settings usual(long seed) {
			return new Settings(Double.NaN, 0.7, 15, 300, 5_000, seed);
		}

		public Settings withPreference(double other) {
			return new Settings(other, damping, steadyRounds, mostRounds, mostPoints, seed);
		}

		public Settings withDamping(double other) {
			return new Settings(preference, other, steadyRounds, mostRounds, mostPoints, seed);
		}
	}

	/**
	 * What was found.
	 *
	 * @param clustering clusters are numbered by their first sample
	 * @param exemplars  a sample per cluster
	 * @param converged  whether the exemplars of all components came to rest; where they did not, those of the last round are taken
	 * @param rounds     of the component that took longest
	 * @param landmarks  points drawn in components that have too many; 0 where none has
	 */
	public record Result(Clustering clustering, int[] exemplars, boolean converged, int rounds, int landmarks) {
	}

	private final Signals signals;
	private final PointSet points;
	private final Settings settings;
	private final Workers workers;
	/** By sample: the sample that is its exemplar. */
	private final int[] exemplarOf;
	private boolean converged = true;
	private int rounds;
	private int landmarks;

	private AffinityPropagation(Signals signals, Settings settings, Workers workers) {
		this.signals = signals;
		this.settings = settings;
		this.workers = workers;
		points = PointSet.of(signals);
		exemplarOf = new int[signals.size()];
	}

	/** Clusters the samples of a map. */
	public static Result cluster(Signals signals, Settings settings, Workers workers) {
		AffinityPropagation run = new AffinityPropagation(signals, settings, workers);
		for (int[] within : run.withinEarshot()) {
			run.clusterPoints(within);
		}
		return run.result();
	}

	/** Points by component, ascending by their first samples; all that heard nothing are together. */
	private List<int[]> withinEarshot() {
		Map<Integer, List<Integer>> byComponent = IntStream.range(0, points.size()).boxed()
				.sorted(Comparator.comparing(this::first))
				.collect(Collectors.groupingBy(p -> isSilent(p) ? -1 : signals.components().componentOf(first(p)),
						TreeMap::new, Collectors.toList()));
		return byComponent.values().stream().map(list -> list.stream().mapToInt(p -> p).toArray()).toList();
	}

	private int first(int point) {
		return points.sample(point, 0);
	}

	private boolean isSilent(int point) {
		return signals.rows().magnitude(first(point)) == 0;
	}

	private void clusterPoints(int[] within) {
		if (isSilent(within[0]) || within.length == 1) {
			Arrays.stream(within).forEach(p -> assign(p, within[0]));
			return;
		}
		int[] chosen = within;
		if (within.length > settings.mostPoints()) {
			chosen = Arrays.stream(Draw.some(settings.mostPoints(), within.length, settings.seed())).map(i -> within[i])
					.toArray();
			landmarks += chosen.length;
		}
		MessagePassing.Outcome outcome = MessagePassing.run(similarities(chosen), chosen.length, settings, workers);
		converged &= outcome.converged();
		rounds = Math.max(rounds, outcome.rounds());
		for (int i = 0; i < chosen.length; i++) {
			assign(chosen[i], chosen[outcome.exemplarOf()[i]]);
		}
		if (chosen != within) {
			int[] drawn = chosen;
			assignToNearest(within,
					Arrays.stream(outcome.exemplarOf()).distinct().sorted().map(i -> drawn[i]).toArray());
		}
	}

	private void assign(int point, int exemplar) {
		for (int i = 0; i < points.weight(point); i++) {
			exemplarOf[points.sample(point, i)] = first(exemplar);
		}
	}

	private double[] similarities(int[] chosen) {
		int n = chosen.length;
		double[] similarity = new double[n * n];
		Components components = signals.components();
		int[] place = Arrays.stream(chosen).map(p -> components.placeOf(first(p))).toArray();
		workers.progress().begin("similarities", n);
		workers.forRanges(n, () -> {
			DistanceKernel kernel = signals.kernel();
			double[] distances = new double[components.largest()];
			return (from, to) -> {
				for (int i = from; i < to; i++) {
					kernel.row(first(chosen[i]), distances);
					for (int k = 0; k < n; k++) {
						similarity[i * n + k] = -distances[place[k]];
					}
				}
			};
		});
		double preference = Double.isNaN(settings.preference()) ? median(similarity, n) : settings.preference();
		for (int i = 0; i < n; i++) {
			int weight = points.weight(chosen[i]);
			for (int k = 0; k < n; k++) {
				similarity[i * n + k] = i == k ? preference : weight * similarity[i * n + k];
			}
		}
		return similarity;
	}

	/** Of the similarities of two different points. */
	static double median(double[] similarity, int n) {
		double[] pairs = new double[n * (n - 1) / 2];
		int count = 0;
		for (int i = 0; i < n; i++) {
			System.arraycopy(similarity, i * n, pairs, count, i);
			count += i;
		}
		Arrays.sort(pairs);
		return (pairs[(count - 1) / 2] + pairs[count / 2]) / 2.0;
	}

	private void assignToNearest(int[] within, int[] exemplars) {
		Components components = signals.components();
		double[] distances = new double[components.largest()];
		double[] least = new double[within.length];
		Arrays.fill(least, Double.POSITIVE_INFINITY);
		DistanceKernel kernel = signals.kernel();
		workers.progress().begin(Messages.AffinityPropagation_nearestExemplars, exemplars.length);
		for (int e : exemplars) {
			workers.checkCancelled();
			kernel.row(first(e), distances);
			for (int i = 0; i < within.length; i++) {
				double d = distances[components.placeOf(first(within[i]))];
				if (d < least[i]) {
					least[i] = d;
					assign(within[i], e);
				}
			}
			workers.progress().advance(1);
		}
	}

	private Result result() {
		int[] numbered = KMeans.numberedByFirst(exemplarOf);
		Clustering clustering = new Clustering(numbered, null);
		int[] exemplars = new int[clustering.clusters()];
		for (int s = 0; s < numbered.length; s++) {
			exemplars[numbered[s]] = exemplarOf[s];
		}
		return new Result(clustering, exemplars, converged, rounds, landmarks);
	}
}
