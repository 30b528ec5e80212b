package org.cairnfield.benchmarks;

import java.nio.file.Path;
import java.util.Map;

/** Runs one benchmark in this JVM: {@code Main quick|full FOLDER NAME}. */
final class Main {

	private static final Map<String, Benchmark> ALL = Map.of(
			"dbscan", new DbscanBenchmark(),
			"curve", new CurveBenchmark(),
			"sweep", new SweepBenchmark(),
			"correlation", new CorrelationBenchmark(),
			"matching", new MatchingBenchmark(),
			"growth", new GrowthBenchmark(),
			"archive", new ArchiveBenchmark(),
			"storage", new StorageBenchmark(),
			"memory", new MemoryBenchmark(),
			"others", new OthersBenchmark());

	private Main() {
	}

	public static void main(String[] args) throws Exception {
		boolean quick = args[0].equals("quick");
		Harness harness = new Harness(args[2], quick, Path.of(args[1]));
		try (harness) {
			harness.describeMachine();
			ALL.get(args[2]).run(harness);
		}
		if (harness.disagreements() > 0) {
			System.exit(1);
		}
	}
}
