package org.cairnfield.benchmarks;

import java.util.Locale;
import java.util.SplittableRandom;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;

/** What a million samples with 20 readings each keep in memory. */
final class MemoryBenchmark implements Benchmark {

	private static final int HEARD = 20;
	private static final int ACCESS_POINTS = 2000;

	@Override
	public void run(Harness harness) {
		int samples = harness.quick() ? 100_000 : 1_000_000;
		long before = used();
		RadioMap map = build(samples);
		long kept = used() - before;
		String data = String.format(Locale.ROOT, "%,d samples × %d readings", map.size(), HEARD);
		harness.say("%n%s", data);
		harness.figure(data, "kept by the map", "MiB", kept / 1048576.0, samples == 1_000_000 ? "< 200" : "< 20");
		harness.figure(data, "a sample", "bytes", (double) kept / samples, "");
		harness.agree("readings counted", map.readingCount() == (long) samples * HEARD);
	}

	private static RadioMap build(int samples) {
		SplittableRandom random = new SplittableRandom(1);
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int a = 0; a < ACCESS_POINTS; a++) {
			builder.accessPoint("point " + a);
		}
		for (int s = 0; s < samples; s++) {
			builder.sample("Tide House", s % 4, random.nextDouble(100), random.nextDouble(50));
			builder.device("guide");
			builder.time(s);
			int first = random.nextInt(ACCESS_POINTS - HEARD);
			for (int k = 0; k < HEARD; k++) {
				builder.reading(first + k, -30 - random.nextInt(60));
			}
		}
		return builder.build();
	}

	private static long used() {
		for (int i = 0; i < 3; i++) {
			System.gc();
		}
		return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
	}
}
