package org.cairnfield.spark;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.SparkSession;
import org.cairnfield.core.map.RadioMap;

/** One Spark in this JVM for all tests that only need two threads of it. */
final class LocalSpark {

	private static SparkSession session;

	private LocalSpark() {
	}

	static SparkSession session() {
		if (session == null || session.sparkContext().isStopped()) {
			session = settings(SparkSession.builder().master("local[2]")).getOrCreate();
		}
		return session;
	}

	static SparkSession.Builder settings(SparkSession.Builder builder) {
		return builder.appName("cairnfield tests").config("spark.ui.enabled", false)
				.config("spark.driver.bindAddress", "127.0.0.1")
				.config("spark.driver.host", "127.0.0.1").config("spark.sql.shuffle.partitions", 2)
				.config("spark.sql.codegen.wholeStage", false).config("spark.log.level", "ERROR");
	}

	static JavaSparkContext context() {
		return JavaSparkContext.fromSparkContext(session().sparkContext());
	}

	/** A map as the runner has it, in three partitions. */
	static SpreadMap spread(JavaSparkContext spark, RadioMap map) {
		int[] numbers = IntStream.range(0, map.accessPointCount()).toArray();
		List<Fingerprint> samples = new ArrayList<>();
		for (int s = 0; s < map.size(); s++) {
			samples.add(Fingerprint.of(map, s, s, map.site(s), numbers));
		}
		return SpreadMap.of(spark.parallelize(samples, 3), map.size(), map.sites(), map.accessPoints());
	}
}
