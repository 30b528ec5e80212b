package org.cairnfield.spark;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.spark.HashPartitioner;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.storage.StorageLevel;
import org.cairnfield.core.cluster.Clustering;
import scala.Tuple2;

/**
 * DBSCAN of a map that is spread over machines, label for label as core's on one. Positive levels, city-block distance: all
 * sums are whole numbers, so no order of adding matters.
 */
final class SparkDbscan {

	private final JavaSparkContext spark;
	private final SpreadMap map;
	private final double epsilon;
	private final int minPts;
	private final int largest;

	private SparkDbscan(JavaSparkContext spark, SpreadMap map, double epsilon, int minPts, int largest) {
		this.spark = spark;
		this.map = map;
		this.epsilon = epsilon;
		this.minPts = minPts;
		this.largest = largest;
	}

	/**
	 * @param minPts  the sample itself counted
	 * @param largest samples of a component in one task; one that has more is cut
	 */
	static Clustering cluster(JavaSparkContext spark, SpreadMap map, double epsilon, int minPts, int largest) {
		return new SparkDbscan(spark, map, epsilon, minPts, largest).run();
	}

	private Clustering run() {
		Map<Integer, ComponentFacts> facts = ComponentFacts.of(map.samples(), map.earshot(), minPts);
		TaskPlan plan = TaskPlan.of(map.earshot().costs(), facts.keySet(), map.tasks(), histograms(facts), largest);
		List<ComponentFacts.Quiet> quiet = facts.values().stream().flatMap(f -> f.quietest().stream())
				.sorted(ComponentFacts.Quiet.ORDER).toList();
		ClusterTask.Question question = new ClusterTask.Question(epsilon, minPts, map.earshot().lowestRssiDbm(),
				quiet.isEmpty() ? 0 : quiet.get(0).magnitude(), facts.size() < 2);
		Broadcast<Map<Integer, List<ClusterTask.Member>>> beyond = spark.broadcast(beyond(plan, quiet, question));
		Broadcast<TaskPlan> plans = spark.broadcast(plan);
		Broadcast<Earshot> earshot = spark.broadcast(map.earshot());
		JavaRDD<ClusterTask.Answer> answers = map.samples()
				.flatMapToPair(s -> members(s, earshot.value(), plans.value(), question.epsilon()))
				.groupByKey(new HashPartitioner(Math.max(1, plan.tasks())))
				.map(group -> answer(group, plans.value(), question, beyond.value()))
				.persist(StorageLevel.MEMORY_AND_DISK());
		List<ClusterTask.Summary> summaries = answers.map(ClusterTask.Answer::summary).collect();
		List<ClusterTask.Labelled> labelled = answers.map(ClusterTask.Answer::labelled).collect();
		answers.unpersist();
		return ClusterJoin.join(summaries, labelled, map.size(), epsilon);
	}

	/** Samples by magnitude, in steps fine enough to be cut between, of the components that are too large for one task. */
	private Map<Integer, TreeMap<Double, Integer>> histograms(Map<Integer, ComponentFacts> facts) {
		Map<Integer, TreeMap<Double, Integer>> histograms = new HashMap<>();
		facts.forEach((component, f) -> {
			if (f.sums().samples() > largest) {
				histograms.put(component, new TreeMap<>());
			}
		});
		if (histograms.isEmpty()) {
			return histograms;
		}
		Earshot earshot = map.earshot();
		List<Integer> cut = new ArrayList<>(histograms.keySet());
		map.samples().mapPartitionsToPair(part -> {
			Map<Tuple2<Integer, Double>, Integer> counts = new HashMap<>();
			part.forEachRemaining(s -> {
				if (cut.contains(earshot.component(s))) {
					counts.merge(new Tuple2<>(earshot.component(s), s.magnitude(earshot.lowestRssiDbm())), 1,
							Integer::sum);
				}
			});
			return counts.entrySet().stream().map(e -> new Tuple2<>(e.getKey(), e.getValue())).iterator();
		}).reduceByKey(Integer::sum).collect()
				.forEach(count -> histograms.get(count._1._1).merge(count._1._2, count._2, Integer::sum));
		return histograms;
	}

	/** The quietest samples out of earshot of each task's components: as many as can matter to whether its own are core. */
	private Map<Integer, List<ClusterTask.Member>> beyond(TaskPlan plan, List<ComponentFacts.Quiet> quiet,
			ClusterTask.Question question) {
		Map<Integer, List<ClusterTask.Member>> beyond = new HashMap<>();
		List<ComponentFacts.Quiet> near = quiet.stream().filter(q -> question.reachesBeyond(q.magnitude())).toList();
		List<Set<Integer>> components = plan.components();
		for (int task = 0; task < plan.tasks() && !near.isEmpty(); task++) {
			List<ClusterTask.Member> chosen = new ArrayList<>();
			for (ComponentFacts.Quiet q : near) {
				int component = map.earshot().component(q.sample());
				if (!components.get(task).contains(component)) {
					chosen.add(new ClusterTask.Member(q.sample(), component, false));
				}
				if (chosen.size() == minPts) {
					break;
				}
			}
			beyond.put(task, chosen);
		}
		return beyond;
	}

	private static Iterator<Tuple2<Integer, ClusterTask.Member>> members(Fingerprint sample, Earshot earshot,
			TaskPlan plan, double epsilon) {
		int component = earshot.component(sample);
		TaskPlan.Ranges ranges = plan.ranges(component);
		if (ranges == null) {
			return List.of(new Tuple2<>(plan.task(component), new ClusterTask.Member(sample, component, true)))
					.iterator();
		}
		double magnitude = sample.magnitude(earshot.lowestRssiDbm());
		int own = ranges.range(magnitude);
		List<Tuple2<Integer, ClusterTask.Member>> members = new ArrayList<>();
		for (int r = ranges.range(magnitude - 2 * epsilon); r < ranges.starts().length
				&& ranges.starts()[r] <= magnitude + 2 * epsilon; r++) {
			members.add(new Tuple2<>(ranges.firstTask() + r, new ClusterTask.Member(sample, component, r == own)));
		}
		return members.iterator();
	}

	private static ClusterTask.Answer answer(Tuple2<Integer, Iterable<ClusterTask.Member>> group, TaskPlan plan,
			ClusterTask.Question question,
			Map<Integer, List<ClusterTask.Member>> beyond) {
		List<ClusterTask.Member> members = new ArrayList<>();
		group._2.forEach(members::add);
		TaskPlan.Ranges ranges = plan.ranges(members.get(0).component());
		int range = ranges == null ? 0 : group._1 - ranges.firstTask();
		double from = ranges == null ? Double.NEGATIVE_INFINITY : ranges.starts()[range];
		double to = ranges == null ? Double.POSITIVE_INFINITY : ranges.end(range);
		members.addAll(beyond.getOrDefault(group._1, List.of()));
		return ClusterTask.answer(group._1, question, from, to, members);
	}
}
