package org.cairnfield.curation.measure;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.task.Workers;

/**
 * Processor time of matching on the calling thread alone, which other programs do not lengthen. Matchers take turns, so that a
 * machine that speeds up or slows down does so for all; the median of the rounds counts.
 */
public final class MatchTimes {

	private static final int WARM_UP = 2;
	private static final int ROUNDS = 5;
	/** Queries of a round. */
	public static final int MOST_QUERIES = 500;

	/** One way of matching. */
	@FunctionalInterface
	public interface Subject {
		/** Matches queries, on this thread; fewer where there are not so many. */
		void match(int queries);
	}

	private MatchTimes() {
	}

	/** A matcher asked about queries that are aligned to its map. */
	public static Subject of(Matcher matcher, SignalRows queries) {
		return most -> {
			Matcher.Session session = matcher.session();
			for (int q = 0; q < Math.min(most, queries.size()); q++) {
				session.nearest(queries, q);
			}
		};
	}

	/** Time of each over that of one of them, by name. */
	public static Map<String, Double> ratios(Map<String, Subject> subjects, String to, Workers workers) {
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
		long begin = now();
		subject.match(MOST_QUERIES);
		return Math.max(1, now() - begin);
	}

	/** Nanoseconds of this thread; of the clock where the JVM cannot tell. */
	private static long now() {
		ThreadMXBean threads = ManagementFactory.getThreadMXBean();
		return threads.isCurrentThreadCpuTimeSupported() ? threads.getCurrentThreadCpuTime() : System.nanoTime();
	}
}
