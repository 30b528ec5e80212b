package org.cairnfield.benchmarks;

/** One question, answered by figures that the harness prints. */
interface Benchmark {

	void run(Harness harness) throws Exception;
}
