package org.cairnfield.curation.measure;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.task.Workers;

/**
 * Wall time of matching on the calling thread alone. Matchers take turns, so that a machine that speeds up
 * or slows down does so for all; the median of the rounds counts.
 */
final class MatchTimes {

	private static final int ROUNDS = 5;
	private static final int MOST_QUERIES = 500;

	private final Map<String, Double> nanos = new HashMap<>();

	private MatchTimes() {
	}

	static MatchTimes of(Map<String, Matcher> matchers, SignalRows queries, Workers workers) {
		MatchTimes times = new MatchTimes();
		Map<String, double[]> rounds = new HashMap<>();
		workers.progress().begin("timing", ROUNDS + 1L);
		for (int round = -1; round < ROUNDS; round++) { // round −1 warms up
			for (Map.Entry<String, Matcher> entry : matchers.entrySet()) {
				workers.checkCancelled();
				double taken = once(entry.getValue(), queries);
				if (round >= 0) {
					rounds.computeIfAbsent(entry.getKey(), k -> new double[ROUNDS])[round] = taken;
				}
			}
			workers.progress().advance(1);
		}
		rounds.forEach((name, taken) -> {
			Arrays.sort(taken);
			times.nanos.put(name, taken[ROUNDS / 2]);
		});
		return times;
	}

	private static double once(Matcher matcher, SignalRows queries) {
		Matcher.Session session = matcher.session();
		int n = Math.min(MOST_QUERIES, queries.size());
		long begin = System.nanoTime();
		for (int q = 0; q < n; q++) {
			session.nearest(queries, q);
		}
		return Math.max(1, System.nanoTime() - begin);
	}

	/** Time of one matcher over that of another. */
	double ratio(String of, String to) {
		return nanos.get(of) / nanos.get(to);
	}
}
