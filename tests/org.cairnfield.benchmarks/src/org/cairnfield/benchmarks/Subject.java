package org.cairnfield.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/**
 * Something measured, with its measured runs and what the last of them answered. Short work is repeated within a run,
 * as processor time comes in steps of 10 ms.
 */
final class Subject<T> {

	private static final double SHORTEST_RUN_SECONDS = 0.4;
	private static final double LONG_SECONDS = 1;

	private final String name;
	private final Supplier<T> work;
	private final List<Double> wallSeconds = new ArrayList<>();
	private final List<Double> cpuSeconds = new ArrayList<>();
	private int repeats = 1;
	private T result;

	Subject(String name, Supplier<T> work) {
		this.name = name;
		this.work = work;
	}

	String name() {
		return name;
	}

	T result() {
		return result;
	}

	int runs() {
		return wallSeconds.size();
	}

	/** Two passes, one if it is long; the last says how often a run repeats the work. */
	void warmUp() {
		double seconds = pass();
		if (seconds < LONG_SECONDS) {
			seconds = pass();
		}
		repeats = (int) Math.max(1, Math.min(1000, Math.ceil(SHORTEST_RUN_SECONDS / seconds)));
	}

	private double pass() {
		long start = System.nanoTime();
		result = work.get();
		return (System.nanoTime() - start) / 1e9;
	}

	/** Forgets the runs so far, which then count as warming up. */
	void forgetRuns() {
		wallSeconds.clear();
		cpuSeconds.clear();
	}

	/** One run: wall time, and processor time of the whole JVM, its compiler and collector included. */
	void measure() {
		result = null;
		System.gc();
		long cpu = Machine.cpuNanos();
		long start = System.nanoTime();
		T answer = work.get();
		for (int i = 1; i < repeats; i++) {
			answer = work.get();
		}
		wallSeconds.add((System.nanoTime() - start) / 1e9 / repeats);
		cpuSeconds.add((Machine.cpuNanos() - cpu) / 1e9 / repeats);
		result = answer;
	}

	double wall() {
		return median(wallSeconds);
	}

	double shortest() {
		return wallSeconds.stream().mapToDouble(Double::doubleValue).min().orElse(Double.NaN);
	}

	double longest() {
		return wallSeconds.stream().mapToDouble(Double::doubleValue).max().orElse(Double.NaN);
	}

	double cpu() {
		return median(cpuSeconds);
	}

	private static double median(List<Double> values) {
		double[] sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
		Arrays.sort(sorted);
		int n = sorted.length;
		return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
	}
}
