package org.cairnfield.curation.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.core.stats.Bootstrap;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.Outcome;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.UnfitSurveyException;

/**
 * A kept split measured on the test surveys of its scope: plain matching, the split with its noise left out, the split
 * with approved samples in their clusters, side by side. The same archive gives the same figures, whoever asks; match
 * times are not among them.
 *
 * @param columns     "plain", "plain-3w", "split", "split+approved", in that order
 * @param samples     of the map
 * @param testSamples matched by each
 * @param approved    samples that joined a cluster
 */
public record SplitMeasurement(List<Column> columns, int samples, int testSamples, int approved) {

	/**
	 * One way of matching.
	 *
	 * @param how              for a person
	 * @param errors           of all test samples
	 * @param meanInterval     95 % bootstrap interval of the mean error, metres
	 * @param ratio            mean error to that of plain
	 * @param ratioInterval    95 % bootstrap interval of that, both drawn on the same test samples
	 * @param comparisons      fingerprints compared per query, mean
	 * @param comparisonShare  of those that plain compares
	 */
	public record Column(String name, String how, PositionErrors errors, Interval meanInterval, double ratio,
			Interval ratioInterval, double comparisons, double comparisonShare) {
	}

	/**
	 * @param test samples of the test surveys in the scope of the split
	 * @throws UnfitSurveyException where there are none, or the split has no cluster
	 */
	public static SplitMeasurement of(Outcome outcome, RadioMap test, long seed, Workers workers) {
		SplitOnMap split = outcome.split();
		if (test.size() == 0) {
			throw new UnfitSurveyException("there is no test survey in the scope of split " + split.id()
					+ ", so nothing can be measured; take one in as a test survey");
		}
		if (split.clustering().clusters() == 0) {
			throw new UnfitSurveyException("split " + split.id() + " has no cluster, so nothing can be found by it");
		}
		Signals signals = split.signals();
		Neighbours neighbours = new Neighbours(signals);
		Map<String, Matcher> matchers = new LinkedHashMap<>();
		matchers.put(TestRun.PLAIN, TestRun.plain(neighbours));
		matchers.put(TestRun.PLAIN_3W, TestRun.plainWeighted(neighbours));
		matchers.put(TestRun.SPLIT, TestRun.split(TestRun.clusters(signals, split.clustering())));
		matchers.put("split+approved", TestRun.split(TestRun.clusters(signals, outcome.clustering())));
		SignalRows queries = signals.align(test);
		Bootstrap bootstrap = Bootstrap.seeded(seed);
		List<Column> columns = new ArrayList<>();
		for (Map.Entry<String, Matcher> entry : matchers.entrySet()) {
			TestRun run = TestRun.of(entry.getValue(), queries, test, workers);
			PositionErrors errors = run.errors();
			PositionErrors plain = columns.isEmpty() ? errors : columns.get(0).errors();
			columns.add(new Column(entry.getKey(), how(entry.getKey(), outcome.joined()), errors,
					run.mean(seed), errors.meanMetres() / plain.meanMetres(),
					bootstrap.ratioOfMeans(errors.errorsMetres(), plain.errorsMetres()), run.comparisons(),
					run.comparisons() / signals.size()));
		}
		return new SplitMeasurement(List.copyOf(columns), signals.size(), test.size(), outcome.joined());
	}

	private static String how(String name, int joined) {
		return switch (name) {
		case TestRun.PLAIN -> TestRun.HOW_PLAIN;
		case TestRun.PLAIN_3W -> TestRun.HOW_PLAIN_3W;
		case TestRun.SPLIT -> TestRun.HOW_SPLIT;
		default -> "the same with " + joined + (joined == 1 ? " approved sample" : " approved samples") + " in their clusters";
		};
	}

	/** By name. */
	public Column column(String name) {
		return columns.stream().filter(c -> c.name().equals(name)).findFirst()
				.orElseThrow(() -> new IllegalArgumentException("no column " + name));
	}
}
