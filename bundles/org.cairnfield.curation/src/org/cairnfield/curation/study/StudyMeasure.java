package org.cairnfield.curation.study;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.core.stats.Bootstrap;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.measure.MatchTimes;
import org.cairnfield.curation.measure.PackCost;
import org.cairnfield.curation.measure.TestRun;
import org.cairnfield.curation.measure.Way;

/** Measures ways of matching one map on its test samples, beside both kinds of plain matching. */
final class StudyMeasure {

	/** A way of finding positions, to be measured. */
	interface Subject {

		/** Finds them for all test samples. */
		TestRun run(RadioMap test, Workers workers);

		/** To be timed on the same. */
		MatchTimes.Subject timed(RadioMap test);
	}

	/** One that looks for samples of the map. */
	@FunctionalInterface
	interface Matching extends Subject {

		Matcher matcher();

		/** What of the test samples it looks at. */
		default RadioMap asked(RadioMap test) {
			return test;
		}

		@Override
		default TestRun run(RadioMap test, Workers workers) {
			return TestRun.of(matcher(), matcher().signals().align(asked(test)), test, workers);
		}

		@Override
		default MatchTimes.Subject timed(RadioMap test) {
			return MatchTimes.of(matcher(), matcher().signals().align(asked(test)));
		}
	}

	/** Where a sample got no place. */
	private static final Interval NOT_PAIRED = new Interval(Double.NaN, Double.NaN, 0.95);

	private final StudyMap map;
	private final Matching nearest;
	private final Matching weighted;
	private final long seed;
	private Way plain;
	private Way plainWeighted;

	StudyMeasure(StudyMap map, Signals signals, long seed) {
		this.map = map;
		this.seed = seed;
		Neighbours neighbours = new Neighbours(signals);
		nearest = () -> TestRun.plain(neighbours);
		weighted = () -> TestRun.plainWeighted(neighbours);
	}

	StudyRow.Figures plain(Workers workers) {
		return figures(plainWay(workers), nearest, workers);
	}

	StudyRow.Figures plainWeighted(Workers workers) {
		return figures(weightedWay(workers), weighted, workers);
	}

	/** @param bytes that a device reads a query, as follows from the comparisons */
	StudyRow.Figures of(String name, Subject subject, DoubleUnaryOperator bytes, Workers workers) {
		TestRun run = subject.run(map.test(), workers);
		return figures(Way.of(name, name, run, bytes.applyAsDouble(run.comparisons()), plainWay(workers)), subject,
				workers);
	}

	private Way plainWay(Workers workers) {
		if (plain == null) {
			plain = Way.of(TestRun.PLAIN, TestRun.HOW_PLAIN, nearest.run(map.test(), workers),
					PackCost.plain(map.training()), null);
		}
		return plain;
	}

	private Way weightedWay(Workers workers) {
		if (plainWeighted == null) {
			plainWeighted = Way.of(TestRun.PLAIN_3W, TestRun.HOW_PLAIN_3W, weighted.run(map.test(), workers),
					PackCost.plain(map.training()), plainWay(workers));
		}
		return plainWeighted;
	}

	private StudyRow.Figures figures(Way way, Subject subject, Workers workers) {
		PositionErrors e = way.errors();
		Way other = weightedWay(workers);
		double[] errors = e.errorsMetres();
		double[] theirs = other.errors().errorsMetres();
		Interval toWeighted = errors.length == theirs.length ? Bootstrap.seeded(seed).ratioOfMeans(errors, theirs)
				: NOT_PAIRED;
		Map<String, Double> times = times(way.name(), subject, workers);
		return new StudyRow.Figures(e.meanMetres(), way.mean().low(), way.mean().high(), e.medianMetres(),
				e.rmseMetres(), e.p75Metres(), e.p90Metres(),
				e.p95Metres(), e.ce50Metres(), e.ce95Metres(), e.floorHitRate(), e.siteHitRate(), way.ratio(),
				way.ratioInterval().low(),
				way.ratioInterval().high(), e.meanMetres() / other.errors().meanMetres(), toWeighted.low(),
				toWeighted.high(), way.comparisons(),
				way.comparisonShare(), way.bytes(), way.byteShare(), times.get(way.name()),
				times.get(way.name()) / times.get(TestRun.PLAIN_3W));
	}

	/** To that of plain matching, by name, of one way and both kinds of plain matching. */
	private Map<String, Double> times(String name, Subject subject, Workers workers) {
		Map<String, MatchTimes.Subject> subjects = new LinkedHashMap<>();
		subjects.put(TestRun.PLAIN, nearest.timed(map.test()));
		subjects.put(TestRun.PLAIN_3W, weighted.timed(map.test()));
		subjects.putIfAbsent(name, subject.timed(map.test()));
		return MatchTimes.ratios(subjects, TestRun.PLAIN, workers);
	}
}
