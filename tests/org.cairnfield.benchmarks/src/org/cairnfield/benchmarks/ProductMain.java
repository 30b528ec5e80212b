package org.cairnfield.benchmarks;

import java.util.Map;

/** Runs a benchmark of the product as it is built, with all its libraries: {@code ProductMain quick|full FOLDER NAME}. */
final class ProductMain {

	private static final Map<String, Benchmark> ALL = Map.of("intake", new IntakeBenchmark(), "million",
			new MillionBenchmark());

	private ProductMain() {
	}

	public static void main(String[] args) throws Exception {
		Harness.run(ALL.get(args[2]), args);
	}
}
