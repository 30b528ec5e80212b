package org.cairnfield.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.SparkSession;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tasks that fail and executors that die: what is found stays the same. */
class LostWorkTest {

	private static final double EPSILON = 6;
	private static final int MIN_PTS = 3;

	@TempDir
	Path folder;

	@AfterEach
	void stop() {
		LocalSpark.session().stop();
	}

	@Test
	void aTaskThatFailsIsDoneAgain() throws Exception {
		LocalSpark.session().stop();
		SparkSession session = LocalSpark.settings(SparkSession.builder().master("local[2,4]")).getOrCreate();
		hasTheResultOfOneMachine(session, false);
	}

	@Test
	void anExecutorThatIsKilledChangesNothing() throws Exception {
		String home = System.getenv("SPARK_HOME");
		assumeTrue(home != null && home.endsWith("home"),
				"SPARK_HOME names no folder to lay out for the workers of a local cluster");
		LocalSpark.session().stop();
		String classes = layOut(Path.of(home));
		SparkSession session = LocalSpark.settings(SparkSession.builder().master("local-cluster[2,1,1024]"))
				.config("spark.executor.extraClassPath", classes).config("spark.executor.memory", "512m")
				.config("spark.executor.extraJavaOptions", "-XX:+UseSerialGC -XX:TieredStopAtLevel=1").getOrCreate();
		hasTheResultOfOneMachine(session, true);
	}

	/** Jars where a worker looks for them, and what tells it the version of Scala; the rest goes on the class path. */
	private static String layOut(Path home) throws IOException {
		Path jars = Files.createDirectories(home.resolve("jars"));
		Files.createDirectories(home.resolve("launcher/target/scala-2.13"));
		StringBuilder folders = new StringBuilder();
		for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
			Path path = Path.of(entry);
			if (Files.isDirectory(path)) {
				folders.append(folders.isEmpty() ? "" : File.pathSeparator).append(path);
			} else if (entry.endsWith(".jar") && !Files.exists(jars.resolve(path.getFileName()))) {
				Files.createSymbolicLink(jars.resolve(path.getFileName()), path);
			}
		}
		return folders.toString();
	}

	private void hasTheResultOfOneMachine(SparkSession session, boolean kill) throws Exception {
		RadioMap map = RandomMaps.of(3);
		Signals signals = Signals.of(map);
		Clustering wanted = Dbscan.cluster(signals, EPSILON, MIN_PTS, Workers.inline());
		List<NoisePlacement> placed = NoiseCorrelation.place(signals, wanted, Workers.inline());
		assertFalse(placed.isEmpty() || wanted.clusters() == 0, "nothing to correlate");
		JavaSparkContext spark = JavaSparkContext.fromSparkContext(session.sparkContext());
		SpreadMap sound = LocalSpark.spread(spark, map);
		String first = armed("first");
		String second = armed("second");
		SpreadMap failing = new SpreadMap(sound.samples().map(s -> failing(s, first, kill)), sound.size(),
				sound.sites(), sound.accessPoints(),
				sound.earshot(), sound.tasks());
		Clustering got = SparkDbscan.cluster(spark, failing, EPSILON, MIN_PTS, 30);
		assertFalse(Files.exists(Path.of(first)), "nothing has failed while it clustered");
		SparkDbscanTest.assertSame(wanted, got, "after a failure");
		SpreadMap again = new SpreadMap(sound.samples().map(s -> failing(s, second, kill)), sound.size(), sound.sites(),
				sound.accessPoints(),
				sound.earshot(), sound.tasks());
		assertEquals(placed, SparkProposals.place(spark, again, got, new ProposalRule(0, -1)));
		assertFalse(Files.exists(Path.of(second)), "nothing has failed while it correlated");
	}

	private String armed(String name) throws IOException {
		return Files.createFile(folder.resolve(name)).toString();
	}

	/** Fails once, whoever comes first. */
	private static Fingerprint failing(Fingerprint sample, String armed, boolean kill) throws IOException {
		if (sample.id() % 7 == 3 && Files.deleteIfExists(Path.of(armed))) {
			if (kill) {
				Runtime.getRuntime().halt(1);
			}
			throw new IllegalStateException("made to fail");
		}
		return sample;
	}
}
