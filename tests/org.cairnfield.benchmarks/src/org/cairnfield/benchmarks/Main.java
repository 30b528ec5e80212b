package org.cairnfield.benchmarks;

import java.util.Map;

/** Runs one benchmark in this JVM: {@code Main quick|full FOLDER NAME}. */
final class Main {

	private static final Map<String, Benchmark> ALL = Map.ofEntries(
			Map.entry("dbscan", new DbscanBenchmark()),
			Map.entry("curve", new CurveBenchmark()),
			Map.entry("sweep", new SweepBenchmark()),
			Map.entry("correlation", new CorrelationBenchmark()),
			Map.entry("matching", new MatchingBenchmark()),
			Map.entry("growth", new GrowthBenchmark()),
			Map.entry("archive", new ArchiveBenchmark()),
			Map.entry("storage", new StorageBenchmark()),
			Map.entry("savepoints", new SavePointsBenchmark()),
			Map.entry("pack", new PackBenchmark()),
			Map.entry("memory", new MemoryBenchmark()),
			Map.entry("others", new OthersBenchmark()));

	private Main() {
	}

	public static void main(String[] args) throws Exception {
		Harness.run(ALL.get(args[2]), args);
	}
}
