package org.cairnfield.curation.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.propose.Proposals;

/**
 * Several ways of matching on the same test samples: plain nearest neighbour, plain with three weighted,
 * the split with noise left out, the split with every proposal approved, and the automatic choice.
 *
 * @param variants in that order, "plain" first
 * @param choice   what was chosen and what was tried for it
 */
public record Measurement(List<Variant> variants, AutomaticChoice.Choice choice) {

	/**
	 * @param proposals of a split of the cleaned training map
	 * @param test      samples that played no part in the split
	 */
	public static Measurement of(Proposals proposals, RadioMap test, long seed, Workers workers) {
		Signals signals = proposals.split().signals();
		AutomaticChoice.Choice choice = AutomaticChoice.choose(signals, seed, workers);
		Map<String, Matcher> matchers = new LinkedHashMap<>();
		Neighbours neighbours = new Neighbours(signals);
		matchers.put(TestRun.PLAIN, TestRun.plain(neighbours));
		matchers.put(TestRun.PLAIN_3W, TestRun.plainWeighted(neighbours));
		matchers.put(TestRun.SPLIT, TestRun.split(TestRun.clusters(signals, proposals.split().clustering())));
		matchers.put("split+proposals", TestRun.split(TestRun.clusters(signals, proposals.approved())));
		matchers.put("chosen", choice.matcher());
		SignalRows queries = signals.align(test);
		MatchTimes times = MatchTimes.of(matchers, queries, workers);
		List<Variant> variants = new ArrayList<>();
		matchers.forEach((name, matcher) -> variants.add(
				variant(name, how(name, choice), matcher, queries, test, times.ratio(name, TestRun.PLAIN), seed, workers)));
		return new Measurement(List.copyOf(variants), choice);
	}

	private static String how(String name, AutomaticChoice.Choice choice) {
		return switch (name) {
		case TestRun.PLAIN -> TestRun.HOW_PLAIN;
		case TestRun.PLAIN_3W -> TestRun.HOW_PLAIN_3W;
		case TestRun.SPLIT -> TestRun.HOW_SPLIT;
		case "split+proposals" -> "the same, noise in the cluster proposed";
		default -> choice.splitting() + "; " + choice.plan() + "; " + choice.matcher().voting();
		};
	}

	private static Variant variant(String name, String how, Matcher matcher, SignalRows queries, RadioMap test,
			double timeRatio, long seed, Workers workers) {
		TestRun run = TestRun.of(matcher, queries, test, workers);
		return new Variant(name, how, run.errors(), run.mean(seed), run.comparisons(), timeRatio);
	}

	/** The variant of a name. */
	public Variant variant(String name) {
		return variants.stream().filter(v -> v.name().equals(name)).findFirst()
				.orElseThrow(() -> new IllegalArgumentException("no variant " + name));
	}
}
