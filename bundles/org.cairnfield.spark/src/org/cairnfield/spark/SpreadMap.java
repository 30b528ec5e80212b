package org.cairnfield.spark;

import java.util.List;
import org.apache.spark.api.java.JavaRDD;

/**
 * A radio map spread over machines.
 *
 * @param samples      numbered 0 … size − 1
 * @param size         how many
 * @param sites        names by number
 * @param accessPoints names by number
 * @param earshot      of its samples
 * @param tasks        how many tasks work on it at a time, and some more
 */
record SpreadMap(JavaRDD<Fingerprint> samples, int size, List<String> sites, List<String> accessPoints, Earshot earshot,
		int tasks) {

	/** Tasks for each core of the cluster, so that one that takes long does not hold up the rest. */
	private static final int TASKS_A_CORE = 3;

	/** @param samples kept in memory by the caller */
	static SpreadMap of(JavaRDD<Fingerprint> samples, int size, List<String> sites, List<String> accessPoints) {
		return new SpreadMap(samples, size, sites, accessPoints, Earshot.of(samples, accessPoints.size()),
				TASKS_A_CORE * samples.context().defaultParallelism());
	}
}
