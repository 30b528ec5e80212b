package org.cairnfield.curation.measure;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.task.Workers;

/**
 * Wall time of matching on the calling thread alone. Matchers take turns, so that a machine that speeds up
 * or slows down does so for all; the median of the rounds counts.
 */
final class MatchTimes {

	private static final int WARM_UP = 2;
	private static final int ROUNDS = 5;
	private static final int MOST_QUERIES = 500;

	/** One way of matching. */
	record Subject(Matcher matcher, SignalRows queries) {
	}

	private MatchTimes() {
	}

	/** Time of each over that of one of them, by name. */
	static Map<String, Double> ratios(Map<String, Subject> subjects, String to, Workers workers) {
		Map<String, double[]> rounds = new LinkedHashMap<>();
		workers.progress().begin("timing", WARM_UP + ROUNDS);
		for (int round = -WARM_UP; round < ROUNDS; round++) {
			for (Map.Entry<String, Subject> entry : subjects.entrySet()) {
				workers.checkCancelled();
				double taken = once(entry.getValue());
				if (round >= 0) {
					rounds.computeIfAbsent(entry.getKey(), k -> new double[ROUNDS])[round] = taken;
				}
			}
			workers.progress().advance(1);
		}
		rounds.values().forEach(Arrays::sort);
		Map<String, Double> ratios = new LinkedHashMap<>();
		rounds.forEach((name, taken) -> ratios.put(name, taken[ROUNDS / 2] / rounds.get(to)[ROUNDS / 2]));
		return ratios;
	}

	private static double once(Subject subject) {
		Matcher.Session session = subject.matcher.session();
		int n = Math.min(MOST_QUERIES, subject.queries.size());
		long begin = System.nanoTime();
		for (int q = 0; q < n; q++) {
			session.nearest(subject.queries, q);
		}
		return Math.max(1, System.nanoTime() - begin);
	}
}
