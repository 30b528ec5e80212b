package org.cairnfield.curation.split;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.choose.TooLittleTimeException;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.cluster.PointSet;
import org.cairnfield.core.cluster.Sweep;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;

/**
 * What one asks of a map before it is split: its k-distance curve, what DBSCAN makes of it, a sweep. Answers are
 * kept, so that the same question is answered at once. Safe for several threads; two that ask the same at the
 * same time may both compute it.
 */
public final class SplitStudy {

	/** minPts to begin with. */
	public static final int USUAL_MIN_PTS = 5;
	private static final int[] USUAL_GRID_MIN_PTS = { 3, 5, 8 };
	private static final double[] GRID_SHARES = { 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9 };
	private static final double START_SHARE = 0.5;
	/** Clusterings of 20,000 samples take 160 KB each. */
	private static final int MOST_ANSWERS = 200;

	private final ArchiveMap map;
	private final Signals signals;
	private final OptionalDouble pcaShare;
	private final Map<List<Object>, Object> answers = new LinkedHashMap<>(16, 0.75f, true) {
		private static final long serialVersionUID = 1;

		@Override
		protected boolean removeEldestEntry(Map.Entry<List<Object>, Object> eldest) {
			return size() > MOST_ANSWERS;
		}
	};

	/** @param pcaShare reduce to the principal components that explain this share of the variance before DBSCAN; empty: do not */
	public SplitStudy(ArchiveMap map, Representation representation, Distance distance, OptionalDouble pcaShare) {
		this.map = map;
		this.pcaShare = pcaShare;
		signals = Signals.of(map.map(), representation, distance);
	}

	@SuppressWarnings("unchecked")
	private <T> T answer(Supplier<T> compute, Object... question) {
		List<Object> key = List.of(question);
		synchronized (answers) {
			Object known = answers.get(key);
			if (known != null) {
				return (T) known;
			}
		}
		T found = compute.get();
		synchronized (answers) {
			answers.put(key, found);
		}
		return found;
	}

	/** The samples that are to be split, and where they are in the archive. */
	public ArchiveMap map() {
		return map;
	}

	/** The same in the representation and distance of this study. */
	public Signals signals() {
		return signals;
	}

	public OptionalDouble pcaShare() {
		return pcaShare;
	}

	private PointSet points(Workers workers) {
		return pcaShare.isEmpty() ? PointSet.of(signals) : reduced(workers).points();
	}

	private ReducedPoints reduced(Workers workers) {
		return answer(() -> ReducedPoints.of(signals, pcaShare.getAsDouble(), workers), "points");
	}

	/** @param minPts 1 or more */
	public KDistanceCurve curve(int minPts, Workers workers) {
		return answer(() -> {
			PointSet points = points(workers);
			return KDistanceCurve.of(
					minPts > points.size() ? new double[0] : KDistances.of(points, workers, minPts).sorted(minPts),
					minPts);
		}, "curve", minPts);
	}

	/**
	 * DBSCAN.
	 *
	 * @param epsilon 0 or more
	 * @param minPts  1 or more, the sample itself counted
	 */
	public Trial split(double epsilon, int minPts, Workers workers) {
		return answer(() -> new Trial(epsilon, minPts, Dbscan.cluster(points(workers), epsilon, minPts, workers)),
				"split",
				epsilon, minPts);
	}

	/** ε to begin with, which costs no more than the curve: half of the samples have their fifth nearest within it. */
	public double startEpsilon(Workers workers) {
		return curve(USUAL_MIN_PTS, workers).epsilonAt(START_SHARE);
	}

	/**
	 * ε and search chosen by trying, on held-out training positions.
	 *
	 * @param most time that it may take
	 * @throws UnfitSurveyException where that is over before there is an ε to be tried, and for a study with principal components, whose splits of held-out samples are not comparable
	 */
	public AutomaticChoice.Choice choose(int minPts, Duration most, long seed, Workers workers) {
		requireNotReduced(Messages.SplitStudy_andSearchAre);
		return answer(() -> {
			try {
				return AutomaticChoice.choose(signals, minPts, seed, most, workers);
			} catch (TooLittleTimeException e) {
				throw new UnfitSurveyException(Words.bind(Messages.SplitStudy_giveMoreTimeOrAnd, e.getMessage()));
			}
		}, "choose", minPts, most, seed);
	}

	/** Likewise the search alone. */
	public AutomaticChoice.Choice chooseSearch(double epsilon, int minPts, Duration most, long seed, Workers workers) {
		requireNotReduced(Messages.SplitStudy_aSearchIs);
		return answer(() -> AutomaticChoice.searchFor(signals, epsilon, minPts, seed, most, workers), "search", epsilon,
				minPts, most, seed);
	}

	private void requireNotReduced(String what) {
		if (pcaShare.isPresent()) {
			throw new UnfitSurveyException(
					Words.bind(Messages.SplitStudy_notHadOfAMap, what));
		}
	}

	/** How many principal components stand for the map; 0 where it is not reduced. */
	public int components(Workers workers) {
		return pcaShare.isEmpty() ? 0 : reduced(workers).components();
	}

	/** Values of ε for a sweep: where 20 % to 90 % of the samples have their fifth nearest; ascending, none twice. */
	public double[] gridEpsilons(Workers workers) {
		KDistanceCurve curve = curve(USUAL_MIN_PTS, workers);
		return Arrays.stream(GRID_SHARES).map(curve::epsilonAt).filter(e -> e > 0).distinct().toArray();
	}

	/** Values of minPts for a sweep. */
	public int[] gridMinPts() {
		return USUAL_GRID_MIN_PTS.clone();
	}

	/** @param epsilons ascending, at least one; @param minPts at least one */
	public SweepTable sweep(double[] epsilons, int[] minPts, Workers workers) {
		return answer(() -> {
			List<SweepCell> cells = new ArrayList<>();
			for (Sweep.Cell cell : Sweep.run(points(workers), epsilons, minPts, workers)) {
				Trial trial = new Trial(cell.epsilon(), cell.minPts(), cell.clustering());
				synchronized (answers) {
					answers.putIfAbsent(List.of("split", cell.epsilon(), cell.minPts()), trial);
				}
				cells.add(new SweepCell(cell.epsilon(), cell.minPts(), trial.clusters(), trial.noiseShare(),
						trial.largestShare(),
						Double.NaN, Double.NaN));
			}
			return new SweepTable(epsilons.clone(), minPts.clone(), List.copyOf(cells), "");
		}, "sweep", boxed(epsilons), boxed(minPts));
	}

	/**
	 * The same with the mean error of held-out training samples in each cell; test surveys play no part.
	 *
	 * @throws UnfitSurveyException for a study with principal components, whose splits of held-out samples are not comparable
	 */
	public SweepTable sweepWithErrors(double[] epsilons, int[] minPts, long seed, Workers workers) {
		requireNotReduced(Messages.SplitStudy_errorsOfASweepAre);
		return answer(() -> {
			SweepTable plain = sweep(epsilons, minPts, workers);
			HeldOutErrors errors = new HeldOutErrors(signals, seed);
			return new SweepTable(plain.epsilons(), plain.minPts(),
					List.copyOf(errors.fill(plain.cells(), epsilons, minPts, workers)), errors.basis());
		}, "errors", boxed(epsilons), boxed(minPts), seed);
	}

	private static List<Double> boxed(double[] values) {
		return Arrays.stream(values).boxed().toList();
	}

	private static List<Integer> boxed(int[] values) {
		return IntStream.of(values).boxed().toList();
	}
}
