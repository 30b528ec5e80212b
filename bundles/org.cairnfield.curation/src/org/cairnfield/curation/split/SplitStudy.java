package org.cairnfield.curation.split;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.SplitChoice;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.PointSet;
import org.cairnfield.core.cluster.Sweep;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;
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
		return pcaShare.isEmpty() ? PointSet.of(signals)
				: answer(() -> ReducedPoints.of(signals, pcaShare.getAsDouble(), workers), "points").points();
	}

	/** @param minPts 1 or more */
	public KDistanceCurve curve(int minPts, Workers workers) {
		return answer(() -> {
			double[] ascending = Split.curve(points(workers), minPts, workers);
			return new KDistanceCurve(minPts, ascending, Split.elbow(ascending));
		}, "curve", minPts);
	}

	/**
	 * DBSCAN.
	 *
	 * @param epsilon 0 or more
	 * @param minPts  1 or more, the sample itself counted
	 */
	public Trial split(double epsilon, int minPts, Workers workers) {
		return answer(() -> new Trial(epsilon, minPts, Dbscan.cluster(points(workers), epsilon, minPts, workers)), "split",
				epsilon, minPts);
	}

	/** Parameters to begin with that cost no more than the curve. */
	public Suggestion start(Workers workers) {
		return new Suggestion(curve(USUAL_MIN_PTS, workers).epsilonAt(START_SHARE), USUAL_MIN_PTS,
				"half of the samples have their fifth nearest within ε; on real maps the elbow is mostly too large");
	}

	/** Parameters chosen by trying, on held-out training positions. A map that is reduced gets {@link #start}. */
	public Suggestion suggest(long seed, Workers workers) {
		if (pcaShare.isPresent()) {
			return start(workers);
		}
		return answer(() -> {
			SplitChoice.Choice choice = SplitChoice.choose(signals, seed, workers);
			return new Suggestion(choice.epsilon(), choice.minPts(), String.format(Locale.ROOT,
					"smallest mean error of %d pairs tried on held-out training positions, among those that compare at most %.0f %% of what plain matching does",
					choice.tried().size(), 100 * SplitChoice.BUDGET_SHARE));
		}, "suggest", seed);
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
				cells.add(new SweepCell(cell.epsilon(), cell.minPts(), trial.clusters(), trial.noiseShare(), trial.largestShare(),
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
		if (pcaShare.isPresent()) {
			throw new UnfitSurveyException("errors of a sweep are not computed for a map reduced to principal components");
		}
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
