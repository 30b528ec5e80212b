package org.cairnfield.spark;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.scheduler.SparkListener;
import org.apache.spark.scheduler.SparkListenerTaskEnd;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;

/** Split and proposals of simulated sites, on Spark with two threads and by the core on one: {@code SparkBenchmark quick|full}. */
final class SparkBenchmark {

	private static final double EPSILON = 45;
	private static final int MIN_PTS = 3;
	private static final int SAMPLES_OF_TEN_SITES = 400;

	private final AtomicLong shuffled = new AtomicLong();
	private final JavaSparkContext spark = LocalSpark.context();

	private SparkBenchmark() {
		spark.sc().addSparkListener(new SparkListener() {
			@Override
			public void onTaskEnd(SparkListenerTaskEnd end) {
				shuffled.addAndGet(end.taskMetrics().shuffleWriteMetrics().bytesWritten());
			}
		});
	}

	public static void main(String[] args) throws Exception {
		SparkBenchmark benchmark = new SparkBenchmark();
		boolean quick = args[0].equals("quick");
		benchmark.once(5, false); // warm
		System.out.println(
				"  sites  samples    core, s  (CPU s)   Spark, s  (CPU s)  sites/s  overhead  bytes shuffled a sample");
		boolean same = true;
		for (int campuses : quick ? new int[] { 10, 20, 40 } : new int[] { 50, 100, 200, 400 }) {
			same &= benchmark.once(campuses, true);
		}
		benchmark.spark.stop();
		if (!same) {
			System.err.println("Spark and core disagree");
			System.exit(1);
		}
	}

	private record Took(double seconds, double cpuSeconds) {
		static Took since(long wall, long cpu) {
			return new Took((System.nanoTime() - wall) / 1e9, (cpu() - cpu) / 1e9);
		}

		static long cpu() {
			return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
					.getProcessCpuTime();
		}
	}

	private boolean once(int campuses, boolean print) throws Exception {
		RadioMap map = ManySitesTest.sites(campuses, SAMPLES_OF_TEN_SITES);
		long wall = System.nanoTime();
		long cpu = Took.cpu();
		Signals signals = Signals.of(map);
		Clustering wanted = Dbscan.cluster(signals, EPSILON, MIN_PTS, Workers.inline());
		List<NoisePlacement> placed = NoiseCorrelation.place(signals, wanted, Workers.inline());
		Took core = Took.since(wall, cpu);
		shuffled.set(0);
		wall = System.nanoTime();
		cpu = Took.cpu();
		SpreadMap spread = LocalSpark.spread(spark, map);
		Clustering got = SparkDbscan.cluster(spark, spread, EPSILON, MIN_PTS, Integer.MAX_VALUE);
		List<NoisePlacement> found = SparkProposals.place(spark, spread, got, new ProposalRule(0, -1));
		Took onSpark = Took.since(wall, cpu);
		Thread.sleep(500); // the listener hears of the last task a little later
		if (print) {
			System.out.printf(Locale.ROOT, "%7d %8d %10.2f %9.2f %10.2f %9.2f %8.0f %9.2f %10.0f%n", map.sites().size(),
					map.size(), core.seconds, core.cpuSeconds,
					onSpark.seconds, onSpark.cpuSeconds, map.sites().size() / onSpark.seconds,
					onSpark.cpuSeconds / core.cpuSeconds,
					(double) shuffled.get() / map.size());
		}
		return ManySitesTest.digest(wanted, placed).equals(ManySitesTest.digest(got, found));
	}
}
