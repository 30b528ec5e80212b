package org.cairnfield.curation.propose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.effect.MeasuredSet;
import org.cairnfield.curation.run.FileArchive;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.curation.split.SmallRuns;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.core.correlate.ProposalRule;

/**
 * How well each doubt foretells that approving a proposal costs error on held-out positions, and that the sample is faulty: the
 * area under the ROC curve, 0.5 where it foretells nothing.
 *
 * @param proposals made
 * @param costly    of those for which both homes do something and not the same, how many cost more in the cluster than in the pool
 * @param decided   of how many
 * @param faulty    proposals on samples that were planted; −1 where nothing was planted
 * @param toPool    area by doubt: the cluster costs more than the pool
 * @param toFaulty  area by doubt: the sample is faulty; NaN where nothing was planted
 * @param rates     how often advice is right
 */
record DoubtScores(String set, int proposals, int costly, int decided, int faulty, Map<String, Double> toPool,
		Map<String, Double> toFaulty,
		AdviceRates rates) {

	/** Each doubt as a number that grows with it. */
	static final Map<String, ToDoubleFunction<Evidence>> DOUBTS = doubts();

	private static Map<String, ToDoubleFunction<Evidence>> doubts() {
		Map<String, ToDoubleFunction<Evidence>> doubts = new LinkedHashMap<>();
		doubts.put("nearest elsewhere", e -> e.agrees() ? 0 : 1);
		doubts.put("margin", e -> -e.margin());
		doubts.put("strength", e -> -e.strengthR());
		doubts.put("other floor", e -> Double.isNaN(e.floorMetres()) ? 1 : 0);
		doubts.put("far", e -> Double.isNaN(e.floorMetres()) ? Double.MAX_VALUE : e.floorMetres());
		doubts.put("floor votes", e -> -e.floorVotes());
		doubts.put("place", Evidence::placeScore);
		doubts.put("readings", Evidence::readingsScore);
		doubts.put("nearest distance", Evidence::nearestDistance);
		return doubts;
	}

	static DoubtScores of(String name, MeasuredSet set, Set<Integer> planted, Workers workers) {
		FileRun run = FileRun.proposed(FileArchive.of(SmallRuns.intake(set.map().map(), Integer::toString)),
				SplitRequest.automatic(1), ProposalRule.USUAL, workers);
		SplitOnMap split = run.onMap();
		EvidenceTable table = EvidenceTable.of(split, workers);
		List<Evidence> made = table.all().stream().filter(Evidence::made).toList();
		List<Evidence> decided = made.stream().filter(e -> costs(e) != 0).toList();
		Predicate<Evidence> isCostly = e -> costs(e) > 0;
		Predicate<Evidence> isFaulty = e -> planted != null && planted.contains(Integer.parseInt(e.sample().sample())); // named by its place in the map
		Map<String, Double> toPool = new LinkedHashMap<>();
		Map<String, Double> toFaulty = new LinkedHashMap<>();
		DOUBTS.forEach((title, doubt) -> {
			toPool.put(title, area(decided, doubt, isCostly));
			toFaulty.put(title, planted == null ? Double.NaN : area(made, doubt, isFaulty));
		});
		return new DoubtScores(name, made.size(), (int) decided.stream().filter(isCostly).count(), decided.size(),
				planted == null ? -1 : (int) made.stream().filter(isFaulty).count(), toPool, toFaulty, table.rates());
	}

	private static double costs(Evidence e) {
		return e.outlook().proposed().errorChangeMetres() - e.outlook().pool().errorChangeMetres();
	}

	/** Mann and Whitney: the share of pairs of a positive and a negative that the doubt puts in order, ties halved. */
	static double area(List<Evidence> all, ToDoubleFunction<Evidence> doubt, Predicate<Evidence> isPositive) {
		double[] value = all.stream().mapToDouble(doubt).map(v -> Double.isNaN(v) ? 0 : v).toArray();
		boolean[] positive = new boolean[value.length];
		IntStream.range(0, value.length).forEach(i -> positive[i] = isPositive.test(all.get(i)));
		List<Integer> order = new ArrayList<>(IntStream.range(0, value.length).boxed().toList());
		order.sort(Comparator.comparingDouble(i -> value[i]));
		double ranks = 0;
		long positives = 0;
		for (int from = 0; from < value.length;) {
			int to = from;
			while (to < value.length && value[order.get(to)] == value[order.get(from)]) {
				to++;
			}
			for (int i = from; i < to; i++) {
				if (positive[order.get(i)]) {
					ranks += (from + 1 + to) / 2.0;
					positives++;
				}
			}
			from = to;
		}
		double negatives = value.length - positives;
		return positives == 0 || negatives == 0 ? Double.NaN
				: (ranks - positives * (positives + 1) / 2.0) / (positives * negatives);
	}

	static double[] column(List<DoubtScores> all, String doubt, boolean faulty) {
		return all.stream().mapToDouble(s -> (faulty ? s.toFaulty() : s.toPool()).get(doubt))
				.filter(v -> !Double.isNaN(v)).toArray();
	}

	static String text(double area) {
		return Double.isNaN(area) ? "–" : String.format(java.util.Locale.ROOT, "%.2f", area);
	}

	static double median(double[] values) {
		return values.length == 0 ? Double.NaN : Arrays.stream(values).sorted().toArray()[values.length / 2];
	}
}
