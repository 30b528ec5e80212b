package org.cairnfield.curation.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.cairnfield.core.stats.Bootstrap;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.core.stats.SignedRank;
import org.cairnfield.curation.study.StudyRow.Figures;

/**
 * What a study found, and what follows from its rows over all maps.
 *
 * @param rows     map by map, method by method
 * @param averages of each method over the maps on which it was measured, in the order of the methods
 * @param best     the method of the smallest mean rank, of those that split; empty where nothing was measured
 * @param seed     of all that was drawn
 */
public record StudyTable(List<StudyRow> rows, List<Average> averages, Optional<String> best, long seed) {

	/**
	 * One method over maps.
	 *
	 * @param maps         on which it was measured
	 * @param toPlain      mean error to that of plain matching, and its 95 % bootstrap interval, maps drawn
	 * @param toPlain3w    likewise to the three nearest, weighted
	 * @param matchTime    to plain matching, likewise
	 * @param rank         mean over the maps of the rank of its mean error among the methods measured there; equals share ranks
	 * @param againstPlain errors normalised to plain matching, paired by map, against those of plain matching
	 * @param against3w    likewise against the three nearest, weighted
	 * @param againstBest  likewise against {@link StudyTable#best}; of that itself there is no pair
	 */
	public record Average(String method, int maps, Mean toPlain, Mean toPlain3w, Mean matchTime, double comparisonShare,
			double byteShare,
			double floorHitRate, double offlineS, double rank, SignedRank againstPlain, SignedRank against3w,
			SignedRank againstBest) {
	}

	/** Of values, one a map. */
	public record Mean(double value, Interval interval) {

		static Mean of(double[] values, long seed) {
			return new Mean(Arrays.stream(values).average().orElse(Double.NaN), Bootstrap.seeded(seed).mean(values));
		}
	}

	/** Of rows that are done so far. */
	public static StudyTable of(List<StudyRow> rows, long seed) {
		Map<String, Double> ranks = ranks(rows);
		Map<String, List<StudyRow>> byMethod = rows.stream().filter(StudyRow::isMeasured)
				.collect(Collectors.groupingBy(StudyRow::method, LinkedHashMap::new, Collectors.toList()));
		Optional<String> best = ranks.keySet().stream().filter(method -> StudyMethod.of(method).isCandidate())
				.min(Comparator.comparing(ranks::get));
		List<Average> averages = new ArrayList<>();
		for (StudyMethod method : StudyMethod.all()) {
			List<StudyRow> of = byMethod.get(method.code());
			if (of != null) {
				averages.add(average(method.code(), of, byMethod, ranks.get(method.code()), best, seed));
			}
		}
		return new StudyTable(List.copyOf(rows), List.copyOf(averages), best, seed);
	}

	private static Average average(String method, List<StudyRow> of, Map<String, List<StudyRow>> byMethod, double rank,
			Optional<String> best, long seed) {
		return new Average(method, of.size(), Mean.of(values(of, Figures::toPlain), seed),
				Mean.of(values(of, Figures::toPlain3w), seed),
				Mean.of(values(of, Figures::matchTimeRatio), seed), mean(of, Figures::comparisonShare),
				mean(of, Figures::byteShare),
				mean(of, Figures::floorHitRate),
				of.stream().mapToDouble(StudyRow::offlineS).average().orElse(Double.NaN), rank,
				paired(of, byMethod.getOrDefault(StudyMethod.PLAIN.code(), List.of())),
				paired(of, byMethod.getOrDefault(StudyMethod.PLAIN_3W.code(), List.of())),
				paired(of, best.map(byMethod::get).orElse(List.of())));
	}

	/** Errors normalised to plain matching, of maps on which both were measured. */
	private static SignedRank paired(List<StudyRow> of, List<StudyRow> other) {
		Map<String, Double> theirs = new HashMap<>();
		other.forEach(row -> theirs.put(row.map(), row.figures().toPlain()));
		List<StudyRow> both = of.stream().filter(row -> theirs.containsKey(row.map())).toList();
		return SignedRank.of(values(both, Figures::toPlain),
				both.stream().mapToDouble(row -> theirs.get(row.map())).toArray());
	}

	private static double[] values(List<StudyRow> rows, ToDoubleFunction<Figures> of) {
		return rows.stream().mapToDouble(row -> of.applyAsDouble(row.figures())).toArray();
	}

	private static double mean(List<StudyRow> rows, ToDoubleFunction<Figures> of) {
		return Arrays.stream(values(rows, of)).average().orElse(Double.NaN);
	}

	/** Mean rank of each method over the maps; 1 is the smallest mean error. */
	private static Map<String, Double> ranks(List<StudyRow> rows) {
		Map<String, List<StudyRow>> byMap = rows.stream().filter(StudyRow::isMeasured)
				.collect(Collectors.groupingBy(StudyRow::map, LinkedHashMap::new, Collectors.toList()));
		Map<String, List<Double>> ranks = new LinkedHashMap<>();
		byMap.values().forEach(of -> of
				.forEach(row -> ranks.computeIfAbsent(row.method(), m -> new ArrayList<>()).add(rank(row, of))));
		Map<String, Double> means = new LinkedHashMap<>();
		ranks.forEach((method, each) -> means.put(method,
				each.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN)));
		return means;
	}

	private static double rank(StudyRow row, List<StudyRow> of) {
		double error = row.figures().meanErrorM();
		long less = of.stream().filter(other -> other.figures().meanErrorM() < error).count();
		long equal = of.stream().filter(other -> other.figures().meanErrorM() == error).count();
		return less + (equal + 1) / 2.0;
	}

	/** Names of the maps, in order. */
	public List<String> maps() {
		return rows.stream().map(StudyRow::map).distinct().toList();
	}

	/** Rows of one map. */
	public List<StudyRow> of(String map) {
		return rows.stream().filter(row -> row.map().equals(map)).toList();
	}

	/** The measured row of a method on a map; empty where it was not asked for, or skipped. */
	public Optional<StudyRow> row(String map, StudyMethod method) {
		return rows.stream()
				.filter(row -> row.map().equals(map) && row.method().equals(method.code()) && row.isMeasured())
				.findFirst();
	}

	/** What was not measured, and why. */
	public List<StudyRow> skipped() {
		return rows.stream().filter(row -> !row.isMeasured()).toList();
	}
}
