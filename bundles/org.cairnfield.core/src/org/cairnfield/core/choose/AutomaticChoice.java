package org.cairnfield.core.choose;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.task.TimeLimit;
import org.cairnfield.core.task.Workers;

/**
 * Chooses ε and how the split is searched, by trying: ε × {clusters as they are, large ones cut} × {one level, two levels} ×
 * probes × voters, judged by the mean error of held-out blocks of the training positions within a {@link Budget} of
 * comparisons. Noise counts as given to the cluster that it correlates with best. Test samples play no part.
 *
 * <p>A large map is judged site by site. With the same seed the choice is the same, unless the time ran out.
 */
public final class AutomaticChoice {

	/** minPts of all that is tried, unless given; the sample itself counted. */
	public static final int MIN_PTS = 3;
	/** Shares of the k-distance curve at which ε is tried; beyond the half of it clusters of real maps run together. */
	private static final double[] CURVE_SHARES = { 0.3, 0.5 };
	/** k-distances of a few sites tell enough. */
	private static final double CURVE_TIME = 0.2;

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
	public record Tried(double epsilon, int minPts, Search search, double meanErrorMetres, double comparisonShare,
			double sampleShare) {

		private TrialScore score() {
			return new TrialScore(meanErrorMetres, comparisonShare, sampleShare);
		}
	}

	/**
	 * What was not tried for want of time.
	 *
	 * @param sites    whose samples were not asked about
	 * @param holdOuts of the other sites
	 * @param epsilons values of ε
	 */
	public record LeftOut(List<String> sites, int holdOuts, int epsilons) {

		/** Whether all was tried. */
		public boolean isNothing() {
			return sites.isEmpty() && holdOuts == 0 && epsilons == 0;
		}
	}

	/**
	 * What was found.
	 *
	 * @param tried       all that was, best first: the first is the one chosen
	 * @param budgetShare comparisons that a query may cost, as a share of plain matching
	 * @param questions   held-out samples that were asked about, over all hold-outs
	 * @param leftOut     for want of time
	 */
	public record Choice(List<Tried> tried, double budgetShare, int questions, LeftOut leftOut) {

		/** The combination chosen. */
		public Tried best() {
			return tried.get(0);
		}
	}

	private final Signals signals;
	private final int minPts;
	private final long seed;
	private final TimeLimit limit;
	private final Workers workers;
	private final List<int[]> parts;
	/** k-distances (k = minPts) of each part, ascending; null until they are asked for. */
	private final double[][] curves;

	/** @param parts of the samples, each judged by itself, in this order */
	AutomaticChoice(Signals signals, List<int[]> parts, int minPts, long seed, TimeLimit limit, Workers workers) {
		this.signals = signals;
		this.minPts = minPts;
		this.seed = seed;
		this.limit = limit;
		this.workers = workers;
		this.parts = parts;
		this.curves = new double[parts.size()][];
	}

	/** Chooses ε and search, however long it takes. Looks at the samples of {@code signals} only; at least one sample. */
	public static Choice choose(Signals signals, long seed, Workers workers) {
		return choose(signals, MIN_PTS, seed, TimeLimit.NEVER, workers);
	}

	/**
	 * Likewise with a minPts that was given, in a time that is given.
	 *
	 * @throws TooLittleTimeException where it is over before there is an ε to be tried
	 */
	public static Choice choose(Signals signals, int minPts, long seed, Duration most, Workers workers) {
		return new AutomaticChoice(signals, MapParts.of(signals.map(), seed), minPts, seed, TimeLimit.of(most), workers)
				.choose();
	}

	/** Chooses the search alone, for an ε that was given. */
	public static Choice searchFor(Signals signals, double epsilon, int minPts, long seed, Duration most,
			Workers workers) {
		return new AutomaticChoice(signals, MapParts.of(signals.map(), seed), minPts, seed, TimeLimit.of(most), workers)
				.searchFor(epsilon);
	}

	/**
	 * One ε to be tried.
	 *
	 * @param share where it is on the k-distance curve; NaN where it was given, and is the same on any map
	 */
	private record Candidate(double epsilon, double share) {

		private boolean isGiven() {
			return Double.isNaN(share);
		}
	}

	Choice searchFor(double epsilon) {
		return among(List.of(new Candidate(epsilon, Double.NaN)));
	}

	Choice choose() {
		double[] curve = curve();
		Map<Double, Candidate> candidates = new LinkedHashMap<>();
		for (double share : CURVE_SHARES) {
			candidates.putIfAbsent(epsilonAt(curve, share), new Candidate(epsilonAt(curve, share), share));
		}
		return among(List.copyOf(candidates.values()));
	}

	/** The k-distance curve, of as many parts as there is time for. */
	private double[] curve() {
		DoubleStream.Builder all = DoubleStream.builder();
		TimeLimit time = limit;
		for (int p = 0; p < parts.size(); p++) {
			int part = p;
			Optional<double[]> curve = time.run(workers, within -> curve(part, within));
			if (curve.isEmpty()) {
				break;
			}
			Arrays.stream(curve.get()).forEach(all);
			time = limit.first(CURVE_TIME);
		}
		double[] sorted = all.build().sorted().toArray();
		if (sorted.length == 0) {
			throw new TooLittleTimeException(signals.size());
		}
		return sorted;
	}

	private double[] curve(int part, Workers within) {
		if (curves[part] == null) {
			curves[part] = KDistances.of(signals(part), within, minPts).sorted(minPts);
		}
		return curves[part];
	}

	/** Made anew each time, so that a large map is not held twice. */
	private Signals signals(int part) {
		return parts.size() == 1 ? signals
				: Signals.ofPart(signals.map().view(parts.get(part)), signals.representation(), signals.distance(),
						signals.lowestRssiDbm());
	}

	private Choice among(List<Candidate> candidates) {
		Totals totals = new Totals(signals.size());
		int questions = 0;
		List<String> sites = new ArrayList<>();
		int holdOuts = 0;
		int epsilons = 0;
		workers.progress().begin(Messages.AutomaticChoice_tryingSplitsAndSearches,
				(long) candidates.size() * parts.stream().mapToInt(part -> HeldOut.number(part.length)).sum());
		for (int part = 0; part < parts.size(); part++) {
			int count = HeldOut.number(parts.get(part).length);
			int asked = 0;
			while (asked < count) {
				Round round = round(part, asked, candidates);
				if (round.tried < candidates.size() && (round.tried == 0 || !totals.isEmpty())) {
					break; // what some were asked and others not is no comparison
				}
				totals.add(round.outcomes, parts.get(part).length, count);
				questions += round.questions;
				epsilons = candidates.size() - round.tried;
				asked++;
			}
			if (asked == 0) {
				sites.addAll(sites(part));
			} else {
				holdOuts += count - asked;
			}
		}
		List<Tried> tried = parts.size() == 1 ? totals.measured(minPts) : totals.reckoned(minPts);
		if (tried.isEmpty()) { // nothing is dense enough to be a cluster, or there was no time
			tried = List
					.of(new Tried(candidates.get(0).epsilon, minPts, Search.USUAL, Double.NaN, Double.NaN, Double.NaN));
		}
		return new Choice(ranked(tried), Budget.share(signals.size()), questions,
				new LeftOut(List.copyOf(sites), holdOuts, epsilons));
	}

	private List<String> sites(int part) {
		RadioMap map = signals.map();
		return Arrays.stream(parts.get(part)).map(map::site).distinct().mapToObj(map.sites()::get).toList();
	}

	/** All that is tried on one hold-out. @param tried how many values of ε, before the time was over */
	private record Round(Map<Combination, Totals.Outcome> outcomes, int tried, int questions) {
	}

	private Round round(int part, int number, List<Candidate> candidates) {
		double wholeByPart = (double) signals.size() / parts.get(part).length;
		Map<Combination, Totals.Outcome> outcomes = new LinkedHashMap<>();
		Optional<HeldOut> made = limit.run(workers, within -> {
			Signals of = signals(part);
			return HeldOut.of(of, PositionBlocks.of(of.map()), number, seed);
		});
		int tried = 0;
		while (made.isPresent() && tried < candidates.size()) {
			Candidate candidate = candidates.get(tried);
			Optional<Map<Combination, Totals.Outcome>> found = limit.run(workers,
					within -> SearchTrials.on(made.get(), candidate.epsilon,
							epsilonOn(made.get(), candidate, part, within), minPts,
							(int) Math.round(made.get().signals.size() * wholeByPart), seed, within));
			if (found.isEmpty()) {
				break;
			}
			outcomes.putAll(found.get());
			workers.progress().advance(1);
			tried++;
		}
		return new Round(outcomes, tried, made.map(HeldOut::questions).orElse(0));
	}

	/** What an ε is on a map that is thinner than the part of which it is. */
	private double epsilonOn(HeldOut heldOut, Candidate candidate, int part, Workers within) {
		if (candidate.isGiven()) {
			return candidate.epsilon;
		}
		double thinned = epsilonAt(heldOut.curve(minPts, within), candidate.share);
		double own = epsilonAt(curve(part, within), candidate.share);
		return own == candidate.epsilon || own == 0 ? thinned : candidate.epsilon * thinned / own;
	}

	private List<Tried> ranked(List<Tried> tried) {
		return TrialScore.ranked(tried, Tried::score, signals.size());
	}

	/** The k-distance below which a share of the samples lies; of repeated scans, at 0, the first above. @param curve ascending */
	private static double epsilonAt(double[] curve, double share) {
		int i = Math.min(curve.length - 1, (int) (share * curve.length));
		while (i >= 0 && i < curve.length - 1 && curve[i] == 0) {
			i++;
		}
		return i < 0 || Double.isInfinite(curve[i]) ? 0 : curve[i];
	}
}
