package org.cairnfield.benchmarks;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.ForkJoinPool;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;

/**
 * Work in a JVM of its own with a heap of a given size. That it gets through proves the bound: peak usage says
 * little, since garbage is left lying until there is need. The map itself is in that heap too.
 */
final class Heap {

	private static final int AIM_MIB = 512;
	private static final int SMALLEST_MIB = 32;

	private Heap() {
	}

	/** Halves the heap from 512 MiB until the work no longer gets through, and reports. */
	static void report(Harness harness, String data, String work, Path map, double epsilon, int noise)
			throws IOException, InterruptedException {
		int least = 0;
		String answer = null;
		for (int mib = AIM_MIB; mib >= SMALLEST_MIB; mib /= 2) {
			String got = inHeap(mib, work, map, epsilon);
			if (got == null) {
				break;
			}
			least = mib;
			answer = got;
			if (mib == AIM_MIB) {
				harness.figure(data, work + ", peak usage in a heap of 512 MiB", "MiB",
						Double.parseDouble(got.split(" ")[0]), "≤ 512");
			}
		}
		if (answer == null) {
			harness.say("  %s does not get through with %d MiB", work, AIM_MIB);
			return;
		}
		harness.figure(data, work + ", smallest heap of 512, 256, … that does", "MiB", least, "≤ 512");
		harness.say("    in that heap: %s s", answer.split(" ")[1]);
		harness.agree("noise found in the small heap", Integer.parseInt(answer.split(" ")[2]) == noise);
	}

	/** What {@link #main} printed, or null where memory did not suffice. */
	private static String inHeap(int mib, String work, Path map, double epsilon)
			throws IOException, InterruptedException {
		Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
				"-Xmx" + mib + "m", "-XX:+UseParallelGC", "-cp", System.getProperty("java.class.path"),
				Heap.class.getName(), work, map.toString(), Double.toString(epsilon))
				.redirectError(ProcessBuilder.Redirect.DISCARD).start();
		String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
		return process.waitFor() == 0 ? printed : null;
	}

	public static void main(String[] args) throws IOException {
		RadioMap map = Maps.read(Path.of(args[1]));
		double epsilon = Double.parseDouble(args[2]);
		System.gc();
		for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
			pool.resetPeakUsage();
		}
		long start = System.nanoTime();
		Signals signals = Signals.of(map);
		Workers workers = Workers.on(ForkJoinPool.commonPool(), Machine.cores(), Progress.NONE);
		Clustering found = Dbscan.cluster(signals, epsilon, Densities.MIN_PTS, workers);
		if (args[0].equals("correlation")) {
			NoiseCorrelation.place(signals, found, workers);
		}
		double seconds = (System.nanoTime() - start) / 1e9;
		long peak = 0; // the pools need not peak together: at most this
		for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
			peak += pool.getType() == MemoryType.HEAP ? pool.getPeakUsage().getUsed() : 0;
		}
		System.out.println(String.format(Locale.ROOT, "%.1f %.2f %d", peak / 1048576.0, seconds, found.noise()));
	}
}
